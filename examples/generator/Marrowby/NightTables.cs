namespace Slabwright.Examples.Marrowby;

/// <summary>Invented heat of the fast mix and an invented first night: two probes that work, one whose lead breaks, two specimens.</summary>
internal static class NightTables
{
    private const string Repair = "2-011";
    private static readonly DateTime Placed = new(2026, 5, 4, 22, 10, 0, DateTimeKind.Unspecified);

    /// <summary>Writes the tables.</summary>
    public static void Write(string folder)
    {
        Files.Write(folder, "heat_curves.csv", Files.Table(HeatRows()));
        Files.Write(folder, "night_readings.csv", Files.Table(ReadingRows()));
        Files.Write(folder, "night_specimens.csv", Files.Table(SpecimenRows));
    }

    private const string SpecimenRows =
        """
        night | repair | kind | age_h | strength_psi | curing_temp_f | factor_c_h
        2026-05-04 | 2-011 | compressive | 4.5 | 2420 | | 158
        2026-05-04 | 2-011 | compressive | 4.5 | 2350 | | 158
        """;

    /// <summary>280 kJ/kg in the end, 7.5 h at 73.4 °F and about half of that at 95 °F, with the unevenness of a laboratory.</summary>
    private static string HeatRows()
    {
        var lines = new List<string> { "mix | age_h | heat_kj_per_kg | bath_temp_f" };
        double[] ages = [1, 2, 3, 4, 5, 6, 8, 12, 18, 24, 36, 48];
        foreach (var (bath, time) in new[] { ("73.4", 7.5), ("95", 3.92) })
        {
            for (var i = 0; i < ages.Length; i++)
            {
                var heat = 280 * Math.Exp(-time / ages[i]) + (i % 3 - 1) * 0.6;
                if (heat > 2) lines.Add($"FAST | {Files.Short(ages[i], 1)} | {Files.Text(heat, 1)} | {bath}");
            }
        }

        return string.Join('\n', lines);
    }

    /// <summary>Every half hour for five hours; the third probe reads nothing sensible from its fifth reading on.</summary>
    private static string ReadingRows()
    {
        var lines = new List<string> { "night | repair | mix | placed_at | probe | place | at | temperature_f" };
        Probe("P1", "mid depth", i => MidDepth[i]);
        Probe("P2", "corner", i => Corner[i]);
        Probe("P3", "mid depth", i => i < 5 ? MidDepth[i] + 0.4 : i < 8 ? -40 : null);
        return string.Join('\n', lines);

        void Probe(string name, string place, Func<int, double?> temperature)
        {
            for (var i = 0; i < MidDepth.Length; i++)
                lines.Add($"2026-05-04 | {Repair} | FAST | {Files.Moment(Placed)} | {name} | {place} | {Files.Moment(Placed.AddMinutes(30 * i))} | {(temperature(i) is { } t ? Files.Text(t, 1) : "")}");
        }
    }

    private static readonly double[] MidDepth = [76.2, 75.6, 74.3, 73.7, 74.4, 76.3, 79.2, 82.9, 87.2, 91.8, 96.5];
    private static readonly double[] Corner = [74.8, 65.7, 64.0, 64.3, 64.5, 64.9, 65.5, 66.2, 66.8, 67.6, 68.4];
}
