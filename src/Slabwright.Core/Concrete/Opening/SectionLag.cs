using System.Collections.Immutable;
using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Evidence;
using Slabwright.Core.Numerics;

namespace Slabwright.Core.Concrete.Opening;

/// <summary>
/// How far edge and corners of a repair run behind its column: the difference between a section through the repair and the column on the same
/// cells, for the case as planned. Laid on the columns of all trials it makes edge and corner govern at the price of one section.
/// </summary>
/// <remarks>
/// Tests run the section for every trial instead and compare. A corner of the plan is cold from two sides; the section knows one. Its share
/// of the warmth over the old slab is taken as the product of the shares by the one side and by the other, which is exact for conduction
/// without sources into two faces alike (Newman's product rule, from memory) and our inference for hydrating concrete.
/// </remarks>
internal sealed class SectionLag
{
    /// <summary>Differences of the warmth below this are too small to divide by, K; nothing lags then.</summary>
    private const double LeastWarmth = 2;

    /// <summary>Air by which the old slabs are tried, K.</summary>
    private const double AirStep = 2;

    private readonly ImmutableArray<Place> _places;

    private SectionLag(ImmutableArray<Place> places) => _places = places;

    /// <summary>Why edge and corner are where they are.</summary>
    public static Reason Because { get; } = new("edge and corner",
        "Edge and corners follow the column by the lag of a section through the repair with old slabs at both ends; at a corner the lags of both sides multiply (our inference).",
        new SourceRef("SECTION-LAG", "docs/steps/concrete-heat.md", SourceStatus.Computed));

    /// <summary>Cells of the section: only differences are taken of it.</summary>
    private static HeatCells Cells { get; } = new(0.015, 1.6, 0.6);

    /// <summary>Finds the lag.</summary>
    /// <param name="column">The column as planned.</param> <param name="run">Its run, road temperatures found.</param> <param name="length">Length of the repair, m.</param>
    /// <param name="form">Form along one side of the repair; null: old slabs all round.</param>
    public static SectionLag Of(SlabColumn column, HeatRun run, double length, EdgeFormCover? form)
    {
        var (h, inset) = (column.Thickness, SlabSection.ProbeInset);
        var coarse = column with { Cells = Cells, Points = [new("upper", 0, inset), new("lower", 0, h - inset)] };
        var middle = coarse.Run(run);
        var road = coarse with { Hydration = null, Covers = CoverSchedule.Dry };
        var (old, warmer) = (road.Continue(run), road.Continue(run with { Weather = run.Weather.Shifted(AirStep) }));
        var ends = new SlabSection { Column = coarse, Length = length }.Run(run);
        var sides = form is null ? ends : new SlabSection
        {
            Column = coarse, Length = form.Width, Ahead = SectionSide.Formed(form.Resistance, double.IsFinite(form.StripHours) ? form.StripHours * 3600 : double.PositiveInfinity),
        }.Run(run);
        var hours = middle.Times.Select(t => t / 3600).ToArray();
        var places = ImmutableArray.CreateBuilder<Place>();
        places.Add(Made(SlabPlace.Edge, SlabPlace.MidDepth, "middle", "middle", (i, t, warmth) => Share(ends.Point("edge").Temperatures[i] - t, warmth), 1));
        if (form is not null)
            places.Add(Made(SlabPlace.Edge, SlabPlace.MidDepth, "middle", "middle", (i, t, warmth) => Share(sides.Point("edge").Temperatures[i] - t, warmth), 1));
        places.Add(Corner(SlabPlace.Surface, "top", "upper", "top corner"));
        places.Add(Corner(SlabPlace.Bottom, "bottom", "lower", "bottom corner"));
        return new(places.ToImmutable());

        Place Corner(SlabPlace beside, string face, string depth, string corner) => Made(SlabPlace.Corner, beside, face, depth, (i, t, warmth) =>
            Share(ends.Point(corner).Temperatures[i] - t, warmth) * Share(sides.Point(corner).Temperatures[i] - t, warmth), 2);

        Place Made(SlabPlace place, SlabPlace beside, string face, string depth, Func<int, double, double, double> shareAt, int faces)
        {
            var (offsets, shares, airs) = (new double[hours.Length], new double[hours.Length], new double[hours.Length]);
            for (var i = 0; i < hours.Length; i++)
            {
                var (t, full) = (old.Point(depth).Temperatures[i], middle.Point(depth).Temperatures[i]);
                var share = shareAt(i, t, full - t);
                offsets[i] = t + share * (full - t) - middle.Point(face).Temperatures[i];
                shares[i] = Math.Abs(full - t) < LeastWarmth ? Math.Pow(Contact(column, middle.Times[i]), faces) : Math.Clamp(share, 0, 1);
                airs[i] = (1 - shares[i]) * (warmer.Point(depth).Temperatures[i] - t) / AirStep;
            }

            return new(place, beside, hours, offsets, shares, airs);
        }
    }

