using System.CommandLine;
using System.CommandLine.Parsing;
using Slabwright.Core.Handbook;
using Slabwright.Core.Measures;

namespace Slabwright.Cli.Commands;

/// <summary>The options of the verb on concrete: of a project, by hand, of a night; and which go together.</summary>
internal sealed class ConcreteOptions
{
    private static readonly string[] AskedOfProject = ["night", "mix", "open-by", "confidence"];
    private static readonly string[] NightTexts = ["readings", "repair", "columns", "specimens", "by", "at", "override"];

    private readonly Option<bool> _byHand = new("--by-hand") { Description = "Without a project: mixes, weather and slab from the options below." };
    private readonly Option<bool> _si = new("--si") { Description = "By hand: bare numbers and results in SI units." };
    private readonly Option<bool> _whatIf = new("--what-if") { Description = "The usual questions: 10 °F colder, with a blanket (or without), 5 % less strength." };
    private readonly Option<bool> _blanket = new("--blanket") { Description = "A blanket from an hour after placing on; of a project: what if." };
    private readonly Option<bool> _noBlanket = new("--no-blanket") { Description = "What if no blanket is laid." };
    private readonly Option<bool> _decide = new("--decide") { Description = "The night: decide whether to open, and show what is missing." };
    private readonly Option<bool> _checkCurve = new("--check-curve") { Description = "Hold later specimens (use 'check' in breaks.csv) against the strength curves." };
    private readonly Option<string?> _weather = new("--weather") { Description = "Hourly weather: a table with headers that name units, TMY3 or EPW; in place of the project's or of weather by hand." };
    private readonly Option<string?> _mixes = new("--mixes") { Description = "By hand: folder with mixes.csv and breaks.csv, in place of --mix and contents." };
    private readonly Dictionary<string, Option<string?>> _texts = new(StringComparer.Ordinal);

    /// <summary>Adds the options to the verb.</summary>
    public ConcreteOptions(Command command, ProjectDoor door)
    {
        Add("readings", "The night: file of a temperature logger, any layout.");
        Add("repair", "The night: repair or placement; the mix when left out.");
        Add("columns", "The night: columns of the logger file, e.g. \"Time=Date/Time; T1=mid depth; T2=edge; unit=°F\".");
        Add("specimens", "The night: specimens broken, e.g. \"4.5 h 2150 psi 85 °F; 5 h 2300 psi\".");
        Add("by", "The night: who decides.");
        Add("at", "The night: clock time of the decision; the last reading when left out.");
        Add("override", "The night: reason to open although something is missing.");
        foreach (var text in ConcreteByHand.Texts.Where(t => t.Key != NightQuestions.BlanketKey))
            Add(text.Key, $"{(AskedOfProject.Contains(text.Key) || text.Key == NightQuestions.PlacedKey ? "" : "By hand: ")}{text.Name}{(text.Default is null ? "" : $"; if not given: {text.Default}")}. E.g. \"{text.Example}\".");
        foreach (var number in ConcreteByHand.Numbers) Add(number.Key, Describe(number));
        foreach (var question in NightQuestions.Inputs.Where(q => !_texts.ContainsKey(q.Key))) Add(question.Key, $"What if: {question.Name.ToLowerInvariant()} this.");
        foreach (var option in new Option[] { _byHand, _si, _weather, _mixes, _whatIf, _blanket, _noBlanket, _checkCurve, _decide }.Concat(_texts.Values)) command.Add(option);
        command.Validators.Add(result => Check(result, door));
    }

    /// <summary>True for concrete without a project.</summary>
    public bool IsByHand(ParseResult parsed) => parsed.GetValue(_byHand);

    /// <summary>Units by hand.</summary>
    public UnitSystem SystemOf(ParseResult parsed) => parsed.GetValue(_si) ? UnitSystem.Si : UnitSystem.UsCustomary;

    /// <summary>The weather file; null without one.</summary>
    public string? Weather(ParseResult parsed) => parsed.GetValue(_weather);

    /// <summary>The folder of mixes; null without one.</summary>
    public string? Mixes(ParseResult parsed) => parsed.GetValue(_mixes);

    /// <summary>A text as typed; null where it was not.</summary>
    public string? Text(ParseResult parsed, string key) => parsed.GetValue(_texts[key]);

    /// <summary>True under --check-curve.</summary>
    public bool ChecksCurve(ParseResult parsed) => parsed.GetValue(_checkCurve);

    /// <summary>True under --decide.</summary>
    public bool Decides(ParseResult parsed) => parsed.GetValue(_decide);

