using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>The inputs of concrete by hand, read: numbers in SI, words, and what was wrong with them.</summary>
internal sealed class HandReading
{
    private readonly Dictionary<string, string> _texts;
    private readonly Dictionary<string, double> _numbers;

    /// <summary>Reads what was given.</summary>
    /// <param name="given">Texts by key.</param> <param name="system">Units of bare numbers.</param> <param name="needless">Keys that files answer; giving one of them is a finding.</param>
    public HandReading(IReadOnlyDictionary<string, string> given, UnitSystem system, ImmutableHashSet<string> needless)
    {
        (System, _texts) = (system, new(given, StringComparer.OrdinalIgnoreCase));
        foreach (var key in needless.Where(_texts.ContainsKey).Order(StringComparer.Ordinal))
            Add("CON-137", $"{key} is given by the weather or mix file already.", key, _texts[key], $"Leave out --{key}, or the file.");
        HandbookEntry asked = new()
        {
            Id = "concrete-by-hand", Title = "Concrete by hand", Topic = "Concrete", Expression = "", Outputs = [], Source = SourceRef.CommonPractice, Notes = "",
            Inputs = [.. HandInputs.Numbers.Where(n => !needless.Contains(n.Key) && (_texts.ContainsKey(n.Key) || !HandInputs.Optional.Contains(n.Key)))],
        };
        var reader = new InputReader(asked, system);
        _numbers = reader.Read(_texts.Where(t => !needless.Contains(t.Key) && HandInputs.Texts.All(n => n.Key != t.Key)).ToDictionary(t => t.Key, t => t.Value));
        foreach (var finding in reader.Findings) Findings.Add(finding.Code == "HBK-002" ? finding with { Mend = $"Give it, e.g. --{Example(finding.Place.Field!)}." } : finding);
        Inputs = [.. Taken(asked.Inputs), .. HandInputs.Texts.Where(t => !needless.Contains(t.Key)).Select(Taken).OfType<HandInput>()];
    }

    /// <summary>Units of bare numbers.</summary>
    public UnitSystem System { get; }

    /// <summary>What was wrong.</summary>
    public List<Finding> Findings { get; } = [];

    /// <summary>Every input as taken.</summary>
    public ImmutableArray<HandInput> Inputs { get; }

    /// <summary>True where an input is wrong.</summary>
    public bool IsWrong => Findings.Any(f => f.Level == FindingLevel.Error);

    /// <summary>A number, SI; of an input that may not be left out.</summary>
    public double this[string key] => _numbers[key];

    /// <summary>A number, SI; null where it was left out.</summary>
    public double? Number(string key) => _numbers.TryGetValue(key, out var value) ? value : null;

    /// <summary>A span, h.</summary>
    public double Hours(string key) => _numbers[key] / HandInputs.Hour;

    /// <summary>A text, or its default; null where there is neither.</summary>
    public string? Text(string key) => _texts.TryGetValue(key, out var text) ? text : HandInputs.Texts.First(t => t.Key == key).Default;

    /// <summary>True where it was given.</summary>
    public bool Has(string key) => _texts.ContainsKey(key);

    /// <summary>A clock time; midnight with a finding where it cannot be read.</summary>
    public TimeOnly Clock(string key)
    {
        if (ClockText.TryRead(Text(key), out var time)) return time;
        Add("CON-132", $"{key} is not a clock time.", key, Text(key), $"Write it as --{key} {HandInputs.Texts.First(t => t.Key == key).Example}.");
        return default;
    }

    /// <summary>A word of an enum; its default with a finding where it is not known.</summary>
    public T Word<T>(string key) where T : struct, Enum
    {
        if (TradeWords.TryRead<T>(Text(key) ?? "", out var member)) return member;
        Add("CON-139", $"{key} knows no such word.", key, Text(key), "Use one of: " + TradeWords.All<T>() + ".");
        return default;
    }

    /// <summary>A yes or no.</summary>
    public bool Yes(string key)
    {
        var text = Text(key)?.Trim().ToLowerInvariant();
        if (text is not ("yes" or "no")) Add("CON-139", $"{key} is neither yes nor no.", key, Text(key), $"Write --{key} yes or --{key} no.");
        return text == "yes";
    }

    /// <summary>Adds an error.</summary>
    public void Add(string code, string sentence, string key, string? value, string mend) =>
        Findings.Add(new Finding(code, FindingLevel.Error, sentence, new FindingPlace(Field: key), value, mend));

    private static string Example(string key) => key switch
    {
        "thickness" => "thickness \"10 in\"",
        "low" => "low \"48 °F\", or give --forecast or --weather",
        _ => "high \"68 °F\", or give --forecast or --weather",
    };

    private IEnumerable<HandInput> Taken(ImmutableArray<HandbookInput> inputs) => inputs.Where(i => _numbers.ContainsKey(i.Key)).Select(i => new HandInput(
        i.Key, i.Name, MeasureText.Write(_numbers[i.Key], i.Units.In(System), i.Whole), _texts.ContainsKey(i.Key) ? null : HandInputs.Sources.GetValueOrDefault(i.Key)));

    private HandInput? Taken(HandText text) =>
        Text(text.Key) is { } value ? new(text.Key, text.Name, value, _texts.ContainsKey(text.Key) ? null : text.Source) : null;
}