    /// <summary>
    /// Histories of a column with those of edge and corners added. Where the column is warmer than planned, edge and corner are warmer by the
    /// share of the warmth they hold; the old slabs beside them are only warmer with the air.
    /// </summary>
    /// <param name="column">Histories of a case.</param> <param name="planned">Those of the case as planned.</param> <param name="air">Air of the case over that planned, K.</param>
    public ImmutableArray<PlaceHistory> With(ImmutableArray<PlaceHistory> column, ImmutableArray<PlaceHistory> planned, double air) =>
    [
        .. column,
        .. _places.Select(p =>
        {
            var (here, plan) = (Of(column, p), Of(planned, p));
            return new PlaceHistory(p.Name, [.. here.Select((t, i) =>
            {
                var before = plan[Math.Min(i, plan.Length - 1)];
                if (before.Hours != t.Hours) return t with { Temperature = t.Temperature + p.Offset(t.Hours) };
                return t with { Temperature = before.Temperature + p.Offset(t.Hours) + p.Share(t.Hours) * (t.Temperature - before.Temperature) + p.Air(t.Hours) * air };
            })]);
        }),
    ];

    private static ImmutableArray<ConcreteTemperature> Of(ImmutableArray<PlaceHistory> histories, Place place) => histories.First(h => h.Place == place.Beside).History;

    /// <summary>Share of a sudden warmth that is left at the probe beside an old slab: two half-spaces alike in touch, (1 + erf(d/(2 √(a t))))/2.</summary>
    /// <remarks>Source: Carslaw and Jaeger, composite solids (from memory).</remarks>
    private static double Contact(SlabColumn column, double time)
    {
        if (time <= 0) return 1;
        var spread = column.Concrete.ConductivityAt(0) / column.Concrete.CapacityAt(0, 20) * time;
        return Normal.Cumulative(SlabSection.ProbeInset / Math.Sqrt(2 * spread));
    }

    private static double Share(double part, double whole) => Math.Abs(whole) < LeastWarmth ? 1 : part / whole;

    private sealed record Place(SlabPlace Name, SlabPlace Beside, double[] Hours, double[] Offsets, double[] Shares, double[] Airs)
    {
        /// <summary>Difference from the column as planned, K.</summary>
        public double Offset(double hour) => At(Offsets, hour);

        /// <summary>Share of a difference from the plan that is felt here.</summary>
        public double Share(double hour) => At(Shares, hour);

        /// <summary>What the old slab beside adds for each kelvin of air.</summary>
        public double Air(double hour) => At(Airs, hour);

        /// <summary>Value at an hour, straight between; the last holds after.</summary>
        private double At(double[] values, double hour)
        {
            if (hour >= Hours[^1]) return values[^1];
            var i = Array.BinarySearch(Hours, hour);
            if (i >= 0) return values[i];
            i = ~i;
            return i == 0 ? values[0] : values[i - 1] + (hour - Hours[i - 1]) / (Hours[i] - Hours[i - 1]) * (values[i] - values[i - 1]);
        }
    }
}

/// <summary>A column with the lag of a planned case laid on it.</summary>
internal sealed class LaggingSlabHeat(WeatherSlabHeat column, SectionLag lag, ImmutableArray<PlaceHistory> planned, double air) : ISlabHeat
{
    /// <inheritdoc/>
    public ImmutableArray<PlaceHistory> Run(HeatCase heatCase) => lag.With(column.Run(heatCase), planned, heatCase.AirShift - air);
}
