using System.Collections.Immutable;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Evidence;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Handbook;

/// <summary>An input of concrete by hand that is no number with a unit: a word, a clock time, a list.</summary>
/// <param name="Key">Option it is given by.</param> <param name="Name">What it is.</param>
/// <param name="Default">Taken when not given; null where nothing is.</param> <param name="Source">Where the default comes from.</param>
/// <param name="Example">An example, for findings and help.</param>
public sealed record HandText(string Key, string Name, string? Default, SourceRef Source, string Example);

/// <summary>What comes from files in place of being typed.</summary>
public sealed record ConcreteFiles
{
    /// <summary>Nothing.</summary>
    public static ConcreteFiles None { get; } = new();

    /// <summary>Weather of the nights and some days before; null: typed.</summary>
    public WeatherSeries? Weather { get; init; }

    /// <summary>Mixes; empty: typed.</summary>
    public ImmutableArray<ConcreteMix> Mixes { get; init; } = [];

    /// <summary>Breaks of their specimens.</summary>
    public ImmutableArray<StrengthBreak> Breaks { get; init; } = [];

    /// <summary>Heat measured on them.</summary>
    public ImmutableArray<MeasuredHeat> HeatCurves { get; init; } = [];

    /// <summary>Strengths at opening where none is typed.</summary>
    public ImmutableArray<OpeningRow> Rows { get; init; } = PublishedRuleSets.CommonPractice.Opening;
}

/// <summary>One part of a cubic metre of a mix.</summary>
/// <param name="Name">The part.</param> <param name="Mass">Mass, kg/m³; null for air.</param> <param name="RelativeDensity">Relative density; null for air.</param>
/// <param name="Volume">Volume without voids, share of the concrete.</param>
public sealed record HandVolume(string Name, double? Mass, double? RelativeDensity, double Volume);

/// <summary>A mix as taken: its parts by absolute volume, its cost, and what was filled in.</summary>
/// <param name="Mix">The mix.</param> <param name="Volumes">Its parts.</param> <param name="Yield">Volume its masses make, m³; 1 when they close.</param>
/// <param name="CostPerCubicMetre">Cost; null when no price is known.</param> <param name="Reasons">Where parts come from that were not given.</param>
public sealed record HandMix(ConcreteMix Mix, ImmutableArray<HandVolume> Volumes, double Yield, decimal? CostPerCubicMetre, ImmutableArray<Reason> Reasons);

/// <summary>Concrete by hand: when each mix opens on each night, with everything asked beside, or the findings that kept it from being worked out.</summary>
public sealed record HandConcrete
{
    /// <summary>Every input as taken.</summary>
    public required ImmutableArray<HandInput> Inputs { get; init; }

    /// <summary>The mixes.</summary>
    public ImmutableArray<HandMix> Mixes { get; init; } = [];

    /// <summary>The concrete opened for further questions; null where an input is wrong.</summary>
    public ConcreteStudy? Study { get; init; }

    /// <summary>Every mix on every night.</summary>
    public ConcretePlan Plan { get; init; } = ConcretePlan.Empty;

    /// <summary>Peak of each row of the plan.</summary>
    public ImmutableArray<NightDetail> Details { get; init; } = [];

    /// <summary>What was wrong or doubtful.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>True when it was worked out.</summary>
    public bool Succeeded => Study is not null;
}
