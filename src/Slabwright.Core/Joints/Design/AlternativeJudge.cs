using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Design;

/// <summary>Works out one way to carry load across the joints of one build-up and holds it against every limit.</summary>
internal sealed class AlternativeJudge
{
    /// <summary>Law of fatigue that belongs to stresses of plate finite elements at an edge.</summary>
    internal const FatigueLaw Law = FatigueLaw.ZeroMaintenance24;

    /// <summary>β times the embedment from which a bar is as good as endless.</summary>
    internal const double LongBar = 2;

    private static readonly SourceRef Bearings = new("DOWEL-LECTURE", "allowable bearing (4 − d)/3 f'c", SourceStatus.Verified);
    private static readonly SourceRef Springs = new("NPTEL-IITK", "beam on springs, eq. 25–28", SourceStatus.Verified);

    private readonly JointConditions _conditions;
    private readonly JointLimits _limits;
    private readonly IJointMechanics _slabs;
    private readonly IJointMechanics _near;
    private readonly IJointMechanics _far;
    private readonly ImmutableArray<JointLoad> _loads;
    private readonly Dictionary<(double Diameter, double Embedment, ImmutableArray<double> Offsets), Effects> _known = [];
    private Effects? _bare;

    public AlternativeJudge(JointConditions conditions, JointLimits limits, IJointMechanics slabs)
    {
        (_conditions, _limits, _slabs) = (conditions, limits, slabs);
        (_near, _far) = (new ClosedMechanics(conditions, 1.0), new ClosedMechanics(conditions, 1.8));
        _loads = JointLoads.Of(conditions);
    }

    private sealed record Effects(
        double Bearing, double Near, double Far, double Transfer, double Deflection, double Stress, double Damage, FaultingForecast Faulting,
        double Incremental);

    /// <summary>True where the rule set takes the lane's traffic for heavy.</summary>
    public static bool Heavy(JointConditions c, JointLimits limits) => limits.HeavyTrafficFrom is { } from && c.TrucksPerDay >= from.Value;

    public JointAlternative Judge(BarLayout? bars, decimal cost)
    {
        var effects = Known(bars);
        var limit = _limits.GreatestFaulting?.Value ?? double.PositiveInfinity;
        return new JointAlternative
        {
            Layout = bars is null ? null : bars with { Depth = _conditions.Thickness / 2 },
            CostPerJoint = cost,
            Life = effects.Faulting.LifeUpTo(limit),
            Faulting = effects.Faulting.After(_conditions.DesignYears),
            Bearing = effects.Bearing,
            ClosedBearing = (effects.Near, effects.Far),
            DeflectionTransfer = effects.Transfer,
            Deflection = effects.Deflection,
            Stress = effects.Stress,
            Damage = effects.Damage,
            IncrementalFaulting = effects.Incremental,
            BuildUp = _conditions.BuildUp,
            Checks = [.. RuleChecks(bars), .. Mechanical(bars, effects)],
        };
    }

    private Effects Known(BarLayout? bars)
    {
        if (bars is null) return _bare ??= Work(null);
        var endless = PlateMechanics.EndlessFrom / DowelBar.Beta(_conditions.DowelSupport, bars.Diameter, _conditions.SteelModulus);
        var embedded = Math.Min(bars.Embedment, bars.Length - bars.Embedment - _conditions.JointWidth);
        var key = (bars.Diameter, Math.Min(embedded, endless), bars.Offsets);
        if (!_known.TryGetValue(key, out var effects)) _known[key] = effects = Work(bars);
        return effects;
    }

    private Effects Work(BarLayout? bars)
    {
        var c = _conditions;
        var answers = _loads.Select(load => (load, Answer: _slabs.Under(load, bars))).ToArray();
        var passes = 365.25 * EquivalentAxles.GrowthFactor(c.Growth, c.DesignYears);
        var damage = ConcreteFatigue.Damage(
            Law, answers.Where(a => a.load.BeforeJoint).Select(a => (a.load.Class.PerDay * passes * a.load.Share, Worse(a) / c.Rupture)));
        return new Effects(
            Most(a => a.Bearing),
            bars is null ? 0 : _loads.Max(l => _near.Under(l, bars).Bearing),
            bars is null ? 0 : _loads.Max(l => _far.Under(l, bars).Bearing),
            answers.Where(a => a.load.Place == WheelPlace.WheelPath).Select(a => a.Answer.Transfer).DefaultIfEmpty(1).Min(), Most(a => a.Loaded), Most(a => a.Stress), damage,
            new FaultingForecast(c, bars), IncrementalForecast.After(c, bars, Free()));

        double Most(Func<LoadEffect, double> of) => answers.Select(a => of(a.Answer)).DefaultIfEmpty().Max();

        // The same axle passes both slabs: the worse of the two counts.
        double Worse((JointLoad Load, LoadEffect Answer) one) => answers
            .Where(a => a.load.Class == one.Load.Class && a.load.Place == one.Load.Place).Max(a => a.Answer.Stress);
    }

