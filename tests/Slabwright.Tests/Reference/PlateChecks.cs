using Slabwright.Core.Numerics.Plates;
using static Slabwright.Tests.Reference.PlateTheory;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Plate finite elements against plates with known solutions: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells; exact Ritz,
/// Navier and Marcus values worked independently.
/// </summary>
public sealed class PlateChecks : ICheckRows
{
    private const string Theory = "Timoshenko and Woinowsky-Krieger 1959, uniform load on a square plate; further digits worked independently";
    private const string Thick = "Moderately thick square plate, hard simple support, by the Marcus moment; worked independently";
    private const string Navier = "Simply supported plate on springs, Navier series; worked independently";

    public IEnumerable<CheckRow> Rows()
    {
        var simple = Square(16, 0.001, 0.3, clamped: false);
        var clamped = Square(16, 0.001, 0.3, clamped: true);
        yield return Row("9.1", Theory, "simply supported, w D/(q a⁴)", 0.004062353, simple.Deflection, 1e-7);
        yield return Row("9.1", Theory, "simply supported, centre M/(q a²)", 0.04788639, simple.Centre.X, 2e-5);
        yield return Row("9.1", Theory, "simply supported, ν 0.15, centre M/(q a²)", 0.0423610, Square(16, 0.001, 0.15, clamped: false).Centre.X, 2e-5);
        yield return Row("9.1", Theory, "clamped, w D/(q a⁴)", 0.00126531908, clamped.Deflection, 5e-7);
        yield return Row("9.1", Theory, "clamped, centre M/(q a²)", 0.0229051, clamped.Centre.X, 2e-5);
        yield return Row("9.1", Theory, "clamped, edge M/(q a²)", -0.05134, clamped.Edge.Y, 1e-4);
        yield return Row("9.1", Theory, "clamped, ν 0.15, centre M/(q a²)", 0.0202622, Square(16, 0.001, 0.15, clamped: true).Centre.X, 2e-5);
        yield return new CheckRow(Plates.Section, "9.1", "Plate verification note, SI instance (SOLVER-NOTE)", "clamped, 1 m, 20 mm, 200 GPa, 100 kPa", 0.860,
            Square(16, 0.02, 0.3, clamped: true).Deflection * 1e5 / new PlateSection(2e11, 0.3, 0.02).Bending * 1000, "mm", 0.0109,
            "the note rounds the factor of thin-plate theory to 0.00126; shear adds 0.8 %");
        foreach (var (ratio, poisson, expected) in ((double, double, double)[])
            [(0.01, 0.3, 0.00406446), (0.05, 0.3, 0.00411498), (0.1, 0.3, 0.00427284), (0.2, 0.3, 0.00490431),
             (0.01, 0.15, 0.00406409), (0.05, 0.15, 0.00410569), (0.1, 0.15, 0.00423570), (0.2, 0.15, 0.00475573)])
        {
            yield return Row("9.2", Thick, $"h/a {ratio:0.00}, ν {poisson:0.00}, w D/(q a⁴)", expected, Square(16, ratio, poisson, clamped: false).Deflection, 1e-7);
        }

        var soft = Square(16, 0.001, 0.3, clamped: false, reactionFactor: 100);
        var stiff = Square(16, 0.001, 0.3, clamped: false, reactionFactor: 10_000);
        yield return Row("9.6", Navier, "k a⁴/D 100, w D/(q a⁴)", 0.00321371, soft.Deflection, 2e-7);
        yield return Row("9.6", Navier, "k a⁴/D 100, centre M/(q a²)", 0.0370521, soft.Centre.X, 2e-5);
        yield return Row("9.6", Navier, "k a⁴/D 100, ν 0.15, centre M/(q a²)", 0.0327768, Square(16, 0.001, 0.15, clamped: false, reactionFactor: 100).Centre.X, 2e-5);
        yield return Row("9.6", Navier, "k a⁴/D 10,000, w D/(q a⁴)", 1.11477e-4, stiff.Deflection, 1e-7);
        yield return Row("9.6", Navier, "k a⁴/D 10,000, centre M/(q a²)", -2.1619e-4, stiff.Centre.X, 1e-6);
        foreach (var (angle, expected, tolerance) in ((double, double, double)[])[(80, 1.409e-3, 0.01e-3), (40, 0.3487e-3, 0.0105e-3)])
        {
            yield return new CheckRow(Plates.Section, "9.7", "Skew rhombic plate: Morley 1963, Razzaque 1973 as quoted in a finite-element verification manual",
                $"{angle:0}°, simply supported, side 1, h 0.01, E 3e7, q 1", expected, Rhombus(angle), "", tolerance,
                angle < 60 ? "the obtuse corner is singular: values of finite elements scatter by some per cent" : "");
        }
    }

    private static double Rhombus(double degrees)
    {
        var (cos, sin) = (Math.Cos(degrees * Math.PI / 180), Math.Sin(degrees * Math.PI / 180));
        var lines = Lines(0, 1, 24);
        var panel = PlatePanel.Between([(0, 0), (1, 0), (1 + cos, sin), (cos, sin)], lines, lines, new PlateSection(3e7, 0.3, 0.01), 0);
        var system = new PlateSystem([panel], held: () => Enumerable.Range(0, panel.NodeCount)
            .Select(n => (I: n % panel.NodesAlong, J: n / panel.NodesAlong))
            .Where(n => n.I == 0 || n.J == 0 || n.I == panel.NodesAlong - 1 || n.J == panel.NodesAcross - 1)
            .Select(n => KeyValuePair.Create(3 * panel.Node(n.I, n.J), 0.0)));
        var loads = system.NewLoads();
        PlateLoads.AddUniform(loads, panel, 1);
        return Deflection(panel, system.Solve(loads), (1 + cos) / 2, sin / 2);
    }

    private static CheckRow Row(string item, string source, string what, double published, double ours, double tolerance) =>
        new(Plates.Section, item, source, what, published, ours, "", tolerance);
}

/// <summary>Heading of the plate checks.</summary>
internal static class Plates
{
    public const string Section = "9 Plate finite elements";
}
