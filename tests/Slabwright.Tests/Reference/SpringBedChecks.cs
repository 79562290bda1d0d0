using Slabwright.Core.Numerics.Plates;
using static Slabwright.Tests.Reference.PlateTheory;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Plates on springs that reach far: infinite plate (Kelvin functions), free edge (Fourier integral), two half-plates with a shear spring
/// along the joint. All worked independently with the exact integrals; plates made thin and stiff in shear, as the integrals are.
/// </summary>
public sealed class SpringBedChecks : ICheckRows
{
    private const string Infinite = "Infinite plate on springs, exact Kelvin functions; worked independently";
    private const string Edge = "Half-plate on springs with a free edge, Fourier integral; worked independently";
    private const string Joint = "Two half-plates with a shear spring along the joint, Fourier integral; worked independently";

    /// <summary>One radius of relative stiffness is the unit of length, k l² the unit of force: E h³/12(1 − µ²) = k = 1.</summary>
    private const double Thin = 0.002;

    public IEnumerable<CheckRow> Rows()
    {
        var point = Interior(0.15, 0);
        yield return Row("9.3", Infinite, "point load, w k l²/P", 0.125, point(0, 0).Deflection, 1e-4);
        foreach (var (at, ratio) in ((double, double)[])[(0.5, 0.85508), (1, 0.63025), (2, 0.25770), (3, 0.06509), (4, -0.00280)])
        {
            yield return Row("9.3", Infinite, $"point load, w(r)/w(0) at r/l {at:0.0}", ratio, point(at, 0).Deflection / 0.125, 4e-4);
        }

        var l = 42.9724;
        var circle = Interior(0.15, 6 / l);
        yield return new CheckRow(Plates.Section, "9.3", Infinite, "circle of 6 in, 10,000 lb, h 10 in, k 100 pci, deflection", 0.00669902,
            circle(0, 0).Deflection * 10_000 / (100 * l * l), "in", 0.00001);
        yield return new CheckRow(Plates.Section, "9.3", Infinite, "the same, stress 6 M/h²", 142.0283, circle(0, 0).Moment.X * 10_000 * 6 / 100, "psi", 0.4);
        foreach (var (poisson, expected) in ((double, double)[])[(0, 0.408248), (0.15, 0.431438), (0.20, 0.440640)])
        {
            yield return Row("9.4", Edge, $"point load at the edge, ν {poisson:0.00}, w k l²/P", expected, Half(poisson, 0.0005).Deflection, 1.5e-3);
        }

        foreach (var (a, w, m) in ((double, double, double)[])[(0.1, 0.400248, 0.549880), (0.3, 0.341599, 0.311011)])
        {
            var half = Half(0.15, a * Math.Sqrt(Math.PI));
            yield return Row("9.4", Edge, $"square against the edge, a/l {a:0.0}, w k l²/P", w, half.Deflection, 4e-4);
            yield return Row("9.4", Edge, $"square against the edge, a/l {a:0.0}, edge M/P", m, half.Moment, 0.004);
        }

        foreach (var (a, stiffness, w1, w2, m1, m2) in Published)
        {
            var both = Halves(a * Math.Sqrt(Math.PI), stiffness);
            var name = $"a/l {a:0.0}, AGG/(k l) {stiffness:0.##}";
            yield return Row("9.5", Joint, name + ", loaded w k l²/P", w1, both.Loaded.Deflection, 6e-4);
            yield return Row("9.5", Joint, name + ", unloaded w k l²/P", w2, both.Unloaded.Deflection, 6e-4);
            yield return Row("9.5", Joint, name + ", LTE", w2 / w1, both.Unloaded.Deflection / both.Loaded.Deflection, 1e-3);
            yield return Row("9.5", Joint, name + ", loaded M/P", m1, both.Loaded.Moment, 0.004);
            yield return Row("9.5", Joint, name + ", unloaded M/P", m2, both.Unloaded.Moment, 0.002);
        }
    }

