using System.Diagnostics;
using System.Globalization;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Live;
using Slabwright.Core.Measures;
using Slabwright.Core.Numerics.Plates;
using Slabwright.Core.Pavement;
using Slabwright.SystemTests.Plates;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
switch (args.FirstOrDefault())
{
    case "ratio": Ratio(args.Contains("keep")); break;
    case "growth": Growth(); break;
    case "influence": Influence(); break;
    case "live": Live(); break;
    default: Console.WriteLine("ratio | growth | influence | live"); break;
}

// Six slabs of about 20,000 unknowns, ours and CalculiX on the same nodes, springs and forces, in one run.
static void Ratio(bool keep)
{
    NodalSlabs Warm() => new(0.4);
    Warm().Solve();
    var times = new List<double>();
    var (slabs, state) = (Warm(), Warm().Solve());
    for (var n = 0; n < 5; n++)
    {
        var watch = Stopwatch.StartNew();
        slabs = new NodalSlabs(0.22);
        state = slabs.Solve();
        _ = slabs.Panels.Select(p => new MomentField(p, state.Movements)).ToArray();
        times.Add(watch.Elapsed.TotalSeconds);
    }

    var folder = Path.Combine(Path.GetTempPath(), "slabwright-plate-bench");
    var other = CalculixRun.Of(slabs, folder);
    if (!keep) Directory.Delete(folder, recursive: true);
    var nodes = slabs.Panels.SelectMany(p => Enumerable.Range(0, p.Elements).SelectMany(e => NodalSlabs.Eight(p, e))).Distinct().ToArray();
    var most = nodes.Max(n => Math.Abs(state.Movements[3 * n]));
    var worst = nodes.Max(n => Math.Abs(state.Movements[3 * n] - other.Deflection(n))) / most;
    times.Sort();
    Console.WriteLine($"unknowns {slabs.Plates.FreeCount}, factor entries {slabs.Plates.FactorEntries}, residual {state.Residual:E1}, imbalance {state.Imbalance:E1}");
    Console.WriteLine($"ours, assembly to stresses: median {times[2]:0.000} s, least {times[0]:0.000} s");
    Console.WriteLine($"{other.Version}: {other.Seconds:0.00} s, one thread");
    Console.WriteLine($"ratio {other.Seconds / times[2]:0.0}; largest difference of deflection {worst:P3} of the greatest");
    Console.WriteLine($"peak memory of this process {Process.GetCurrentProcess().PeakWorkingSet64 / 1048576} MiB");
}

static void Growth()
{
    new NodalSlabs(0.4).Solve();
    foreach (var size in (double[])[0.45, 0.3, 0.22, 0.15, 0.11])
    {
        GC.Collect();
        var before = GC.GetTotalMemory(true);
        var watch = Stopwatch.StartNew();
        var slabs = new NodalSlabs(size);
        slabs.Plates.Factor();
        var seconds = watch.Elapsed.TotalSeconds;
        var held = GC.GetTotalMemory(true) - before;
        watch.Restart();
        slabs.Solve();
        Console.WriteLine($"{slabs.Plates.FreeCount,8} unknowns: assembled and factored {seconds:0.000} s, one load {watch.Elapsed.TotalSeconds * 1000:0.0} ms, factor {slabs.Plates.FactorEntries * 8 / 1048576.0:0.0} MiB, held {held / 1048576.0:0.0} MiB");
    }
}

