using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Numerics.Heat;

namespace Slabwright.Core.Concrete.Heat;

/// <content>
/// One step: half a step along the road, a whole step downwards with surface and hydration, half a step along the road (Strang splitting).
/// Each part is implicit in conduction and of second order (<see cref="ImplicitExplicit"/>); hydration is taken explicitly as the exact
/// change of the degree over the stage.
/// </content>
internal sealed partial class HeatGrid
{
    private double[] before = [], known = [], old = [], freed = [], work = [], startDegrees = [], startRates = [], ends = [];

    /// <summary>Other sources of heat, W/m³, by place along, depth and time; for tests with made-up solutions.</summary>
    public Func<double, double, double, double>? Extra { get; set; }

    /// <summary>Sum of the heat booked so far, J for each metre of lane width, or each square metre in a column.</summary>
    public HeatBalance Balance { get; private set; }

    /// <summary>Steps taken.</summary>
    public int Steps { get; private set; }

    /// <summary>Starts the books anew, from now on.</summary>
    public void OpenBooks() => (Balance, Steps) = (default, 0);

    /// <summary>Moves the grid on.</summary>
    /// <param name="time">Time at the start of the step, s.</param> <param name="length">Length of the step, s.</param>
    /// <param name="early">Surface laws for the first stage.</param> <param name="late">The same laws for the second; both are set to their times here.</param>
    /// <param name="around">Air beyond the ends, °C; of no effect where they are insulated.</param>
    public void Step(double time, double length, ISurfaceLaw[] early, ISurfaceLaw[] late, double around = 0)
    {
        Follow();
        foreach (var law in early) law.Set(time + ImplicitExplicit.Gamma * length);
        foreach (var law in late) law.Set(time + length);
        Temperatures.CopyTo(before, 0);
        Array.Clear(ends);
        sweep?.Step(rowCapacity, rowLinks, Temperatures, length / 2, around, ends);
        var (released, top, bottom) = (0.0, 0.0, 0.0);
        for (var c = 0; c < Widths.Length; c++)
        {
            var booked = StepColumn(c, time, length, early[SurfaceOf[c]], late[SurfaceOf[c]]);
            released += Widths[c] * booked.Freed;
            top += Widths[c] * booked.ThroughSurface;
            bottom += Widths[c] * booked.FromBelow;
        }

        sweep?.Step(rowCapacity, rowLinks, Temperatures, length / 2, around, ends);
        for (var r = 0; r < ends.Length; r++) top += Heights[r] * ends[r];
        Balance = new(Balance.Stored + Stored(), Balance.Freed + released, Balance.ThroughSurface + top, Balance.FromBelow + bottom);
        Steps++;
    }

    private void InitialiseWork()
    {
        var rows = Heights.Length;
        before = new double[Temperatures.Length];
        (known, old, freed, work) = (new double[rows], new double[rows], new double[rows], new double[rows]);
        (startDegrees, startRates) = (new double[rows], new double[rows]);
        ends = new double[sweep is null ? 0 : rows];
    }

    private double Stored()
    {
        var sum = 0.0;
        for (var c = 0; c < Widths.Length; c++)
        {
            var column = 0.0;
            for (var i = c * Heights.Length; i < (c + 1) * Heights.Length; i++) column += columnCapacity[i] * (Temperatures[i] - before[i]);
            sum += Widths[c] * column;
        }

        return sum;
    }

    /// <summary>A column's step; what it books is J/m².</summary>
    private HeatBalance StepColumn(int column, double time, double length, ISurfaceLaw early, ISurfaceLaw late)
    {
        var rows = Heights.Length;
        var start = column * rows;
        var temperatures = Temperatures.AsSpan(start, rows);
        var capacity = columnCapacity.AsSpan(start, rows);
        var links = verticalLinks.AsSpan(column * (rows + 1), rows + 1);
        var stage = ImplicitExplicit.Gamma * length;
        var fresh = curve is not null && column >= freshColumns.From && column < freshColumns.To ? SlabRows : 0;

        for (var r = 0; r < rows; r++) known[r] = capacity[r] * temperatures[r];
        if (fresh > 0) HydrateFirst(start, fresh, length);
        AddExtra(column, time + stage, stage, known);
        temperatures.CopyTo(old);
        var flux = ColumnStage.Solve(capacity, links, known, stage, early, Deep, work, temperatures, ref Outer[column], out var below);
        var booked = (Top: (length - stage) * flux, Bottom: (length - stage) * below);

        for (var r = 0; r < rows; r++)
        {
            var gain = capacity[r] * (temperatures[r] - old[r]);
            known[r] = capacity[r] * old[r] + ImplicitExplicit.Carry * (r < fresh ? gain - freed[r] : gain);
        }

        var released = fresh > 0 ? HydrateLast(start, fresh, length) : 0;
        AddExtra(column, time + length, stage, known);
        Flux[column] = ColumnStage.Solve(capacity, links, known, stage, late, Deep, work, temperatures, ref Outer[column], out below);
        return new(0, released, booked.Top + stage * Flux[column], booked.Bottom + stage * below);
    }

    /// <summary>Ages and heat of the first stage; leaves the starting degrees and rates for the second.</summary>
    private void HydrateFirst(int start, int fresh, double length)
    {
        for (var r = 0; r < fresh; r++)
        {
            var i = start + r;
            startDegrees[r] = Degrees[i];
            startRates[r] = curve!.AgeRate(Temperatures[i]);
            var age = Ages[i] + ImplicitExplicit.Gamma * length * startRates[r];
            freed[r] = curve.HeatPerVolume * Heights[r] * (curve.DegreeOfHydration(age) - startDegrees[r]);
            known[r] += freed[r];
        }
    }

    /// <summary>Ages, degrees and heat at the end of the step.</summary>
    private double HydrateLast(int start, int fresh, double length)
    {
        var sum = 0.0;
        for (var r = 0; r < fresh; r++)
        {
            var i = start + r;
            var rate = curve!.AgeRate(Temperatures[i]);
            Ages[i] += length * (ImplicitExplicit.Delta * startRates[r] + (1 - ImplicitExplicit.Delta) * rate);
            Degrees[i] = curve.DegreeOfHydration(Ages[i]);
            var heat = curve.HeatPerVolume * Heights[r] * (Degrees[i] - startDegrees[r]);
            known[r] += heat;
            sum += heat;
        }

        return sum;
    }

    private void AddExtra(int column, double time, double weight, Span<double> heats)
    {
        if (Extra is null) return;
        var along = 0.0;
        for (var c = 0; c < column; c++) along += Widths[c];
        along += Widths[column] / 2;
        var depth = 0.0;
        for (var r = 0; r < heats.Length; r++)
        {
            heats[r] += weight * Heights[r] * Extra(along, depth + Heights[r] / 2, time);
            depth += Heights[r];
        }
    }
}
