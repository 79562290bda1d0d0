using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Joints.Removal;

/// <summary>Which published factors anchors and gear must meet.</summary>
public enum AnchorPractice
{
    /// <summary>29 CFR 1926.704 for precast members other than tilt-up: inserts 4 times, gear 5 times the load.</summary>
    PrecastInserts,

    /// <summary>29 CFR 1926.704 for tilt-up members: inserts 2 times, gear 5 times the load.</summary>
    TiltUpInserts,

    /// <summary>Australian practice (AS 3850): anchors 2.5 times, reusable gear 5 times the load.</summary>
    AustralianPrecast,
}

/// <summary>How the load chart is read between two radii.</summary>
public enum ChartReading
{
    /// <summary>The capacity of the next greater radius of the chart.</summary>
    NextRow,

    /// <summary>On the straight line between two rows; only where the maker allows it.</summary>
    StraightLine,
}

/// <summary>One row of a crane's load chart for the boom and counterweight in use.</summary>
/// <param name="Radius">From the centre of turning to the hook, m.</param>
/// <param name="Capacity">Capacity, kg.</param>
public sealed record ChartRow(double Radius, double Capacity);

/// <summary>The crane and where it stands.</summary>
public sealed record CraneSetting
{
    /// <summary>Name of the machine and chart as the project calls them.</summary>
    public required string Name { get; init; }

    /// <summary>The chart, by rising radius and falling capacity.</summary>
    public required ImmutableArray<ChartRow> Chart { get; init; }

    /// <summary>Share of the chart that may be used, above 0 to 1.</summary>
    public Sourced<double> Share { get; init; } = new(0.75, SourceRef.CommonPractice);

    /// <summary>Mass of hook block, spreader and slings, kg.</summary>
    public double RiggingMass { get; init; } = 250;

    /// <summary>How the chart is read between two radii.</summary>
    public ChartReading Reading { get; init; } = ChartReading.NextRow;

    /// <summary>From the lane's edge to the centre of turning in the closed lane beside, m; null: the middle of that lane.</summary>
    public double? BesideEdge { get; init; }

    /// <summary>Along the road from the centre of turning to the middle of the furthest piece lifted from one stand, m; for pieces further off the crane moves on.</summary>
    public double AlongReach { get; init; } = 3;

    /// <summary>From the end of the repair to the centre of turning, m, where the road has one lane and the crane stands in line.</summary>
    public double InLineDistance { get; init; } = 6;
}

/// <summary>Choices and inputs for lifting old concrete out. SI.</summary>
public sealed record LiftingSettings
{
    private static readonly SourceRef NoFigure =
        new("to be confirmed", "no published figure for an old slab on its base; precast practice counts 1 to 3 kN/m² for forms (from memory)", SourceStatus.CommonPractice);

    /// <summary>Defaults.</summary>
    public static LiftingSettings Default { get; } = new();

    /// <summary>Longest piece, m: about 6 ft.</summary>
    public Sourced<double> LongestPiece { get; init; } = new(LiftCount.LongestPiece, new SourceRef("MO-EPG", "613.1.1", SourceStatus.Verified));

    /// <summary>Shortest piece it is worth cutting to, m; shorter pieces are split across the lane instead.</summary>
    public Sourced<double> ShortestPiece { get; init; } = new(0.6096, SourceRef.CommonPractice);

    /// <summary>Heaviest piece the rigging or the truck takes, kg; null when not given.</summary>
    public double? HeaviestPiece { get; init; }

    /// <summary>Density of the old concrete, kg/m³: 150 lb/ft³.</summary>
    public Sourced<double> Density { get; init; } = new(LiftCount.Density, SourceRef.CommonPractice);

    /// <summary>Water in and on the piece, share of its mass.</summary>
    public Sourced<double> WaterShare { get; init; } = new(0.03, NoFigure);

    /// <summary>Bond and suction at the base, Pa of the piece's underside.</summary>
    public Sourced<double> BaseBond { get; init; } = new(1000, NoFigure);

    /// <summary>Friction at the sawn sides, Pa of their area.</summary>
    public Sourced<double> SideFriction { get; init; } = new(1000, NoFigure);

    /// <summary>Factor for swinging and snatching once the piece hangs.</summary>
    public Sourced<double> DynamicFactor { get; init; } = new(1.3, new SourceRef("LIFT-SHEET", "floor unit, on site", SourceStatus.Verified));

    /// <summary>Sling legs, one to a pin.</summary>
    public int Legs { get; init; } = 4;

    /// <summary>True where a spreader or sheaves share the load among all legs.</summary>
    public bool Equalised { get; init; }

    /// <summary>Sling angle from the horizontal, rad; not under 30°.</summary>
    public double SlingAngle { get; init; } = Math.PI / 3;

    /// <summary>Which factors anchors and gear must meet.</summary>
    public AnchorPractice Practice { get; init; } = AnchorPractice.PrecastInserts;

    /// <summary>Strength of one lift pin in this concrete, N; null when not given.</summary>
    public double? PinStrength { get; init; }

    /// <summary>Strength (breaking load) of one sling leg and its gear, N; null when not given.</summary>
    public double? GearStrength { get; init; }

    /// <summary>The crane; null when the project gives none.</summary>
    public CraneSetting? Crane { get; init; }

    /// <summary>Factor on anchors.</summary>
    public double AnchorFactor => Practice switch { AnchorPractice.PrecastInserts => 4, AnchorPractice.TiltUpInserts => 2, _ => 2.5 };

    /// <summary>Factor on slings, hooks and shackles.</summary>
    public double GearFactor => 5;

    /// <summary>Where the two factors come from.</summary>
    public SourceRef PracticeSource => Practice == AnchorPractice.AustralianPrecast
        ? new SourceRef("AS-3850", "as quoted in an encyclopaedia of lifting anchors", SourceStatus.Verified)
        : new SourceRef("29-CFR-1926.704", "inserts and lifting hardware", SourceStatus.Verified);

    /// <summary>Legs taken to carry: all where the load is shared, else no more than two.</summary>
    public int CarryingLegs => Equalised ? Legs : Math.Min(Legs, 2);
}
