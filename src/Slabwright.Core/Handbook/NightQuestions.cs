using System.Collections.Immutable;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>A change of a night asked about.</summary>
/// <param name="Name">In words, e.g. <c>10 °F colder</c>.</param> <param name="Apply">The change, upon others.</param>
public sealed record NightQuestion(string Name, Func<NightChange, NightChange> Apply);

/// <summary>What was asked, and what was wrong with it.</summary>
/// <param name="Questions">The changes, one by one.</param> <param name="Findings">What was wrong.</param>
public sealed record AskedQuestions(ImmutableArray<NightQuestion> Questions, ImmutableArray<Finding> Findings)
{
    /// <summary>The changes one by one, then all of them together where there are several.</summary>
    public ImmutableArray<(string Name, NightChange Change)> Changes
    {
        get
        {
            ImmutableArray<(string, NightChange)> single = [.. Questions.Select(q => (q.Name, q.Apply(NightChange.None)))];
            return single.Length < 2 ? single : single.Add(("all of these", Questions.Aggregate(NightChange.None, (change, q) => q.Apply(change))));
        }
    }
}

/// <summary>Reads what-if questions from text: colder, warmer, weaker, wind, placing, blanket, slab.</summary>
public static class NightQuestions
{
    /// <summary>The question of a blanket and that of none; given without a value.</summary>
    public const string BlanketKey = "blanket";

    /// <summary>Without a blanket.</summary>
    public const string NoBlanketKey = "no-blanket";

    /// <summary>Another clock time of placing.</summary>
    public const string PlacedKey = "placed-at";

    private const string ResistanceKey = "blanket-resistance";

    /// <summary>Resistance of a blanket where none is given, m²K/W; that of the usual question.</summary>
    private const double UsualResistance = 0.35;

    /// <summary>Questions that take a number.</summary>
    public static ImmutableArray<HandbookInput> Inputs { get; } =
    [
        new("colder", "ΔT", "Air colder by", Difference, 0, 40),
        new("warmer", "ΔT+", "Air warmer by", Difference, 0, 40),
        Part("weaker", "w", "Strength lower by", 0, 0.5),
        Part("stronger", "w+", "Strength higher by", 0, 0.5),
        Number("wind-factor", "f", "Wind times", 0, 5),
        new("placing-temperature", "Tp", "Concrete temperature when placed", Temperature, 0, 45),
        new(ResistanceKey, "R", "Thermal resistance of the blanket", Insulation, 0.01, 5),
        Small("thickness", "h", "Slab thickness", 0.05, 1),
        Length("repair-length", "L", "Length of the repair", 100),
    ];

    /// <summary>Reads questions.</summary>
    /// <param name="texts">Texts by key.</param> <param name="system">Units of bare numbers, and of names.</param>
    public static AskedQuestions Read(IReadOnlyDictionary<string, string> texts, UnitSystem system)
    {
        HandbookEntry asked = new()
        {
            Id = "what-if", Title = "What if", Topic = "Concrete", Expression = "", Outputs = [], Source = SourceRef.Project, Notes = "",
            Inputs = [.. Inputs.Where(i => texts.ContainsKey(i.Key))],
        };
        string[] words = [BlanketKey, NoBlanketKey, PlacedKey];
        var reader = new InputReader(asked, system);
        var values = reader.Read(texts.Where(t => !words.Contains(t.Key)).ToDictionary(t => t.Key, t => t.Value));
        var findings = reader.Findings.ToBuilder();
        var questions = ImmutableArray.CreateBuilder<NightQuestion>();
        foreach (var input in asked.Inputs.Where(i => values.ContainsKey(i.Key) && i.Key != ResistanceKey)) questions.Add(Of(input, values[input.Key], texts[input.Key], system));
        if (texts.TryGetValue(PlacedKey, out var clock))
        {
            if (ClockText.TryRead(clock, out var placed)) questions.Add(new($"placed at {clock.Trim()}", c => c with { PlacedAt = placed }));
            else findings.Add(new("CON-132", FindingLevel.Error, "placed-at is not a clock time.", new(Field: PlacedKey), clock, "Write it as --placed-at 22:00."));
        }

        if (texts.ContainsKey(BlanketKey) || values.ContainsKey(ResistanceKey))
        {
            var resistance = values.GetValueOrDefault(ResistanceKey, UsualResistance);
            var name = $"a blanket of {MeasureText.Write(resistance, Insulation.In(system))} from 1 h on";
            questions.Add(new(name, c => c with { Blanket = new BlanketChange(new BlanketCover(1, double.PositiveInfinity, resistance)) }));
        }

        if (texts.ContainsKey(NoBlanketKey)) questions.Add(new("no blanket", c => c with { Blanket = new BlanketChange(null) }));
        return new(questions.ToImmutable(), findings.ToImmutable());
    }

    private static NightQuestion Of(HandbookInput input, double value, string text, UnitSystem system)
    {
        var unit = MeasureText.UnitOf(text, input.Units.In(system));
        var shown = $"{unit.FromBase(value).ToString("#,0.##", System.Globalization.CultureInfo.InvariantCulture)} {Symbol(unit)}".Trim();
        return input.Key switch
        {
            "colder" => new($"{shown} colder", c => c with { Air = c.Air - value }),
            "warmer" => new($"{shown} warmer", c => c with { Air = c.Air + value }),
            "weaker" => new($"{shown} less strength", c => c with { Strength = c.Strength * (1 - value) }),
            "stronger" => new($"{shown} more strength", c => c with { Strength = c.Strength * (1 + value) }),
            "wind-factor" => new($"wind times {shown}", c => c with { Wind = value }),
            "placing-temperature" => new($"placed at {shown}", c => c with { PlacingTemperature = value }),
            "thickness" => new($"slab {shown} thick", c => c with { Thickness = value }),
            _ => new($"repair {shown} long", c => c with { Length = value }),
        };
    }

    private static string Symbol(Unit unit) => unit == Units.FahrenheitDegree ? "°F" : unit.Symbol;
}
