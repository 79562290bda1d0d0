using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Sealing;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Movement of repair joints and beads of sealant.</summary>
internal static class SealFormulas
{
    private const string Topic = "Sealing";
    private static readonly SourceRef Page = new("joints-sealing-and-removal", "sealing", SourceStatus.Computed);
    private static readonly HandbookInput Width = Small("width", "w", "Width of the bead when placed", 0.001, 0.1);
    private static readonly HandbookInput Depth = Small("depth", "d", "Depth of the bead", 0.001, 0.1);

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Movement, BeadStrain, BeadBulge];

    private static HandbookEntry Movement => new()
    {
        Id = "repair-joint-movement",
        Title = "Movement of a repair joint",
        Topic = Topic,
        Expression = "ΔL = C [Lo (α ΔT + ε) + Ln (α ΔT + ε')]",
        Inputs =
        [
            Number("restraint", "C", "Base factor: 0.80 granular, 0.65 stabilised", 0.1, 1),
            Length("old", "Lo", "Half of the old slab beside the joint", 100), Length("new", "Ln", "Half of the repair beside the joint", 100), Alpha,
            new("range", "ΔT", "Temperature range", Difference, 0, 100),
            Number("shrinkage", "ε", "Shrinkage still to come, old concrete", 0, 0.002) with { Default = 1e-4 },
            Number("new-shrinkage", "ε'", "Shrinkage of the repair's concrete", 0, 0.002) with { Default = 4.5e-4 },
        ],
        Outputs = [new("ΔL", "Change of opening", Short)],
        Source = Seen("NB-33", "design equation; the halves are worked out from it"),
        Notes = "Each body of concrete moves about its middle, so half of it comes to each end. Tied joints do not part a body. Measured openings were mostly larger and irregular.",
        Work = s => s.Result("ΔL", SealMechanics.Opening(
            s["restraint"], s["old"], s["expansion"] * s["range"] + s["shrinkage"], s["new"], s["expansion"] * s["range"] + s["new-shrinkage"])),
        Examples =
        [
            Example("60 ft in halves, as the notebook's example",
                ["restraint", "0.80", "old", "30 ft", "new", "30 ft", "expansion", "5.5e-6 1/°F", "range", "76 °F", "new-shrinkage", "1e-4"],
                [new("ΔL", "0.3 in", 0.005)], Seen("NB-33", "example A"), "0.298 in, printed as 0.3."),
        ],
    };

    private static HandbookEntry BeadStrain => new()
    {
        Id = "bead-strain",
        Title = "Strain of a bead of sealant when its joint widens",
        Topic = Topic,
        Expression = "h = 3 d δ / 4 (w + δ), s = arc(w + δ, h) / w − 1",
        Inputs = [Width, Depth, Small("opening", "δ", "Widening of the joint", 1e-6, 0.1)],
        Outputs = [new("r", "Widening over width", Share), new("h", "Each face draws in by", Short), new("s", "Lengthening along the curved face", Share)],
        Source = Page,
        Notes = "The bead keeps its area and its free faces are parabolas (after Tons 1959, from memory). Allowable strains of makers are those of the width.",
        Work = s =>
        {
            s.Result("r", s["opening"] / s["width"]);
            s.Result("h", SealMechanics.Sag(s["width"], s["depth"], s["opening"]));
            s.Result("s", SealMechanics.SurfaceStrain(s["width"], s["depth"], s["opening"]));
        },
        Examples =
        [
            Example("1/2 by 1/4 in, 0.1 in", ["width", "0.5 in", "depth", "0.25 in", "opening", "0.1 in"],
                [new("r", "20 %", 1e-6), new("h", "0.03125 in", 1e-6), new("s", "20.86 %", 0.005)], ByHand),
        ],
    };

    private static HandbookEntry BeadBulge => new()
    {
        Id = "bead-bulge",
        Title = "Bulge of a bead of sealant when its joint narrows",
        Topic = Topic,
        Expression = "b = 3 d δ / 2 (w − δ)",
        Inputs = [Width, Depth, Small("closing", "δ", "Narrowing of the joint", 0, 0.1)],
        Outputs = [new("b", "Rises by", Short)],
        Source = Page,
        Notes = "The rod does not give, so all goes upward; keep it below the recess, or tyres pull the seal out.",
        Work = s =>
        {
            if (s["closing"] < s["width"]) s.Result("b", SealMechanics.Bulge(s["width"], s["depth"], s["closing"]));
            else s.Refuse("The joint closes altogether.", "Give a wider joint or less narrowing.");
        },
        Examples = [Example("1/2 by 1/4 in, 0.1 in", ["width", "0.5 in", "depth", "0.25 in", "closing", "0.1 in"], [new("b", "0.09375 in", 1e-6)], ByHand)],
    };
}