static void Influence()
{
    var slabs = new NodalSlabs(0.22);
    var repair = slabs.Panels[1];
    slabs.Plates.Factor();
    var loads = Enumerable.Range(0, 1000).Select(n =>
    {
        var load = slabs.Plates.NewLoads();
        var (x, y) = (4.6 + n % 40 * 0.04, 0.3 + n / 40 * 0.12);
        PlateLoads.AddPatch(load, repair, x - 0.1, y - 0.15, x + 0.1, y + 0.15, 6e5);
        return load;
    }).ToArray();
    foreach (var round in (int[])[1, 2])
    {
        var watch = Stopwatch.StartNew();
        var all = slabs.Plates.SolveMany(loads);
        var many = watch.Elapsed.TotalSeconds;
        watch.Restart();
        foreach (var load in loads.Take(100)) slabs.Plates.SolveMany([load]);
        var single = watch.Elapsed.TotalSeconds * 10;
        Console.WriteLine($"round {round}: 1,000 load positions together {many:0.00} s ({many:0.00} ms each), one by one {single:0.00} s; {slabs.Plates.FreeCount} unknowns, last {all[^1][0]:E2}");
    }
}

// What one move of the axle on the desk's live joint costs: bars by influence, field by back-substitution, contours of 40 by 24.
static void Live()
{
    var conditions = Ordinary();
    var bars = new BarLayout
    {
        Kind = BarKind.Dowel, Arrangement = BarArrangement.FullWidth, Diameter = 0.0381, Length = 0.4572, Embedment = 0.2286, Depth = 0.127,
        Offsets = [.. Enumerable.Range(0, 11).Select(n => 0.3048 + n * 0.3048)], Spacing = 0.3048,
    };
    foreach (var around in (LiveSurroundings[])[new(), new(LosesContact: true, TopWarmer: -8, HollowCorner.OldSlab)])
    {
        var watch = Stopwatch.StartNew();
        var joint = LiveJoint.Build(conditions, bars, around);
        var built = watch.Elapsed.TotalMilliseconds;
        var grid = LiveGrid.Over(joint, -3, 3);
        List<double> influence = [], field = [], contours = [];
        var (most, worst) = (0, 0.0);
        for (var n = 0; n < 60; n++)
        {
            var axle = LiveAxle.AtJoint(conditions.Traffic[0], conditions) with { Along = -1.5 + 0.05 * n };
            var wheels = axle.Wheels(conditions);
            if (around.AddsUp) influence.Add(Timed(() => joint.BarsUnder(wheels)));
            LiveAnswer? answer = null;
            field.Add(Timed(() => answer = joint.Under(axle)));
            contours.Add(Timed(() => answer!.Field(LiveQuantity.BottomTension, grid)));
            (most, worst) = (Math.Max(most, answer!.State.Plate.Iterations), Math.Max(worst, Math.Abs(answer.State.Plate.Imbalance)));
        }

        Console.WriteLine(around.AddsUp ? "base in touch everywhere" : "contact may be lost: weight, top 8 K colder, hollow under a corner");
        Console.WriteLine($"  {joint.Model.Unknowns} unknowns, {bars.Bars} bars, built in {built:0} ms; at most {most} solutions a move, imbalance {worst:E1}");
        if (influence.Count > 0) Console.WriteLine($"  bar forces by influence: {Spread(influence)}");
        Console.WriteLine($"  whole answer, bars, field, both sides, greatest stresses: {Spread(field)}");
        Console.WriteLine($"  contour grid 40 x 24 of stress: {Spread(contours)}");
    }

    static double Timed(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalMilliseconds;
    }

    static string Spread(List<double> times)
    {
        times.Sort();
        return $"median {times[times.Count / 2]:0.00} ms, slowest but three {times[^4]:0.00} ms";
    }
}

static JointConditions Ordinary() => new()
{
    Thickness = 0.254, LaneWidth = 3.6576, OldSlab = 6, Repair = 1.8288, Modulus = 27.6e9, Poisson = 0.15, Strength = 27.6e6, Rupture = 4.5e6,
    Reaction = 40.7e6, Expansion = 1e-5, Base = BaseKind.Granular, Drainage = 1, Climate = new Climate(true), Temperatures = new(-18, 49), DowelSupport = 407e9, SteelModulus = 200e9,
    JointWidth = 0.005, OuterEdge = LaneEdge.AsphaltShoulder, Traffic = [new(1, Units.Kip.ToBase(20), 100)], EquivalentAxlesPerDay = 1000, Growth = 0.02, DesignYears = 20,
};
