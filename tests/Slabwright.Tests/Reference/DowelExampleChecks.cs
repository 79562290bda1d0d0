using Slabwright.Core.Joints;
using static Slabwright.Tests.Reference.US;

namespace Slabwright.Tests.Reference;

/// <summary>
/// Dowel examples: Huang 2004 ch. 4 (from memory), university lecture (DOWEL-LECTURE), NPTEL IIT Kanpur lecture 4 slide 4, three project
/// annexures after IRC:58-2015, one of which prints a group sum that cannot be right.
/// </summary>
public sealed class DowelExampleChecks : ICheckRows
{
    private const string Section = "3 Dowels and load transfer";
    private const string Huang = "Huang 2004 ch. 4 (from memory)";
    private const string Lecture = "University lecture, dowel bars; last three worked independently";
    private const string Kanpur = "NPTEL IIT Kanpur Module II lecture 4, slide 4";
    private const string AnnexA = "Project annexure after IRC:58-2015 (IRC58-ANNEX-A)";
    private const string AnnexB = "Project annexure after IRC:58-2015 (IRC58-ANNEX-B)";
    private const string AnnexC = "Third project annexure after IRC:58-2015, 32-mm bars";

    public IEnumerable<CheckRow> Rows() => [.. Book(), .. InLecture(), .. InKanpur(), .. Annexures(), .. Unreproduced()];

    private static IEnumerable<CheckRow> Book()
    {
        var l = RelativeStiffness.Radius(4e6 * Psi, 8 * Inch, 0.15, 100 * Pci);
        yield return Row("E3.1", Huang, "l, 8 in, k 100 pci", 36.35, l / Inch, "in", 0.01);
        var sum = DowelBar.GroupSum(12 * Inch, 66 * Inch, 1);
        yield return Row("E3.1", Huang, "reach 1.8 l", 66, DowelBar.FribergReach * l / Inch, "in", 0.6, "the book rounds up");
        yield return Row("E3.1", Huang, "group sum, reach 66 in", 3.27, sum, "", 0.005);
        yield return Row("E3.1", Huang, "load on the outer dowel, 9000 lb, half across", 1375, 4500 / sum, "lb", 1);
        var beta = DowelBar.Beta(1.5e6 * Pci, 0.75 * Inch, 29e6 * Psi);
        var face = DowelBar.FaceDeflection(1375 * Pound, 0.2 * Inch, beta, 0.75 * Inch, 29e6 * Psi);
        yield return Row(
            "E3.1", Huang, "bearing stress, ¾-in dowel, joint 0.2 in", 3556, DowelBar.BearingStress(1.5e6 * Pci, face) / Psi, "psi", 8, "the book rounds I to 0.0155 in⁴");
        yield return Row("E3.1", Huang, "allowable bearing, f'c 3000 psi", 3250, DowelBar.AllowableBearing(0.75 * Inch, 3000 * Psi) / Psi, "psi", 0.01);
    }

    private static IEnumerable<CheckRow> InLecture()
    {
        yield return Row("E3.2", Lecture, "l, 10 in, k 200 pci, E 3 million psi", 33.6, RelativeStiffness.Radius(3e6 * Psi, 10 * Inch, 0.15, 200 * Pci) / Inch, "in", 0.05);
        var sum = DowelBar.GroupSum(12 * Inch, 60 * Inch, 1);
        yield return Row("E3.2", Lecture, "group sum, reach 60 in", 3.0, sum, "", 1e-9);
        yield return Row("E3.2", Lecture, "load on the dowel, 9000 lb, 45 % across", 1350, 9000 * 0.45 / sum, "lb", 1e-6);
        var (support, steel) = (1.5e6 * Pci, 30e6 * Psi);
        var beta = DowelBar.Beta(support, Inch, steel);
        var face = DowelBar.FaceDeflection(1350 * Pound, 0.25 * Inch, beta, Inch, steel);
        yield return Row("E3.2", Lecture, "β, 1-in dowel", 0.7104, beta * Inch, "1/in", 0.00005);
        yield return Row("E3.2", Lecture, "deflection at the face, joint ¼ in", 0.001392, face / Inch, "in", 5e-7);
        yield return Row("E3.2", Lecture, "bearing stress", 2088, DowelBar.BearingStress(support, face) / Psi, "psi", 1);
    }

