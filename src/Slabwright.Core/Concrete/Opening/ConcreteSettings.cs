using System.Collections.Immutable;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Concrete.Night;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>A night of work. Clock times as people read them.</summary>
/// <param name="Day">Day on which the night begins.</param>
/// <param name="PlacingFrom">Concrete may be placed from here on.</param>
/// <param name="OpenBy">Traffic returns; the day after when not later than <paramref name="PlacingFrom"/>.</param>
public sealed record WorkNight(DateOnly Day, TimeOnly PlacingFrom, TimeOnly OpenBy)
{
    /// <summary>When placing may begin.</summary>
    public DateTime From => Day.ToDateTime(PlacingFrom);

    /// <summary>When traffic returns.</summary>
    public DateTime Deadline => (OpenBy > PlacingFrom ? Day : Day.AddDays(1)).ToDateTime(OpenBy);

    /// <summary>Concrete placed at this time by the plan; null: when placing may begin.</summary>
    public TimeOnly? PlacedAt { get; init; }

    /// <summary>When the plan places, taken past midnight where the clock says so.</summary>
    public DateTime Placed => PlacedAt is not { } time ? From : (time >= PlacingFrom ? Day : Day.AddDays(1)).ToDateTime(time);
}

/// <summary>What the project says about its concrete. SI; null members fall back to the rule set or to the default named.</summary>
public sealed record ConcreteSettings
{
    /// <summary>Nothing said: no mixes, no nights, nothing to forecast.</summary>
    public static ConcreteSettings Default { get; } = new();

    /// <summary>Mixes.</summary>
    public ImmutableArray<ConcreteMix> Mixes { get; init; } = [];

    /// <summary>Breaks of their specimens.</summary>
    public ImmutableArray<StrengthBreak> Breaks { get; init; } = [];

    /// <summary>Curves stated by their constants, by mix; they win over breaks and composition.</summary>
    public ImmutableArray<MixCurve> Stated { get; init; } = [];

    /// <summary>Heat measured on mixes; a curve fitted to it goes before what is computed from composition.</summary>
    public ImmutableArray<MeasuredHeat> HeatCurves { get; init; } = [];

    /// <summary>Prices of ingredients, for mixes without a delivered price.</summary>
    public ImmutableArray<IngredientPrice> IngredientPrices { get; init; } = [];

    /// <summary>Nights worked: readings and specimens.</summary>
    public ImmutableArray<WorkedNight> Worked { get; init; } = [];

    /// <summary>How strength is tested at opening; null: as the breaks of the mix, where the rule set allows it.</summary>
    public StrengthKind? CriterionKind { get; init; }

    /// <summary>Strength at opening, Pa; null: by the rule set.</summary>
    public double? CriterionStrength { get; init; }

    /// <summary>Least age at opening, h; null: by the rule set.</summary>
    public double? LeastAge { get; init; }

    /// <summary>Chance with which a night must open on time.</summary>
    public double Confidence { get; init; } = 0.95;

    /// <summary>Nights of work.</summary>
    public ImmutableArray<WorkNight> Nights { get; init; } = [];

    /// <summary>Hours the clock runs ahead of standard time on those nights: 1 with daylight saving.</summary>
    public double ClockAhead { get; init; }

    /// <summary>Concrete temperature when placed, °C; null: 21 °C (70 °F), an assumption to be confirmed.</summary>
    public double? PlacingTemperature { get; init; }

    /// <summary>Blanket laid on each repair; null: none.</summary>
    public BlanketCover? Blanket { get; init; }

    /// <summary>Form along one side of the repairs; null: old slabs or lanes all round.</summary>
    public EdgeFormCover? Form { get; init; }

    /// <summary>What varies.</summary>
    public OpeningSpread Spread { get; init; } = new();

    /// <summary>Maturity function of the forecasts.</summary>
    public MaturityKind Maturity { get; init; } = MaturityKind.EquivalentAge;

    /// <summary>Trials of each forecast.</summary>
    public int Trials { get; init; } = 2000;

    /// <summary>Seed of the trials.</summary>
    public int Seed { get; init; } = 20260401;

    /// <summary>Columns of logger files as they were mapped, by the headers of the file; remembered for the next night.</summary>
    public ImmutableArray<RememberedColumns> LoggerColumns { get; init; } = [];

    /// <summary>Taken where the project gives no placing temperature, °C.</summary>
    public const double AssumedPlacing = 21.1;

    /// <summary>True when there is something to forecast.</summary>
    public bool HasWork => !Mixes.IsEmpty && !Nights.IsEmpty;
}

/// <summary>How the columns of a logger file were read.</summary>
/// <param name="Headers">The headers of the file, joined by a bar, by which the layout is known again.</param>
/// <param name="Time">Header of the time.</param>
/// <param name="Date">Header of the day where it stands apart; null when the time holds both.</param>
/// <param name="TimeForm">Form of the time as .NET writes it; null: found out.</param>
/// <param name="Fahrenheit">True when temperatures are °F.</param>
/// <param name="Channels">Headers of the temperatures and the places their probes sit at.</param>
public sealed record RememberedColumns(
    string Headers, string Time, string? Date, string? TimeForm, bool Fahrenheit, ImmutableArray<RememberedChannel> Channels);

/// <summary>A temperature column of a logger file.</summary>
/// <param name="Header">Header.</param> <param name="Place">Where the probe sits.</param>
public sealed record RememberedChannel(string Header, SlabPlace Place);