    /// <summary>True where readings or specimens of a night are given.</summary>
    public bool IsNight(ParseResult parsed) => Text(parsed, "readings") is not null || Text(parsed, "specimens") is not null || Decides(parsed);

    /// <summary>True under --what-if.</summary>
    public bool AsksUsual(ParseResult parsed) => parsed.GetValue(_whatIf);

    /// <summary>What was typed of concrete by hand.</summary>
    public Dictionary<string, string> HandTexts(ParseResult parsed)
    {
        var keys = ConcreteByHand.Texts.Select(t => t.Key).Concat(ConcreteByHand.Numbers.Select(n => n.Key)).Where(_texts.ContainsKey);
        var texts = keys.Select(k => (Key: k, Text: Text(parsed, k))).Where(t => t.Text is not null).ToDictionary(t => t.Key, t => t.Text!);
        if (parsed.GetValue(_blanket)) texts[NightQuestions.BlanketKey] = "yes";
        return texts;
    }

    /// <summary>What-if questions as typed; by hand those that are no inputs.</summary>
    public Dictionary<string, string> Questions(ParseResult parsed)
    {
        var hand = IsByHand(parsed);
        var inputs = ConcreteByHand.Numbers.Select(n => n.Key).ToHashSet(StringComparer.Ordinal);
        var texts = NightQuestions.Inputs.Where(q => !hand || !inputs.Contains(q.Key)).Select(q => (q.Key, Text: Text(parsed, q.Key))).Where(t => t.Text is not null).ToDictionary(t => t.Key, t => t.Text!);
        if (parsed.GetValue(_noBlanket)) texts[NightQuestions.NoBlanketKey] = "";
        if (hand) return texts;
        if (parsed.GetValue(_blanket)) texts[NightQuestions.BlanketKey] = "";
        if (!IsNight(parsed) && Text(parsed, NightQuestions.PlacedKey) is { } placed) texts[NightQuestions.PlacedKey] = placed;
        return texts;
    }

    private static string Describe(HandbookInput input)
    {
        var taken = input.Default is { } value ? $" If not given: {MeasureText.Write(value, input.Units.Customary, input.Whole)}." : "";
        var asked = NightQuestions.Inputs.Any(q => q.Key == input.Key) ? "By hand, and as a question to a project: " : input.Key == "confidence" ? "" : "By hand: ";
        return $"{asked}{input.Name}.{taken}";
    }

    private void Add(string key, string description) => _texts.Add(key, new Option<string?>("--" + key) { Description = description });

    private void Check(CommandResult result, ProjectDoor door)
    {
        var (hand, folder) = (result.GetValue(_byHand), door.HasFolder(result));
        if (hand && folder) result.AddError("Give a project FOLDER or --by-hand, not both.");
        if (!hand && !folder) result.AddError("Give a project FOLDER, or --by-hand with --thickness, --night, --mix, --low and --high.");
        if (hand)
        {
            foreach (var key in NightTexts.Where(k => Given(result, k))) result.AddError($"--{key} goes with a project FOLDER.");
            if (result.GetValue(_decide)) result.AddError("--decide goes with a project FOLDER.");
            return;
        }

        var asked = AskedOfProject.Concat(NightTexts).Append(NightQuestions.PlacedKey).Concat(NightQuestions.Inputs.Select(q => q.Key)).ToHashSet(StringComparer.Ordinal);
        foreach (var key in _texts.Keys.Where(k => !asked.Contains(k) && Given(result, k)))
            result.AddError($"--{key} goes with --by-hand only; a project says it in project.json, mixes.csv or breaks.csv.");
        if (result.GetValue(_mixes) is not null) result.AddError("--mixes goes with --by-hand only; a project has its own mixes.csv.");
        CheckNight(result);
    }

    private void CheckNight(CommandResult result)
    {
        var night = Given(result, "readings") || Given(result, "specimens") || result.GetValue(_decide);
        if (night)
        {
            foreach (var (key, example) in new[] { ("night", "2026-05-04"), ("mix", "ID"), (NightQuestions.PlacedKey, "22:10") })
                if (!Given(result, key)) result.AddError($"The night needs --{key}, e.g. --{key} {example}.");
        }

        foreach (var key in new[] { "repair", "columns", "by", "at", "override" }.Where(k => !night && Given(result, k)))
            result.AddError($"--{key} goes with --readings, --specimens or --decide.");
        foreach (var key in new[] { "by", "override" }.Where(k => night && !result.GetValue(_decide) && Given(result, k)))
            result.AddError($"--{key} goes with --decide.");
    }

    private bool Given(CommandResult result, string key) => result.GetResult(_texts[key]) is { Implicit: false };
}