    private static IEnumerable<CheckRow> InKanpur()
    {
        var sum = DowelBar.GroupSum(0.3, 0.95, 1);
        yield return Row("E3.3", Kanpur, "group sum, 300 mm, reach 1.0 l = 950 mm", 2.1053, sum, "", 0.00005);
        yield return Row("E3.3", Kanpur, "load on the dowel, half of 65 kN", 15_437.5, 32_500 / sum, "N", 0.5);
        var beta = DowelBar.Beta(415e9, 0.032, 2e11);
        var bearing = DowelBar.BearingStress(415e9, DowelBar.FaceDeflection(32_500 / sum, 0.015, beta, 0.032, 2e11));
        yield return Row("E3.3", Kanpur, "β, 32 mm, K 415 N/mm³", 0.0238, beta / 1000, "1/mm", 0.00005);
        yield return Row("E3.3", Kanpur, "bearing stress, joint 15 mm", 27.20, bearing / 1e6, "MPa", 0.11, "the lecture carries the rounded β");
        yield return Row("E3.3", Kanpur, "allowable bearing, fck 40 MPa", 29.23, DowelBar.AllowableBearingFromCube(0.032, 40e6) / 1e6, "MPa", 0.005);
    }

    private static IEnumerable<CheckRow> Annexures()
    {
        var l = RelativeStiffness.Radius(30e9, 0.25, 0.15, 285e6);
        yield return Row("E3.4", AnnexA, "l, 250 mm, k 285 MPa/m", 611.93, l * 1000, "mm", 0.05);
        yield return Row("E3.4", AnnexA, "group sum, 300 mm, reach 1.0 l", 1.529, DowelBar.GroupSum(0.3, l, 1), "", 0.0005);
        yield return Row("E3.4", AnnexA, "load on the dowel, 31.5 kN", 21, 31.5 / DowelBar.GroupSum(0.3, l, 1), "kN", 0.5, "the sheet rounds");
        var sum = DowelBar.GroupSum(0.3, 1.1774, 1);
        yield return Row("E3.5", AnnexB, "group sum, 300 mm, l 1177.4 mm", 2.47, sum, "", 0.005, "the sheet shows 2.11 beside it; its l fits other inputs than stated");
        yield return Row("E3.5", AnnexB, "load on the dowel, 40 % of 80 kN", 12.95, 32 / sum, "kN", 0.005);
        yield return Row("E3.5", AnnexB, "allowable bearing, 38 mm, fck 40 MPa", 26.7, DowelBar.AllowableBearingFromCube(0.038, 40e6) / 1e6, "MPa", 0.05);
    }

    private static IEnumerable<CheckRow> Unreproduced()
    {
        const double Reach = 0.69265;
        yield return Row(
            "E3.6", AnnexC, "group sum, 250 mm, l 692.65 mm, dowels within reach", 1.8853, DowelBar.GroupSum(0.25, Reach, 1), "", 0.005,
            "neither reading gives the printed sum; not used") with { NotReproduced = true };
        var fourTerms = 4 - 0.25 * (1 + 2 + 3) / Reach;
        yield return Row(
            "E3.6", AnnexC, "the same with four terms, the last negative", 1.8853, fourTerms, "", 0.005, "neither reading gives the printed sum; not used")
            with { NotReproduced = true };
    }

    private static CheckRow Row(
        string item, string source, string what, double published, double ours, string unit, double tolerance, string remark = "") =>
        new(Section, item, source, what, published, ours, unit, tolerance, remark);
}
