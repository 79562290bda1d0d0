using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Slabwright.SystemTests.Plates;

/// <summary>
/// The same slabs in CalculiX (Debian package calculix-ccx): eight-node shells S8R, which it solves as solids of one layer, springs on dummy
/// nodes tied to the shell's deflection. Deflections and bending moments are read back.
/// </summary>
internal sealed class CalculixRun
{
    public const string Program = "ccx";

    private readonly Dictionary<int, double> _deflections = [];
    private readonly List<double> _moments = [];

    /// <summary>Deflection of a node, m.</summary>
    public double Deflection(int node) => _deflections[node];

    /// <summary>Moments that bend across the road at the points of the loaded elements, N·m/m, positive where the bottom is stretched.</summary>
    public IReadOnlyList<double> LoadedMoments => _moments;

    /// <summary>Seconds the program ran.</summary>
    public double Seconds { get; private set; }

    /// <summary>First line the program prints about itself.</summary>
    public string Version { get; private set; } = "";

    /// <summary>Writes the deck, runs the program and reads its answer.</summary>
    public static CalculixRun Of(NodalSlabs slabs, string folder)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "slabs.inp"), Deck(slabs));
        var start = new ProcessStartInfo(Program, "-i slabs") { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["OMP_NUM_THREADS"] = "1";
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var run = new CalculixRun { Seconds = watch.Elapsed.TotalSeconds, Version = output.Split('\n').FirstOrDefault(l => l.Contains("Version", StringComparison.Ordinal))?.Trim() ?? "" };
        run.Read(Path.Combine(folder, "slabs.dat"), output);
        return run;
    }

    private static string Deck(NodalSlabs slabs)
    {
        var text = new StringBuilder();
        void Line(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
        var elements = slabs.Panels.SelectMany(p => Enumerable.Range(0, p.Elements).Select(e => (Panel: p, Element: e, Nodes: NodalSlabs.Eight(p, e)))).ToArray();
        var nodes = elements.SelectMany(e => e.Nodes).Distinct().Order().ToArray();
        var dummy = nodes.Max() + 1;
        Line($"*NODE, NSET=ALL");
        foreach (var n in nodes)
        {
            var (x, y) = slabs.Place(n);
            Line($"{n + 1},{x:R},{y:R},0");
        }

        Line($"*NODE");
        foreach (var n in nodes) Line($"{dummy + n + 1},{slabs.Place(n).X:R},{slabs.Place(n).Y:R},0");
        Line($"*ELEMENT, TYPE=S8R, ELSET=SLABS");
        for (var e = 0; e < elements.Length; e++) Line($"{e + 1},{string.Join(',', elements[e].Nodes.Select(n => n + 1))}");
        Line($"*ELSET, ELSET=LOADED");
        for (var e = 0; e < elements.Length; e++)
        {
            if (elements[e].Panel == slabs.Loaded.Panel && slabs.Loaded.Elements.Contains(elements[e].Element)) Line($"{e + 1}");
        }

        Line($"*MATERIAL, NAME=CONCRETE");
        Line($"*ELASTIC");
        Line($"{NodalSlabs.Section.Modulus:0.0000000000E+00},{NodalSlabs.Section.Poisson:0.000}");
        Line($"*SHELL SECTION, ELSET=SLABS, MATERIAL=CONCRETE");
        Line($"{NodalSlabs.Section.Thickness:0.000000}");
        Springs(text, slabs, elements.Length, dummy);
        foreach (var n in nodes)
        {
            Line($"*EQUATION");
            Line($"2");
            Line($"{dummy + n + 1},3,1.,{n + 1},3,-1.");
        }

        Line($"*BOUNDARY");
        foreach (var n in nodes) Line($"{dummy + n + 1},1,2");
        foreach (var panel in slabs.Panels)
        {
            Line($"{panel.Node(0, 0) + 1},1,2");
            Line($"{panel.Node(panel.NodesAlong - 1, 0) + 1},2,2");
        }

        Line($"*STEP");
        Line($"*STATIC");
        Line($"*CLOAD");
        foreach (var (n, force) in slabs.Forces) Line($"{n + 1},3,{-force:0.0000000000E+00}");
        Line($"*NODE PRINT, NSET=ALL");
        Line($"U");
        Line($"*EL PRINT, ELSET=LOADED");
        Line($"S");
        Line($"*END STEP");
        return text.ToString();
    }

    /// <summary>Springs in groups of one stiffness, which the program takes as one material each.</summary>
    private static void Springs(StringBuilder text, NodalSlabs slabs, int elements, int dummy)
    {
        var next = elements + 1;
        var group = 0;
        foreach (var same in slabs.Ground.GroupBy(g => Math.Round(g.Value, 3)))
        {
            group++;
            text.AppendLine(CultureInfo.InvariantCulture, $"*ELEMENT, TYPE=SPRING1, ELSET=G{group}");
            foreach (var (node, _) in same) text.AppendLine(CultureInfo.InvariantCulture, $"{next++},{dummy + node + 1}");
            text.AppendLine(CultureInfo.InvariantCulture, $"*SPRING, ELSET=G{group}").AppendLine("3").AppendLine(CultureInfo.InvariantCulture, $"{same.Key:0.0000000000E+00}");
        }

        foreach (var same in slabs.Springs.GroupBy(s => Math.Round(s.Stiffness, 3)))
        {
            group++;
            text.AppendLine(CultureInfo.InvariantCulture, $"*ELEMENT, TYPE=SPRING2, ELSET=J{group}");
            foreach (var (one, two, _) in same) text.AppendLine(CultureInfo.InvariantCulture, $"{next++},{dummy + one + 1},{dummy + two + 1}");
            text.AppendLine(CultureInfo.InvariantCulture, $"*SPRING, ELSET=J{group}").AppendLine("3,3").AppendLine(CultureInfo.InvariantCulture, $"{same.Key:0.0000000000E+00}");
        }
    }

    private void Read(string path, string output)
    {
        if (!File.Exists(path)) throw new InvalidOperationException("CalculiX gave no answer: " + output[^Math.Min(output.Length, 2000)..]);
        var stresses = false;
        foreach (var line in File.ReadLines(path))
        {
            if (line.Contains("stresses", StringComparison.Ordinal)) stresses = true;
            var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words.Length < 4 || !int.TryParse(words[0], CultureInfo.InvariantCulture, out var number)) continue;
            if (!stresses) _deflections[number - 1] = -double.Parse(words[3], CultureInfo.InvariantCulture);
            else AddMoment(double.Parse(words[3], CultureInfo.InvariantCulture), int.Parse(words[1], CultureInfo.InvariantCulture));
        }
    }

    /// <summary>σ = 12 M z/h³ at z = ∓h/(2√3); the first four points lie below the middle of the layer.</summary>
    private void AddMoment(double stress, int point)
    {
        if (point <= 4) _moments.Add(stress * Math.Pow(NodalSlabs.Section.Thickness, 2) * Math.Sqrt(3) / 6);
    }
}
