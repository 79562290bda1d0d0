using System.Collections.Immutable;
using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Measures;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Lifting old concrete out, and saws that bind.</summary>
internal static class RemovalFormulas
{
    private const string Topic = "Removal";

    private const string LiftCaution =
        "People have been killed under hanging loads. Nobody stands under or beside the piece; pins, slings and machine are rated; a "
        + "qualified person plans the lift. 29 CFR 1926.251 and 1926.704 and local rules decide.";

    public static ImmutableArray<HandbookEntry> Entries { get; } = [PieceMass, SlingTension, InsertLoad, RestrainedStress, KerfClosure];

    private static HandbookEntry PieceMass => new()
    {
        Id = "piece-mass",
        Title = "Mass of a lift piece",
        Topic = Topic,
        Expression = "m = L W h ρ",
        Inputs = [Length("length", "L", "Length of the piece", 50), Length("width", "W", "Width of the piece", 20), Thickness, ConcreteDensity],
        Outputs = [new("m", "Mass", Mass)],
        Source = Seen("PRECAST-LIFTING", "150 lb/ft3 (2400 kg/m3) plain concrete"),
        Notes = "The pull at the first inch is more: base bond and suction, side friction, bars not cut through, water. No published figure was found for an old slab on its base.",
        Caution = LiftCaution,
        Work = s => s.Result("m", LiftMechanics.PieceMass(s["length"], s["width"], s["thickness"], s["density"])),
        Examples = [Example("12 × 6 ft, 10 in", ["length", "6 ft", "width", "12 ft", "thickness", "10 in"], [new("m", "9000 lb", 0.5)], ByHand)],
    };

    private static HandbookEntry SlingTension => new()
    {
        Id = "sling-tension",
        Title = "Pull in a sling leg",
        Topic = Topic,
        Expression = "T = W / (n sin θ)",
        Inputs =
        [
            Load("weight", "W", "Weight"),
            Whole("legs", "n", "Legs that carry", 1, 8),
            new("angle", "θ", "Angle from the horizontal", new UnitPair(Units.Degree), 5 * Math.PI / 180, Math.PI / 2),
        ],
        Outputs = [new("T", "Pull in each leg", Force)],
        Source = Seen("SLING-NOTES", "load angle factors"),
        Notes = "Angles under 30° are not recommended. Of four independent legs only two may be taken to carry unless a spreader or sheaves share the load (PRECAST-LIFTING).",
        Caution = LiftCaution,
        Work = s =>
        {
            if (s["angle"] < Math.PI / 6 - 1e-9) s.Doubt("The sling angle is under 30° from the horizontal.", "30 deg");
            if (s["legs"] > 2) s.Doubt("More than two legs are taken to carry; that needs a spreader or sheaves.", "2 legs");
            s.Result("T", LiftMechanics.LegTension(s["weight"], s.Count("legs"), s["angle"]));
        },
        Examples =
        [
            Example("1000 lb, two legs at 60°", ["weight", "1000 lbf", "legs", "2", "angle", "60 deg"], [new("T", "577 lbf", 0.5)], Seen("SLING-NOTES")),
            Example("1000 lb, two legs at 45°", ["weight", "1000 lbf", "legs", "2", "angle", "45 deg"], [new("T", "707 lbf", 0.5)], Seen("SLING-NOTES")),
        ],
    };

    private static HandbookEntry InsertLoad => new()
    {
        Id = "insert-load",
        Title = "Working load for lift inserts with impact",
        Topic = Topic,
        Expression = "F = W (1 + i)",
        Inputs = [Load("weight", "W", "Weight"), Part("impact", "i", "Impact", 0, 3) with { Default = 0.5 }],
        Outputs = [new("F", "Working load of all inserts together", Force)],
        Source = Seen("CC-TILTUP", "50 % impact"),
        Notes = "Tilt-up rule; inserts in precast members other than tilt-up must hold 4 times, lifting hardware 5 times the greatest intended load (29 CFR 1926.704).",
        Caution = LiftCaution,
        Work = s => s.Result("F", s["weight"] * (1 + s["impact"])),
        Examples = [Example("5000-lb panel", ["weight", "5000 lbf"], [new("F", "7500 lbf", 0.5)], Seen("CC-TILTUP"))],
    };

    private static HandbookEntry RestrainedStress => new()
    {
        Id = "restrained-stress",
        Title = "Compression of a slab held from expanding",
        Topic = Topic,
        Expression = "σ = E α ΔT",
        Inputs = [Modulus, Alpha, new("rise", "ΔT", "Temperature rise", Difference, 0, 80)],
        Outputs = [new("σ", "Compression", Stress)],
        Source = Seen("ELEMENTARY", "elementary"),
        Notes = "Full restraint; why hot slabs bind the blade and why relief cuts come first.",
        Work = s => s.Result("σ", SlabTemperature.RestrainedStress(s["modulus"], s["expansion"], s["rise"])),
        Examples =
        [
            Example("60 °F rise", ["modulus", "4e6 psi", "expansion", "5.5e-6 1/°F", "rise", "60 °F"], [new("σ", "1320 psi", 0.5)], ByHand),
            Example("40 K rise", ["modulus", "30 GPa", "expansion", "10e-6 1/K", "rise", "40 K"], [new("σ", "12.0 MPa", 0.005)], ByHand),
        ],
    };

    private static HandbookEntry KerfClosure => new()
    {
        Id = "kerf-closure",
        Title = "How far a saw kerf closes",
        Topic = Topic,
        Expression = "ΔL = α L ΔT",
        Inputs = [Alpha, Length("length", "L", "Length that unloads into the cut"), new("rise", "ΔT", "Rise above the stress-free temperature", Difference, 0, 80)],
        Outputs = [new("ΔL", "Closure", Short)],
        Source = Seen("ELEMENTARY", "elementary"),
        Notes = "Friction with the base frees only part of a long slab, so the length is an estimate.",
        Work = s => s.Result("ΔL", SlabTemperature.FreeMovement(s["expansion"], s["length"], s["rise"])),
        Examples = [Example("50 ft, 60 °F", ["expansion", "5.5e-6 1/°F", "length", "50 ft", "rise", "60 °F"], [new("ΔL", "0.198 in", 0.0005)], ByHand)],
    };
}
