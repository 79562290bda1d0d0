using Slabwright.Core.Joints;
using static Slabwright.Tests.Reference.US;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Curling, friction and mesh: Huang 2004 ch. 4 (from memory), BHEL paper 2023, and Bradbury's coefficient in closed form (worked
/// independently from the strip's solution; textbook charts differ from it by up to 0.03).
/// </summary>
public sealed class SlabTemperatureChecks : ICheckRows
{
    private const string Section = "2 Temperature, friction, mesh";
    private const string Huang = "Huang 2004 ch. 4 (from memory)";
    private const string Strip = "Strip of finite width after Westergaard; worked independently";
    private const string Edge = "Westergaard's semi-infinite slab (NPTEL IIT Kanpur, eq. 17–19); worked independently";

    private static readonly double[] Coefficients =
        [0.0026, 0.0404, 0.1812, 0.4385, 0.7136, 0.9141, 1.0269, 1.0758, 1.0861, 1.0761, 1.0578, 1.0386, 1.0224, 1.0104];

    public IEnumerable<CheckRow> Rows() => [.. Curling(), .. Table(), .. NearEdge(), .. Friction()];

    private static IEnumerable<CheckRow> Curling()
    {
        var l = RelativeStiffness.Radius(4e6 * Psi, 8 * Inch, 0.15, 200 * Pci);
        var (cx, cy) = (SlabTemperature.CurlingCoefficient(25 * Foot / l), SlabTemperature.CurlingCoefficient(12 * Foot / l));
        yield return Row("E2.1", "l, slab 25 ft × 12 ft × 8 in, 20 °F", 30.57, l / Inch, "in", 0.005);
        yield return Row("E2.1", "interior stress with the chart's coefficients 1.07 and 0.63", 238, Interior(1.07, 0.63), "psi", 0.5);
        yield return Row("E2.1", "edge stress with the chart's coefficient", 214, AtEdge(1.07), "psi", 0.5);
        const string Chart = "the book reads its coefficients off a chart";
        yield return Row("E2.1", "Cx in closed form", 1.07, cx, "", 0.03, Chart);
        yield return Row("E2.1", "Cy in closed form", 0.63, cy, "", 0.03, Chart);
        yield return Row("E2.1", "interior stress in closed form", 238, Interior(cx, cy), "psi", 3, Chart);
        yield return Row("E2.1", "edge stress in closed form", 214, AtEdge(cx), "psi", 2, Chart);
    }

    private static IEnumerable<CheckRow> Table() => Coefficients.Select((c, i) => Row(
        "table 2.1", $"Bradbury's coefficient, B/l {i + 1}", c, SlabTemperature.CurlingCoefficient(i + 1), "", 0.00006, "", Strip));

    private static IEnumerable<CheckRow> NearEdge()
    {
        var l = RelativeStiffness.Radius(4e6 * Psi, 8 * Inch, 0.15, 200 * Pci);
        var far = EdgeCurling.FarStress(4e6 * Psi, 5e-6 / Fahrenheit, 20 * Fahrenheit, 0.15);
        yield return Row("2.1", "stress far from edges, data of E2.1", 235.294, far / Psi, "psi", 0.001, "", Edge);
        (double Inches, double Across, double Along, double Deflection)[] places =
            [(0, 0, 200, -0.0134310), (24, 49.3436, 207.4015, -0.00248756), (60, 166.8731, 225.0310, 0.00268684)];
        foreach (var (inches, across, along, deflection) in places)
        {
            var y = inches * Inch;
            yield return Row("2.1", $"stress across the edge, {inches} in from it", across, EdgeCurling.StressAcross(far, y, l) / Psi, "psi", 0.001, "", Edge);
            yield return Row("2.1", $"stress along the edge, {inches} in from it", along, EdgeCurling.StressAlong(far, y, l, 0.15) / Psi, "psi", 0.001, "", Edge);
            yield return Row(
                "2.1", $"deflection, {inches} in from the edge", deflection,
                EdgeCurling.Deflection(5e-6 / Fahrenheit, 20 * Fahrenheit, 8 * Inch, 0.15, y, l) / Inch, "in", 1e-7, "", Edge);
        }

        yield return Row(
            "2.1", "corner stress, a 6 in", 69.4977,
            EdgeCurling.CornerStress(4e6 * Psi, 5e-6 / Fahrenheit, 20 * Fahrenheit, 0.15, 6 * Inch, l) / Psi, "psi", 0.001, "", Edge);
    }

    private static IEnumerable<CheckRow> Friction()
    {
        yield return Row(
            "E2.2", "longest plain slab for 80 kN/m², f 1.5, 24 kN/m³", 4.44, SlabTemperature.LongestSlab(80e3, 24e3 / SlabTemperature.Gravity, 1.5), "m", 0.005, "",
            "BHEL engineer trainee paper 2023");
        yield return Row("E2.3", "friction stress, 25 ft, f 1.5, 150 lb/ft³", 19.5, SlabTemperature.FrictionStress(150 * Pcf, 25 * Foot, 1.5) / Psi, "psi", 0.05);
        const double PerFoot = Inch * Inch / Foot;
        yield return Row(
            "E2.4", "mesh, 60 ft × 8 in, 43,000 psi, long way", 0.105, SlabTemperature.DragSteel(150 * Pcf, 8 * Inch, 60 * Foot, 1.5, 43_000 * Psi) / PerFoot,
            "in²/ft", 0.0005);
        yield return Row(
            "E2.4", "mesh, 24 ft tied, across", 0.042, SlabTemperature.DragSteel(150 * Pcf, 8 * Inch, 24 * Foot, 1.5, 43_000 * Psi) / PerFoot, "in²/ft", 0.0005);
    }

    private static double Interior(double cx, double cy) =>
        SlabTemperature.InteriorCurling(4e6 * Psi, 5e-6 / Fahrenheit, 20 * Fahrenheit, 0.15, cx, cy) / Psi;

    private static double AtEdge(double cx) => SlabTemperature.EdgeCurling(4e6 * Psi, 5e-6 / Fahrenheit, 20 * Fahrenheit, cx) / Psi;

    private static CheckRow Row(
        string item, string what, double published, double ours, string unit, double tolerance, string remark = "", string source = Huang) =>
        new(Section, item, source, what, published, ours, unit, tolerance, remark);
}
