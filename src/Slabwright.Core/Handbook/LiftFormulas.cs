using System.Collections.Immutable;
using Slabwright.Core.Joints.Removal;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Pulls on pins and gear.</summary>
internal static class LiftFormulas
{
    private const string Topic = "Removal";

    private const string LiftCaution =
        "Nobody stands under or beside the piece. No figure is published for an old slab on its base: weigh the first piece, and stop when it pulls harder than planned.";

    public static ImmutableArray<HandbookEntry> Entries { get; } = [BreakLoose, AnchorForce];

    private static HandbookEntry BreakLoose => new()
    {
        Id = "break-loose",
        Title = "Pull to break a slab piece loose",
        Topic = Topic,
        Expression = "F = W + q L B + τ 2 (L + B) h",
        Inputs =
        [
            Load("weight", "W", "Weight with water"), Length("length", "L", "Length of the piece", 50), Length("width", "B", "Width of the piece", 20), Thickness,
            new("bond", "q", "Bond and suction at the base", Stress, 0, 1e6) { Default = 1000 },
            new("friction", "τ", "Friction at the sawn sides", Stress, 0, 1e6) { Default = 1000 },
        ],
        Outputs = [new("F", "Pull at the first inch", Force)],
        Source = Seen("LIFT-SHEET", "form adhesion 1.0 kN/m2, meant for forms"),
        Notes = "Both allowances are to be confirmed by a trial lift: precast practice counts 1 to 3 kN/m2 for forms (from memory), nothing is published for old slabs.",
        Caution = LiftCaution,
        Work = s => s.Result("F", LiftMechanics.BreakLoose(s["weight"], s["length"], s["width"], s["thickness"], s["bond"], s["friction"])),
        Examples =
        [
            Example("1.8 by 3.6 m, 250 mm", ["weight", "40 kN", "length", "1.8 m", "width", "3.6 m", "thickness", "250 mm"], [new("F", "49.18 kN", 0.005)], ByHand),
        ],
    };

    private static HandbookEntry AnchorForce => new()
    {
        Id = "anchor-force",
        Title = "Force for one lifting anchor",
        Topic = Topic,
        Expression = "F = (G + q A) f z / n",
        Inputs =
        [
            Load("weight", "G", "Weight"), new("adhesion", "q", "Adhesion to the form", Stress, 0, 1e6) { Default = 0 },
            new("area", "A", "Area of the form", Area, 0, 1000) { Default = 0 }, Number("dynamic", "f", "Dynamic factor", 1, 5),
            Number("angle-factor", "z", "1/cos of the leg's angle from the vertical", 1, 2), Whole("anchors", "n", "Anchors that carry", 1, 8),
        ],
        Outputs = [new("F", "Force for each anchor", Force)],
        Source = Seen("LIFT-SHEET", "formula and inputs"),
        Notes = "All anchors carry only where a spreader or sheaves share the load.",
        Caution = LiftCaution,
        Work = s => s.Result("F", LiftMechanics.AnchorForce(s["weight"], s["adhesion"], s["area"], s["dynamic"], s["angle-factor"], s.Count("anchors"))),
        Examples =
        [
            Example("Floor unit leaving its form",
                ["weight", "50 kN", "adhesion", "0.001 MPa", "area", "10 m2", "dynamic", "1.3", "angle-factor", "1.04", "anchors", "4"],
                [new("F", "20.28 kN", 0.005)], ByHand, "Inputs of LIFT-SHEET; its answer was not legible."),
            Example("The same on site", ["weight", "50 kN", "dynamic", "1.3", "angle-factor", "1.16", "anchors", "4"], [new("F", "18.85 kN", 0.005)], ByHand),
        ],
    };
}
