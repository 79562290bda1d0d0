using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>A specimen as typed.</summary>
/// <param name="Mix">Mix named before it; null where none was.</param> <param name="Hours">Age, h.</param> <param name="Strength">Strength, Pa.</param>
/// <param name="Temperature">Temperature it was kept at, °C; null where not typed.</param>
public sealed record TypedBreak(string? Mix, double Hours, double Strength, double? Temperature);

/// <summary>Reads specimens as people type them: <c>6 h 1500 psi; 12 h 2600 psi; 24 h 3900 psi</c>, a temperature after the strength, a mix before a colon.</summary>
public static partial class BreakText
{
    private const double Hour = 3600;

    /// <summary>Reads a list; what cannot be read becomes a finding and is left out.</summary>
    /// <param name="list">The list.</param> <param name="system">Units of bare numbers.</param> <param name="field">Option named in findings.</param> <param name="findings">Added to.</param>
    public static ImmutableArray<TypedBreak> Read(string list, UnitSystem system, string field, ICollection<Finding> findings)
    {
        var breaks = ImmutableArray.CreateBuilder<TypedBreak>();
        string? mix = null;
        foreach (var item in list.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = item.LastIndexOf(':');
            if (colon >= 0) mix = item[..colon].Trim();
            if (One(colon >= 0 ? item[(colon + 1)..] : item, mix, system) is { } read) breaks.Add(read);
            else
            {
                findings.Add(new("CON-131", FindingLevel.Error, "This is not an age and a strength.", new(Field: field), item,
                    "Write age and strength, then the temperature if known: \"6 h 1500 psi 73 °F; 12 h 2600 psi\"."));
            }
        }

        return breaks.ToImmutable();
    }

    private static TypedBreak? One(string text, string? mix, UnitSystem system)
    {
        var parts = Measure().Matches(text);
        if (parts.Count is < 2 or > 3 || Measure().Replace(text, "").Trim().Length > 0) return null;
        if (MeasureText.Read(parts[0].Value.Trim(), Units.Hour, out var seconds) != MeasureReading.Read || seconds is <= 0 or > 3e8) return null;
        if (MeasureText.Read(parts[1].Value.Trim(), Entry.Stress.In(system), out var strength) != MeasureReading.Read || strength is < 1e4 or > 2e8) return null;
        if (parts.Count == 2) return new(mix, seconds / Hour, strength, null);
        return MeasureText.Read(parts[2].Value.Trim(), Entry.Temperature.In(system), out var warm) == MeasureReading.Read && warm is >= -5 and <= 90
            ? new(mix, seconds / Hour, strength, warm)
            : null;
    }

    [GeneratedRegex(@"[+-]?\d[\d,]*(?:\.\d+)?\s*[^\d\s;.,+-]*\s*")]
    private static partial Regex Measure();
}
