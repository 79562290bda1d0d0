using Slabwright.Core.Numerics.Heat;

namespace Slabwright.Core.Concrete.Heat;

/// <content>
/// One step of two stages (<see cref="ImplicitExplicit"/>). In a stage the columns are solved implicitly with surface and ground, what flows
/// along the rows held; then the rows are corrected implicitly (<see cref="RowSweep"/>). A steady state is kept whatever the step. Hydration is
/// taken explicitly as the exact change of the degree.
/// </content>
internal sealed partial class HeatGrid
{
    private double[] start = [], changes = [], power = [], freed = [], startDegrees = [], startRates = [], known = [], work = [];

    /// <summary>Other sources of heat, W/m³, by place along, depth and time; for tests with made-up solutions.</summary>
    public Func<double, double, double, double>? Extra { get; set; }

    /// <summary>Sum of the heat booked so far, J for each metre of lane width, or each square metre in a column.</summary>
    public HeatBalance Balance { get; private set; }

    /// <summary>Steps taken.</summary>
    public int Steps { get; private set; }

    /// <summary>Moves the grid on.</summary>
    /// <param name="time">Time at the start of the step, s.</param> <param name="length">Length of the step, s.</param>
    /// <param name="early">Surface laws for the first stage.</param> <param name="late">The same laws for the second; both are set to their times here.</param>
    /// <param name="around">Air beyond the ends, °C; of no effect where they are insulated.</param>
    public void Step(double time, double length, ISurfaceLaw[] early, ISurfaceLaw[] late, double around = 0)
    {
        Follow();
        var stage = ImplicitExplicit.Gamma * length;
        foreach (var law in early) law.Set(time + stage);
        foreach (var law in late) law.Set(time + length);
        sweep?.Factor(rowCapacity, rowLinks, stage);
        Temperatures.CopyTo(start, 0);

        Known(length, first: true);
        var booked = Stage(time + stage, stage, early, around);
        var released = Known(length, first: false);
        var last = Stage(time + length, stage, late, around);
        var carry = (length - stage) / stage;
        Balance = new(Balance.Stored + Stored(), Balance.Freed + released, Balance.ThroughSurface + carry * booked.Surface + last.Surface,
            Balance.FromBelow + carry * booked.Below + last.Below);
        Steps++;
    }

    private void InitialiseWork()
    {
        var cells = Temperatures.Length;
        (start, changes, power, freed) = (new double[cells], new double[cells], new double[cells], new double[cells]);
        (startDegrees, startRates, known) = (new double[cells], new double[cells], new double[cells]);
        work = new double[Heights.Length];
    }

    /// <summary>Right-hand sides of a stage but for what flows along the rows, J/m²; for the last stage the heat freed over the step is the answer, J.</summary>
    private double Known(double length, bool first)
    {
        var rows = Heights.Length;
        var sum = 0.0;
        for (var c = 0; c < Widths.Length; c++)
        {
            var fresh = curve is not null && c >= freshColumns.From && c < freshColumns.To ? SlabRows : 0;
            for (var r = 0; r < rows; r++)
            {
                var i = c * rows + r;
                if (first)
                {
                    freed[i] = r < fresh ? HydrateFirst(i, length) * Heights[r] : 0;
                    known[i] = columnCapacity[i] * start[i] + freed[i];
                }
                else
                {
                    known[i] = columnCapacity[i] * start[i] + ImplicitExplicit.Carry * (columnCapacity[i] * (Temperatures[i] - start[i]) - freed[i]);
                    if (r >= fresh) continue;
                    var heat = HydrateLast(i, length) * Heights[r];
                    known[i] += heat;
                    sum += heat * Widths[c];
                }
            }
        }

        return sum;
    }

    /// <summary>Heat freed up to the first stage, J/m³; leaves the starting degree and rate for the last.</summary>
    private double HydrateFirst(int cell, double length)
    {
        startDegrees[cell] = Degrees[cell];
        startRates[cell] = curve!.AgeRate(Temperatures[cell]);
        return curve.HeatPerVolume * (curve.DegreeOfHydration(Ages[cell] + ImplicitExplicit.Gamma * length * startRates[cell]) - startDegrees[cell]);
    }

    /// <summary>Age and degree at the end of the step, and the heat freed over it, J/m³.</summary>
    private double HydrateLast(int cell, double length)
    {
        var rate = curve!.AgeRate(Temperatures[cell]);
        Ages[cell] += length * (ImplicitExplicit.Delta * startRates[cell] + (1 - ImplicitExplicit.Delta) * rate);
        Degrees[cell] = curve.DegreeOfHydration(Ages[cell]);
        return curve.HeatPerVolume * (Degrees[cell] - startDegrees[cell]);
    }

    /// <summary>One implicit stage: columns, then the correction along the rows. Answers the heat that came in over the stage, J.</summary>
    private (double Surface, double Below) Stage(double time, double stage, ISurfaceLaw[] laws, double around)
    {
        var rows = Heights.Length;
        var (surface, bottom) = (0.0, 0.0);
        sweep?.Power(rowLinks, Temperatures, around, power);
        if (sweep is not null) Temperatures.CopyTo(changes, 0);
        for (var c = 0; c < Widths.Length; c++)
        {
            var from = c * rows;
            var right = known.AsSpan(from, rows);
            if (sweep is not null)
            {
                for (var r = 0; r < rows; r++) right[r] += stage * power[from + r] * Heights[r] / Widths[c];
            }

            AddExtra(c, time, stage, right);
            Flux[c] = ColumnStage.Solve(columnCapacity.AsSpan(from, rows), verticalLinks.AsSpan(c * (rows + 1), rows + 1), right, stage, laws[SurfaceOf[c]], Deep, work,
                Temperatures.AsSpan(from, rows), ref Outer[c], out var below);
            surface += Widths[c] * stage * Flux[c];
            bottom += Widths[c] * stage * below;
        }

        return sweep is null ? (surface, bottom) : (surface + Correct(stage, around), bottom);
    }

    /// <summary>Corrects along the rows and answers what came in through the ends, J.</summary>
    private double Correct(double stage, double around)
    {
        for (var i = 0; i < changes.Length; i++) (changes[i], Temperatures[i]) = (Temperatures[i] - changes[i], changes[i]);
        sweep!.Correct(rowCapacity, rowLinks, stage, changes);
        for (var i = 0; i < changes.Length; i++) Temperatures[i] += changes[i];
        var sum = 0.0;
        for (var r = 0; r < Heights.Length; r++) sum += Heights[r] * stage * sweep.ThroughEnds(rowLinks, Temperatures, around, r);
        return sum;
    }

    private double Stored()
    {
        var sum = 0.0;
        for (var c = 0; c < Widths.Length; c++)
        {
            var column = 0.0;
            for (var i = c * Heights.Length; i < (c + 1) * Heights.Length; i++) column += columnCapacity[i] * (Temperatures[i] - start[i]);
            sum += Widths[c] * column;
        }

        return sum;
    }

    private void AddExtra(int column, double time, double weight, Span<double> heats)
    {
        if (Extra is null) return;
        var along = Widths[column] / 2;
        for (var c = 0; c < column; c++) along += Widths[c];
        var depth = 0.0;
        for (var r = 0; r < heats.Length; r++)
        {
            heats[r] += weight * Heights[r] * Extra(along, depth + Heights[r] / 2, time);
            depth += Heights[r];
        }
    }
}
