using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Removal;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Kerfs that close on the blade.</summary>
internal static class KerfFormulas
{
    public static ImmutableArray<HandbookEntry> Entries { get; } = [FaceMovement];

    private static HandbookEntry FaceMovement => new()
    {
        Id = "face-movement",
        Title = "How far one face of a new cut moves",
        Topic = "Removal",
        Expression = "x = min(σ/(γ f), Lu); D ≥ 2x: u = σ x / 2E; x to 2x: (σ (D − x/2) − σ D²/4x)/E; below x: σ D²/4xE",
        Inputs =
        [
            Modulus, Alpha, new("rise", "ΔT", "Rise above the temperature at which joints are shut", Difference, 0.01, 80),
            Length("free", "D", "Distance to the nearest free end on this side", 1e6),
            Length("held", "Lu", "Length that unloads at most: the lane beside holds the rest", 1e6) with { Default = 50 * 0.3048 },
            ConcreteDensity, FrictionFactor,
        ],
        Outputs = [new("x", "Length that unloads", Long), new("u", "Movement of the face", Short)],
        Source = new SourceRef("joints-sealing-and-removal", "pressure", SourceStatus.Computed),
        Notes = "Add both sides for the closure of the kerf; sawing binds when it exceeds the kerf less the core of the blade. The length held by the lane beside is an estimate.",
        Work = s =>
        {
            var stress = SlabTemperature.RestrainedStress(s["modulus"], s["expansion"], s["rise"]);
            var length = s.Result("x", Math.Min(s["held"], SlabBuckling.BuildUpLength(stress, s["density"], s["friction"])));
            s.Result("u", PressureMechanics.FaceMovement(stress, s["modulus"], length, s["free"]));
        },
        Examples =
        [
            Example("60 °F, 50 ft held, long lane", ["modulus", "4e6 psi", "expansion", "5.5e-6 1/°F", "rise", "60 °F", "free", "1000 ft"],
                [new("x", "50 ft", 1e-6), new("u", "0.099 in", 0.0005)], ByHand, "Both sides close the kerf by 0.198 in."),
            Example("Friction alone", ["modulus", "4e6 psi", "expansion", "5.5e-6 1/°F", "rise", "60 °F", "free", "5000 ft", "held", "5000 ft"],
                [new("x", "845 ft", 0.5), new("u", "1.673 in", 0.002)], ByHand),
        ],
    };
}
