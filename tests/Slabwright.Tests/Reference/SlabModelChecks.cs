using Slabwright.Core.Joints.Slabs;
using Slabwright.Core.Numerics.Plates;
using static Slabwright.Tests.Reference.US;

namespace Slabwright.Tests.Reference;

/// <summary>
/// One real slab by plate finite elements beside Westergaard's formulas and the fits of Ioannides, Thompson and Barenberg 1985 (from
/// memory): h 10 in, k 100 pci, E 4,000,000 psi, ν 0.15, 10,000 lb on a circle of 6 in. The formulas are for thin plates, so the slab is
/// given a tenth of the thickness and a thousand times the modulus: the same bending, no give in shear. As a moderately thick slab it
/// deflects 3 to 4 % more.
/// </summary>
public sealed class SlabModelChecks : ICheckRows
{
    private const string Source = "Huang 2004, Ex. 4.2–4.4 (from memory), by plate finite elements of a 60-ft square slab";
    private const double Side = 60 * Foot;
    private const double Radius = 6 * Inch;

    public IEnumerable<CheckRow> Rows()
    {
        var equal = Radius * Math.Sqrt(Math.PI);
        var corner = Solve(new WheelPatch(equal / 2, equal / 2, equal, equal, 10_000 * Pound));
        yield return Row("E1.1", "corner, square of equal area, deflection (fit 0.0560)", 0.0560, corner.Deflection(0, 0, 0) / Inch, "in", 0.0012,
            "the fit is to plate finite elements of its time");
        yield return Row("E1.1", "corner, greatest stress at the top (fit 190.3)", 190.3, corner.GreatestTension(0).Top / Psi / 100, "psi", 12,
            "the formulas give 187 and 190; finite elements put the peak along an arc round the corner");
        var middle = Solve(new WheelPatch(Side / 2, Side / 2, equal, equal, 10_000 * Pound));
        yield return Row("E1.2", "interior, deflection", 0.0067, middle.Deflection(0, Side / 2, Side / 2) / Inch, "in", 0.0001);
        yield return Row("E1.2", "interior, stress, ordinary theory", 142.03, middle.BottomStress(0, Side / 2, Side / 2).X / Psi / 100, "psi", 3,
            "square patch of equal area");
        var edge = Solve(new WheelPatch(Side / 2, Radius, 2 * Radius * 0.8862, 2 * Radius * 0.8862, 10_000 * Pound));
        yield return Row("E1.4", "edge, circle touching it, as a square about the same centre, deflection", 0.0207, edge.Deflection(0, Side / 2, 0) / Inch, "in", 0.0005);
        yield return Row("E1.4", "edge, the same, stress", 279.4, edge.BottomStress(0, Side / 2, 0).X / Psi / 100, "psi", 14,
            "a square about the same centre stands 0.7 in further from the edge than the circle");
    }

    private static SlabState Solve(WheelPatch wheel)
    {
        var slab = new SlabPiece { Name = "slab", From = 0, To = Side, Left = 0, Right = Side, Thickness = Inch, Modulus = 4e9 * Psi };
        var model = new SlabModel(new SlabSystem { Pieces = [slab], Reaction = 100 * Pci, FineAt = [wheel], Mesh = new SlabMesh(1.2, 0.6, 0.25, 0.2) });
        return model.Wheels([wheel]);
    }

    private static CheckRow Row(string item, string what, double published, double ours, string unit, double tolerance, string remark = "") =>
        new(Plates.Section, item, Source, what, published, ours, unit, tolerance, remark);
}