    private static readonly (double A, double R, double W1, double W2, double M1, double M2)[] Published =
    [
        (0.1, 0.1, 0.3704, 0.0298, 0.5410, 0.0089), (0.1, 1, 0.2825, 0.1177, 0.5015, 0.0484), (0.1, 5, 0.2322, 0.1681, 0.4527, 0.0972),
        (0.1, 10, 0.2203, 0.1799, 0.4303, 0.1195), (0.1, 100, 0.2040, 0.1962, 0.3614, 0.1885), (0.3, 0.1, 0.3156, 0.0260, 0.3035, 0.0075),
        (0.3, 1, 0.2392, 0.1024, 0.2705, 0.0405), (0.3, 5, 0.1961, 0.1455, 0.2323, 0.0787), (0.3, 10, 0.1861, 0.1555, 0.2162, 0.0948),
        (0.3, 100, 0.1732, 0.1684, 0.1756, 0.1354),
    ];

    private static PlateSection Section(double poisson) => new(12 * (1 - poisson * poisson) / (Thin * Thin * Thin), poisson, Thin);

    private static double[] Graded(double from, double to, double fine, double at, double half) =>
        GradedLines.Between(from, to, 0.8, 0.25, [new FineStretch(at - half, at + half, fine)]);

    private static Func<double, double, (double Deflection, PlateMoment Moment)> Interior(double poisson, double radius)
    {
        var lines = Graded(-9, 9, Math.Max(0.02, radius / 3), 0, radius);
        var panel = PlatePanel.Rectangle(lines, lines, Section(poisson), 1);
        var system = new PlateSystem([panel]);
        var loads = system.NewLoads();
        if (radius == 0) PlateLoads.AddPoint(loads, panel, 0, 0, 1);
        else
        {
            var equal = radius * Math.Sqrt(2 * Math.PI / 64 / Math.Sin(2 * Math.PI / 64));
            var corners = Enumerable.Range(0, 64).Select(n => (equal * Math.Cos(2 * Math.PI * n / 64), equal * Math.Sin(2 * Math.PI * n / 64))).ToArray();
            PlateLoads.AddPolygon(loads, panel, corners, 1 / (Math.PI * radius * radius));
        }

        var state = system.Solve(loads);
        var moments = new MomentField(panel, state.Movements);
        return (x, y) => (Deflection(panel, state, x, y), moments.At(x, y));
    }

    private static (double Deflection, double Moment) Half(double poisson, double side)
    {
        var fine = Math.Max(0.01, side / 8);
        var panel = PlatePanel.Rectangle(Graded(0, 9, fine, 0, side), Graded(-9, 9, fine, 0, side / 2), Section(poisson), 1);
        var system = new PlateSystem([panel]);
        var loads = system.NewLoads();
        PlateLoads.AddPatch(loads, panel, 0, -side / 2, side, side / 2, 1 / (side * side));
        var state = system.Solve(loads);
        return (Deflection(panel, state, 0, 0), new MomentField(panel, state.Movements).At(0, 0).Y);
    }

    private static ((double Deflection, double Moment) Loaded, (double Deflection, double Moment) Unloaded) Halves(double side, double stiffness)
    {
        var (fine, section) = (side / 8, Section(0.15));
        var across = Graded(-9, 9, fine, 0, side / 2);
        var one = PlatePanel.Rectangle(Graded(-9, 0, fine, 0, side), across, section, 1);
        var two = PlatePanel.Rectangle(Graded(0, 9, fine, 0, side), across, section, 1);
        var system = new PlateSystem([one, two], () => PlateLinks.Line(one, PanelSide.End, 0, 1, two, PanelSide.Start, 0, 1, stiffness));
        var loads = system.NewLoads();
        PlateLoads.AddPatch(loads, two, 0, -side / 2, side, side / 2, 1 / (side * side));
        var state = system.Solve(loads);
        return (
            (Deflection(two, state, 0, 0), new MomentField(two, state.Movements).At(0, 0).Y),
            (Deflection(one, state, 0, 0), new MomentField(one, state.Movements).At(0, 0).Y));
    }

    private static CheckRow Row(string item, string source, string what, double published, double ours, double tolerance) =>
        new(Plates.Section, item, source, what, published, ours, "", tolerance);
}
