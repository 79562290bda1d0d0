using System.Diagnostics;
using System.Globalization;
using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Core.Numerics;
using Slabwright.Data.Weather;
using Slabwright.SystemTests.HeatFlow;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var weather = WeatherFile.Read(Path.Combine(AppContext.BaseDirectory, "data", "weather", "tmy3_723170_NC.csv"), new() { Site = new(36.1, -79.95, -5, 273) }).Series!;
var column = new SlabColumn { Thickness = 0.23, Hydration = HydrationEstimate.From(new(CementComposition.TypeIii, 0.40), 480) };
var section = new SlabSection { Column = column, Length = 1.8 };
var night = new HeatRun { Weather = weather, Placed = new DateTime(2026, 4, 14, 22, 0, 0), PlacingTemperature = 24, Duration = 48 * 3600 };
night = night with { Before = column.SpinUp(night) };
switch (args.FirstOrDefault())
{
    case "section": Section(); break;
    case "forecasts": Forecasts(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 10_000); break;
    case "ratio": Ratio(); break;
    case "steps": Steps(); break;
    default: Console.WriteLine("section | forecasts [count] | ratio [where] | steps"); break;
}

// One run of 48 hours: a section and a column, the spin-up apart.
void Section()
{
    var history = section.Run(night);
    Console.WriteLine($"section: {history.Along.Length} × {history.Depths.Length} cells, {history.Steps} steps, heat balance {history.Balance.Error:E1}");
    Console.WriteLine($"section, 48 h: {Median(() => section.Run(night), 15):0.0} ms");
    Console.WriteLine($"column, 48 h: {Median(() => column.Run(night), 101):0.00} ms");
    Console.WriteLine($"spin-up, 14 days: {Median(() => column.SpinUp(night), 51):0.00} ms");
}

// Ten thousand nights of 24 hours, each in its own weather and placing temperature, on all processors.
void Forecasts(int count)
{
    var spread = weather with
    {
        Start = night.Placed.AddHours(-2), Hours = weather.Hours.Slice((int)(weather.SecondsTo(night.Placed) / 3600) - 2, 30), Spreads = [.. Enumerable.Repeat(new WeatherSpread(2, 0.1, 1, 0.3, 0.2), 30)],
    };
    var (random, one) = (new CounterRandom(20260401), night with { Duration = 24 * 3600 });
    double Trial(int i)
    {
        double Z(int stream) => Normal.Quantile(random.Uniform(stream, i, 0));
        var run = one with { Weather = spread.Drawn(new(Z(0), Z(1), Z(2), Z(3), Z(4))), PlacingTemperature = 24 + 2 * Z(5) };
        var history = column.Run(run);
        if (history.Balance.Error > 1e-9) throw new InvalidOperationException("The heat balance does not close.");
        return EquivalentAge.Along(history.Times.AsSpan(), history.Point("top").Temperatures.AsSpan(), 41_570, 23)[^1] / 3600;
    }

    for (var i = 0; i < 200; i++) Trial(i);
    var ages = new double[count];
    var watch = Stopwatch.StartNew();
    Parallel.For(0, count, i => ages[i] = Trial(i));
    Array.Sort(ages);
    Console.WriteLine($"{count} forecasts of 24 h: {watch.Elapsed.TotalSeconds:0.00} s on {Environment.ProcessorCount} processors; equivalent age of the surface P5 {ages[count / 20]:0.0} h, P95 {ages[count * 19 / 20]:0.0} h");
}

// The same cells and hours by scipy's stiff integrator, in one run.
void Ratio()
{
    var folder = Path.Combine(Path.GetTempPath(), "slabwright-heat-bench");
    foreach (var length in (double?[])[null, 1.8])
    {
        var (ours, theirs) = StiffReference.Compare(column, length, night, folder, (script, input, output) =>
        {
            using var process = Process.Start(new ProcessStartInfo(File.Exists("/usr/bin/python3") ? "/usr/bin/python3" : "python3", ["-c", script, input, output]))!;
            process.WaitForExit();
        });
        var took = length is null ? Median(() => column.Run(night), 51) : Median(() => section.Run(night), 9);
        Console.WriteLine($"{(length is null ? "column" : "section")}, 48 h: ours {took:0.00} ms, scipy BDF {theirs.Seconds:0.00} s, ratio {1000 * theirs.Seconds / took:0}; greatest difference {StiffReference.Greatest(ours, theirs):0.000} K in any cell and hour");
        if (args.Contains("where")) Console.WriteLine(StiffReference.ByHour(ours, theirs));
    }

    Directory.Delete(folder, recursive: true);
}

// What shorter steps change in any cell and hour of the section, against steps of 15 s.
void Steps()
{
    var kept = night with { KeepFields = true, Duration = 24 * 3600 };
    var fine = section.Run(kept with { Step = 15 });
    foreach (var step in (double[])[900, 600, 300, 120, 60])
    {
        var run = section.Run(kept with { Step = step });
        var worst = run.Fields.Zip(fine.Fields).Skip(1).Select(p => p.First.Temperatures.Zip(p.Second.Temperatures, (a, b) => Math.Abs(a - b)).Max()).ToArray();
        Console.WriteLine($"steps of {step} s: {run.Steps} steps, greatest change {worst.Max():0.0000} K; by hour {string.Join(' ', worst.Take(6).Select(w => w.ToString("0.000", CultureInfo.InvariantCulture)))}");
    }
}

static double Median(Action work, int times)
{
    for (var i = 0; i < 3; i++) work();
    var taken = new double[times];
    for (var i = 0; i < times; i++)
    {
        var watch = Stopwatch.StartNew();
        work();
        taken[i] = watch.Elapsed.TotalMilliseconds;
    }

    Array.Sort(taken);
    return taken[times / 2];
}
