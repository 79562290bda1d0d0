using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;

namespace Slabwright.Core.Boundaries;

/// <summary>
/// Length added at each end of a distress: the larger of the rule set's margin and what coring or sounding found, and growth since
/// the survey on top.
/// </summary>
internal sealed class HiddenMargins(Road road, IReadOnlyList<CoreSample> cores, BoundaryLimits limits, GrowthModel growth, double years)
{
    /// <summary>A core this near the distress speaks for it even in the next slab, m.</summary>
    private const double CoreReach = 3;

    private readonly ILookup<int, CoreSample> _widening = cores.Where(c => c.WideningBelow > 0).ToLookup(c => c.Lane);

    public (double Margin, ImmutableArray<Reason> Reasons) Of(Distress distress, Lane lane)
    {
        var (margin, reason) = Widest(distress, lane);
        var rate = growth.RateOf(distress.Type);
        if (rate is null || years <= 0 || rate.LengthPerYearLikely <= 0) return (margin, [reason]);
        var grown = rate.LengthPerYearLikely * years;
        var why = new Reason("growth since survey", "Damage lengthens between survey and work; the likely rate is used.", SourceRef.Project,
            [
                new("growth at each end", BoundaryWords.Length(grown)),
                new("years", years.ToString("0.0#", System.Globalization.CultureInfo.InvariantCulture)),
                new("rate low to high", $"{BoundaryWords.Length(rate.LengthPerYearLow)} to {BoundaryWords.Length(rate.LengthPerYearHigh)} a year"),
            ]);
        return (margin + grown, [reason, why]);
    }

    private (double Margin, Reason Reason) Widest(Distress distress, Lane lane)
    {
        var rule = road.Climate.FreezeThaw ? limits.HiddenMarginFreezeThaw : limits.HiddenMargin;
        var where = road.Climate.FreezeThaw ? "where slabs freeze and thaw" : "outside freeze-thaw country";
        var best = (rule.Value, new Reason("hidden margin", $"Damage can be larger at the bottom than at the top; margin {where}.",
            rule.Source, [new("margin at each end", BoundaryWords.Length(rule.Value))]));
        if (distress.WideningBelow is { } found && found > best.Value)
        {
            best = (found, new Reason("widening found", "Coring or sounding at the distress found wider damage below.", SourceRef.Project,
                [new("widening at each end", BoundaryWords.Length(found)), new("rule margin", BoundaryWords.Length(rule.Value))]));
        }

        foreach (var core in _widening[lane.Number])
        {
            if (core.WideningBelow!.Value <= best.Value || !Speaks(core, distress, lane)) continue;
            best = (core.WideningBelow.Value, new Reason("widening found by core", $"Core {core.Id} found wider damage below.", SourceRef.Project,
                [new("widening at each end", BoundaryWords.Length(core.WideningBelow.Value)), new("core", core.Id)]));
        }

        return best;
    }

    /// <summary>A core speaks for a distress in its own slab or within <see cref="CoreReach"/> of it.</summary>
    private static bool Speaks(CoreSample core, Distress distress, Lane lane)
    {
        var distance = Math.Max(0, Math.Max(distress.From - core.At, core.At - distress.To));
        return distance <= CoreReach || lane.SlabAt(core.At).Number == lane.SlabAt(distress.Middle).Number;
    }
}
