using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>What must be reached before traffic returns: by the project where it says so, else by the rule set.</summary>
public static class OpeningCriteria
{
    private const double Psi = 6894.757293168361;

    /// <summary>The criterion for a slab and repair; null when neither project nor rule set states a strength.</summary>
    /// <param name="settings">What the project says.</param> <param name="rows">Rows of the rule set.</param>
    /// <param name="thickness">Slab thickness, m.</param> <param name="length">Repair length, m.</param>
    /// <param name="tested">Kind of strength the mix was tested in; taken where several are stated and the project names none.</param>
    public static OpeningCriterion? For(
        ConcreteSettings settings, ImmutableArray<OpeningRow> rows, double thickness, double length, StrengthKind? tested)
    {
        var holding = rows.Where(r => r.Holds(thickness, length)).ToArray();
        var age = settings.LeastAge ?? holding.Where(r => r.LeastAge is not null).Select(r => r.LeastAge!.Value).DefaultIfEmpty(0).Max();
        if (settings.CriterionStrength is { } own)
        {
            var kind = settings.CriterionKind ?? tested ?? StrengthKind.Compressive;
            return Made(kind, own, age, settings.Confidence, new Reason("opening strength", $"The project asks for {Text(own)}, {Words(kind)}.", SourceRef.Project));
        }

        if (Row(holding) is not { } row) return null;
        StrengthKind?[] order = [settings.CriterionKind, tested, StrengthKind.Compressive, StrengthKind.ThirdPointFlexural, StrengthKind.CentrePointFlexural];
        var stated = order.First(k => k is { } known && StrengthOf(row, known) is not null)!.Value;
        var strength = StrengthOf(row, stated)!.Value;
        var inputs = ImmutableArray.Create(
            new ReasonInput("slab thickness", string.Create(CultureInfo.InvariantCulture, $"{thickness / 0.0254:0.0} in")),
            new ReasonInput("repair length", string.Create(CultureInfo.InvariantCulture, $"{length / 0.3048:0.0} ft")));
        return Made(stated, strength, age, settings.Confidence,
            new Reason("opening strength", $"{Text(strength)}, {Words(stated)}. {row.Sentence}", row.Source, inputs));
    }

    /// <summary>The same criterion in the kind a curve is in: converted and labelled where the kinds differ.</summary>
    /// <param name="criterion">What is asked.</param> <param name="curve">Curve it is held against.</param>
    /// <returns>The criterion, and the curve with the scatter of the conversion.</returns>
    public static (OpeningCriterion Criterion, StrengthCurve Curve) InKindOf(OpeningCriterion criterion, StrengthCurve curve)
    {
        if (criterion.Kind == curve.Kind) return (criterion, curve);
        var needed = StrengthConversions.Needed(criterion.Strength, criterion.Kind, curve.Kind);
        var spread = Math.Sqrt(needed.LogSpread * needed.LogSpread + curve.LogSpread * curve.LogSpread);
        return (criterion with { Kind = curve.Kind, Strength = needed.Strength, Reasons = criterion.Reasons.Add(needed.Because) }, curve with { LogSpread = spread });
    }

    /// <summary>A kind of strength in words.</summary>
    public static string Words(StrengthKind kind) => kind switch
    {
        StrengthKind.Compressive => "compressive",
        StrengthKind.ThirdPointFlexural => "third-point flexural",
        _ => "centre-point flexural",
    };

    /// <summary>The row for the thickest slab that still speaks of this one, stated lengths before any length; rows without a strength last.</summary>
    private static OpeningRow? Row(OpeningRow[] holding) => holding
        .Where(r => r.Compressive is not null || r.ThirdPoint is not null || r.CentrePoint is not null)
        .OrderByDescending(r => r.From).ThenBy(r => r.RepairUnder ?? double.PositiveInfinity).FirstOrDefault();

    private static double? StrengthOf(OpeningRow row, StrengthKind kind) => kind switch
    {
        StrengthKind.Compressive => row.Compressive,
        StrengthKind.ThirdPointFlexural => row.ThirdPoint,
        _ => row.CentrePoint,
    };

    private static OpeningCriterion Made(StrengthKind kind, double strength, double age, double confidence, Reason because)
    {
        var reasons = ImmutableArray.Create(because);
        if (age > 0) reasons = reasons.Add(new Reason("least age", string.Create(CultureInfo.InvariantCulture, $"At least {age:0.#} h after placing."), because.Source));
        return new OpeningCriterion { Kind = kind, Strength = strength, LeastAge = age, Confidence = confidence, Reasons = reasons };
    }

    private static string Text(double strength) => string.Create(CultureInfo.InvariantCulture, $"{strength / Psi:#,0} psi ({strength / 1e6:0.0} MPa)");
}
