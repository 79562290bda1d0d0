using System.Collections.Immutable;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Job;

/// <summary>Choices of the project that belong to no single step.</summary>
public sealed record ProjectSettings
{
    /// <summary>Cuts are marked at multiples of this from the road's start, m.</summary>
    public required double CutStep { get; init; }

    /// <summary>First day of work; growth runs from the survey to here. Null: no growth.</summary>
    public DateOnly? WorkDay { get; init; }

    /// <summary>Station range length for totals, m.</summary>
    public double StationRange { get; init; } = 1000 * 0.3048;

    /// <summary>Trials of the cost range.</summary>
    public int Trials { get; init; } = 1000;

    /// <summary>Seed of the cost range.</summary>
    public int Seed { get; init; } = 20260401;

    /// <summary>Nights of closure, when the project gives them; traffic control is priced with it.</summary>
    public int? Nights { get; init; }

    /// <summary>Share of the repair area whose base is loose and is replaced by concrete, 0 to 1.</summary>
    public double LooseBaseShare { get; init; }

    /// <summary>Depth of loose base taken out, m.</summary>
    public double LooseBaseDepth { get; init; }

    /// <summary>Growth of damage between survey and work, by distress type; types not named use the default row.</summary>
    public GrowthModel Growth { get; init; } = GrowthModel.None;

    /// <summary>What the project says about its joints.</summary>
    public JointSettings Joints { get; init; } = JointSettings.Default;

    /// <summary>Sealing of the repair joints.</summary>
    public SealingSettings Sealing { get; init; } = SealingSettings.Default;

    /// <summary>Sealing with the temperatures of the joint design where it gives none of its own.</summary>
    public SealingSettings SealingWithTemperatures =>
        Sealing with { Coldest = Sealing.Coldest ?? Joints.Coldest, Hottest = Sealing.Hottest ?? Joints.Hottest };

    /// <summary>Lifting old concrete out.</summary>
    public LiftingSettings Lifting { get; init; } = LiftingSettings.Default;

    /// <summary>Slabs under pressure when sawn.</summary>
    public PressureSettings Pressure { get; init; } = PressureSettings.Default;

    /// <summary>What the project says about its concrete.</summary>
    public ConcreteSettings Concrete { get; init; } = ConcreteSettings.Default;

    /// <summary>What the take-off needs of these settings.</summary>
    public MeasurementSettings Measurement => new(Nights, LooseBaseShare, LooseBaseDepth, StationRange) { Lifting = Lifting };
}

/// <summary>
/// A job as read from its folder: everything the steps need and nothing they compute. Immutable; a change makes a new one.
/// </summary>
public sealed record Project
{
    /// <summary>Name of the job.</summary>
    public required string Name { get; init; }

    /// <summary>Who it is for, printed on the cover.</summary>
    public string Owner { get; init; } = "";

    /// <summary>Units of files, screens and sheets.</summary>
    public required UnitSystem UnitSystem { get; init; }

    /// <summary>The road.</summary>
    public required Road Road { get; init; }

    /// <summary>The survey.</summary>
    public required SurveyRecord Survey { get; init; }

    /// <summary>The rule set in force.</summary>
    public required RuleSet RuleSet { get; init; }

    /// <summary>Rule sets to compare with.</summary>
    public ImmutableArray<RuleSet> OtherRuleSets { get; init; } = [];

    /// <summary>Prices.</summary>
    public required PriceList Prices { get; init; }

    /// <summary>The engineer's own decisions.</summary>
    public ImmutableArray<TreatmentOverride> Overrides { get; init; } = [];

    /// <summary>Hourly weather of the folder's weather_hourly.csv; null where there is none. Writing a project leaves that file as it is.</summary>
    public WeatherSeries? Weather { get; init; }

    /// <summary>Settings.</summary>
    public required ProjectSettings Settings { get; init; }

    /// <summary>What was wrong in the folder's files.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];
}