    /// <summary>Deflection of the joint without bars under each class in the wheel paths.</summary>
    private (AxleClass Class, double Deflection)[] Free() =>
    [
        .. _loads.Where(l => l is { Place: WheelPlace.WheelPath, BeforeJoint: true }).Select(l => (l.Class, _slabs.Under(l, null).Loaded)),
    ];

    private IEnumerable<LimitCheck> RuleChecks(BarLayout? bars) => bars is null ? Bare() : [.. Diameters(bars), .. Rows(bars), .. Lengths(bars)];

    private IEnumerable<LimitCheck> Bare()
    {
        if (_limits is not { UndowelledBelowThickness: { } thin, UndowelledBelowTrucks: { } few })
            return [new("dowels the rule set asks for", 0, 1, LimitSense.AtLeast, JointWords.Plain, _limits.LeastDowelDiameter.Source)];
        return
        [
            new("thickness without dowels", _conditions.Thickness, thin.Value, LimitSense.AtMost, JointWords.Small, thin.Source),
            new("trucks a day without dowels", _conditions.TrucksPerDay, few.Value, LimitSense.AtMost, JointWords.Plain, few.Source),
        ];
    }

    private IEnumerable<LimitCheck> Diameters(BarLayout bars)
    {
        yield return Diameter("diameter, least", bars, _limits.LeastDowelDiameter.Value, _limits.LeastDowelDiameter.Source);
        if (Heavy(_conditions, _limits) && _limits.HeavyTrafficDowelDiameter is { } heavy)
            yield return Diameter("diameter, heavy traffic", bars, heavy.Value, heavy.Source);
        if (_limits.DiameterPerThickness is { } share)
            yield return Diameter("diameter, share of thickness", bars, share.Value * _conditions.Thickness, share.Source);
        if (_limits.DiametersByThickness.LastOrDefault(s => s.Holds(_conditions.Thickness)) is { } step)
            yield return Diameter("diameter, by thickness", bars, step.Diameter, step.Source);
    }

    /// <summary>A bar of 38 mm is the 1½ in bar of a metric works: within a quarter of a millimetre the sizes are the same bar.</summary>
    private static LimitCheck Diameter(string name, BarLayout bars, double least, SourceRef source) => new(
        name, SameSize(bars.Diameter, least) ? least : bars.Diameter, least, LimitSense.AtLeast, JointWords.Small, source);

    /// <summary>True where two diameters are the same nominal size.</summary>
    internal static bool SameSize(double one, double other) => Math.Abs(one - other) <= 0.00025;

    private IEnumerable<LimitCheck> Rows(BarLayout bars)
    {
        if (bars.Arrangement == BarArrangement.FullWidth) yield break;
        if (_limits.DowelsPerWheelPath is not { } perPath)
        {
            yield return new("bars over the full width", 0, 1, LimitSense.AtLeast, JointWords.Plain, _limits.DowelSpacing.Source);
            yield break;
        }

        var (least, source) = Heavy(_conditions, _limits) && _limits.HeavyTrafficDowelsPerWheelPath is { } heavy && heavy.Value > perPath.Value
            ? (heavy.Value, heavy.Source)
            : (perPath.Value, perPath.Source);
        yield return new("bars in each wheel path", bars.Bars / 2, least, LimitSense.AtLeast, JointWords.Plain, source);
    }

    private IEnumerable<LimitCheck> Lengths(BarLayout bars)
    {
        if (_limits.LeastDowelLength is { } length) yield return Least("bar length", bars.Length, length);
        var embedded = Math.Min(bars.Embedment, bars.Length - bars.Embedment - _conditions.JointWidth);
        if (_limits.LeastEmbedment is { } embedment) yield return Least("embedment", embedded, embedment);
        var beta = DowelBar.Beta(_conditions.DowelSupport, bars.Diameter, _conditions.SteelModulus);
        yield return new("embedment for a long bar (2/β)", embedded, LongBar / beta, LimitSense.AtLeast, JointWords.Small, Springs);
    }

    private IEnumerable<LimitCheck> Mechanical(BarLayout? bars, Effects effects)
    {
        if (bars is not null)
        {
            yield return new("bearing on the concrete", effects.Bearing, DowelBar.AllowableBearing(bars.Diameter, _conditions.Strength),
                LimitSense.AtMost, JointWords.Stress, Bearings);
            if (_limits.LeastTransfer is { } transfer)
                yield return new("deflection transfer in the wheel path", effects.Transfer, transfer.Value, LimitSense.AtLeast, JointWords.Share, transfer.Source);
        }

        yield return new("fatigue damage of the slab", effects.Damage, 1, LimitSense.AtMost, JointWords.Plain, FatigueLaws.Of(Law).Source);
        if (_limits.GreatestFaulting is { } faulting)
        {
            yield return new("faulting at the end of the design years", effects.Faulting.After(_conditions.DesignYears), faulting.Value,
                LimitSense.AtMost, JointWords.Small, faulting.Source);
        }
    }

    private static LimitCheck Least(string name, double value, Sourced<double> limit) =>
        new(name, value, limit.Value, LimitSense.AtLeast, JointWords.Small, limit.Source);
}
