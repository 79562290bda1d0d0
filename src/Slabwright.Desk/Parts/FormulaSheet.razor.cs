using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Slabwright.Core.Handbook;
using Slabwright.Core.Measures;

namespace Slabwright.Desk.Parts;

/// <summary>One formula of the handbook, to fill in and work out.</summary>
public partial class FormulaSheet : ComponentBase
{
    private readonly Dictionary<string, string> texts = [];
    private HandbookResult? result;

    /// <summary>The formula.</summary>
    [Parameter, EditorRequired] public HandbookEntry Entry { get; set; } = null!;

    private UnitSystem System => Units.For(UnitSystem.UsCustomary);

    private void Choose(UnitSystem system)
    {
        Units.Choose(system);
        if (result is not null) Work();
    }

    /// <summary>Works the formula out; inputs left empty take their defaults.</summary>
    private void Work() => result = FormulaBook.Evaluate(
        Entry, texts.Where(t => !string.IsNullOrWhiteSpace(t.Value)).ToDictionary(t => t.Key, t => t.Value), System);

    private void Take(WorkedExample example)
    {
        texts.Clear();
        foreach (var (key, text) in example.Inputs) texts[key] = text;
        Work();
    }

    /// <summary>Text with raised powers: <c>8.0 yd²</c> for <c>8.0 yd2</c>.</summary>
    private static string Raised(string text) => Power().Replace(text, power => power.Value == "2" ? "²" : "³");

    [GeneratedRegex(@"(?<=\b(?:mm|cm|m|ft|in|yd))[23]\b")]
    private static partial Regex Power();

    private string NameOf(string key) => Entry.Inputs.FirstOrDefault(i => i.Key == key)?.Name.ToLowerInvariant() ?? key;

    private string? Default(HandbookInput input) =>
        input.Default is { } value ? Slabwright.Sheets.Words.JobUnits.Number(input.Units.In(System).FromBase(value), input.Whole ? 0 : 3) : null;
}
