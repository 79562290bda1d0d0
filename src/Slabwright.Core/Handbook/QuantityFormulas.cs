using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Quantities;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Measuring repairs: areas, saw cuts, joints and bars.</summary>
internal static class QuantityFormulas
{
    private const string Topic = "Quantities";

    private static readonly HandbookInput RepairLength = Length("length", "L", "Repair length");
    private static readonly HandbookInput LaneWidth = Length("width", "W", "Lane width", 20);

    public static ImmutableArray<HandbookEntry> Entries { get; } =
        [RepairArea, PayArea, SawLength, LiftPieces, JointsInside, LongestUnjointed, FullWidthDowels, WheelPathDowels, TiesAlong, JoinGap];

    private static HandbookEntry RepairArea => new()
    {
        Id = "repair-area",
        Title = "Area of a full-depth repair",
        Topic = Topic,
        Expression = "A = L W",
        Inputs = [RepairLength, LaneWidth],
        Outputs = [new("A", "Area", Area)],
        Source = Seen("IA-7040", "measurement by area"),
        Notes = "Full lane width; the plan's own length between boundary cuts.",
        Work = s => s.Result("A", AreaMeasure.RepairArea(s["length"], s["width"])),
        Examples =
        [
            Example("6 ft in a 12-ft lane", ["length", "6 ft", "width", "12 ft"], [new("A", "8.0 yd2", 0.001)], ByHand),
            Example("15 ft in a 12-ft lane", ["length", "15 ft", "width", "12 ft"], [new("A", "20.0 yd2", 0.001)], ByHand),
            Example("4 ft in a 12-ft lane", ["length", "4 ft", "width", "12 ft"], [new("A", "5.33 yd2", 0.005)], ByHand),
        ],
    };

    private static HandbookEntry PayArea => new()
    {
        Id = "pay-area",
        Title = "Pay area with a least quantity",
        Topic = Topic,
        Expression = "A_pay = max(L W, A_min)",
        Inputs = [RepairLength, LaneWidth, new("least", "A_min", "Least pay area", Area, 0, 100) { Default = 2 * Units.SquareYard.Factor }],
        Outputs = [new("A_pay", "Pay area", Area)],
        Source = Seen("IA-7040", "least pay area"),
        Notes = "The least quantity holds for each repair, not for the total.",
        Work = s =>
        {
            var area = s.Step("Area", AreaMeasure.RepairArea(s["length"], s["width"]), Area);
            s.Result("A_pay", AreaMeasure.PayArea(area, s["least"]));
        },
        Examples = [Example("A 4 × 4 ft utility patch", ["length", "4 ft", "width", "4 ft"], [new("A_pay", "2 yd2", 1e-9)], Seen("IA-7040"))],
    };

    private static HandbookEntry SawLength => new()
    {
        Id = "saw-length",
        Title = "Full-depth saw cut with shared edges once",
        Topic = Topic,
        Expression = "S = 2 n W + (n + 1) L",
        Inputs = [RepairLength, LaneWidth, Whole("lanes", "n", "Adjoining lanes repaired together", 1, 12)],
        Outputs = [new("S", "Saw cut", Long)],
        Source = Seen("MO-EPG", "613.1"),
        Notes = "Concrete on both outer sides; take L off for each outer side against asphalt, a curb or open ground.",
        Work = s =>
        {
            var across = s.Step("Across the lanes", 2 * s["lanes"] * s["width"], Long);
            var along = s.Step("Along, the joint between lanes once", (s["lanes"] + 1) * s["length"], Long);
            s.Result("S", across + along);
        },
        Examples =
        [
            Example("10 ft over two 12-ft lanes", ["length", "10 ft", "width", "12 ft", "lanes", "2"], [new("S", "78 ft", 1e-6)],
                ByHand, "Two single patches would add up to 88 ft."),
            Example("8 ft in one lane", ["length", "8 ft", "width", "12 ft", "lanes", "1"], [new("S", "40 ft", 1e-6)], ByHand),
        ],
    };

    private static HandbookEntry LiftPieces => new()
    {
        Id = "lift-pieces",
        Title = "Lift pieces and the cuts between them",
        Topic = Topic,
        Expression = "n = ⌈L / p⌉, S = (n − 1) W",
        Inputs = [RepairLength, LaneWidth, Length("piece", "p", "Longest piece", 20) with { Default = LiftCount.LongestPiece }],
        Outputs = [new("n", "Pieces", Plain, Whole: true), new("S", "Internal cuts", Long)],
        Source = Seen("MO-EPG", "613.1.1"),
        Notes = "Pieces about 6 ft long; internal cuts are paid where the repair is longer than 6 ft.",
        Work = s =>
        {
            var pieces = LiftCount.Pieces(s["length"], s["piece"]);
            s.Result("n", pieces);
            s.Result("S", (pieces - 1) * s["width"]);
        },
        Examples =
        [
            Example("15-ft slab", ["length", "15 ft", "width", "12 ft"], [new("n", "3", 0), new("S", "24 ft", 1e-6)], ByHand),
        ],
    };

    private static HandbookEntry JointsInside => new()
    {
        Id = "joints-inside",
        Title = "Joints needed inside a long repair",
        Topic = Topic,
        Expression = "n = ⌈L / L_max⌉ − 1",
        Inputs = [RepairLength, Length("longest", "L_max", "Longest stretch without a joint", 50) with { Default = 15 * 0.3048 }],
        Outputs = [new("n", "Joints inside", Plain, Whole: true), new("s", "Stretch between joints", Long)],
        Source = Memory("M-CK10", "about 15 ft in plain concrete"),
        Notes = "Where the neighbouring lane keeps its joints, new joints line up with them instead of dividing evenly.",
        Work = s =>
        {
            var joints = CrossMeasure.JointsInside(s["length"], s["longest"]);
            s.Result("n", joints);
            s.Result("s", s["length"] / (joints + 1));
        },
        Examples = [Example("40 ft of plain concrete", ["length", "40 ft"], [new("n", "2", 0), new("s", "13.33 ft", 0.005)], ByHand)],
    };

    private static HandbookEntry LongestUnjointed => new()
    {
        Id = "longest-unjointed",
        Title = "Longest plain slab by thickness",
        Topic = Topic,
        Expression = "L = 24 T (granular) or 21 T (stabilised)",
        Inputs = [Thickness with { Symbol = "T" }, Whole("stabilised", "b", "Base: 0 granular or subgrade, 1 stabilised, concrete or asphalt", 0, 1)],
        Outputs = [new("L", "Longest slab", Long)],
        Source = Seen("SU-5G2", "upper bound by thickness"),
        Notes = "An upper bound for plain concrete; about 15 ft is usual whatever the thickness.",
        Work = s => s.Result("L", UnjointedLength.ByThickness(s["thickness"], s.Count("stabilised") == 1)),
        Examples =
        [
            Example("8 in on granular base", ["thickness", "8 in", "stabilised", "0"], [new("L", "16 ft", 1e-6)], ByHand),
            Example("8 in on stabilised base", ["thickness", "8 in", "stabilised", "1"], [new("L", "14 ft", 1e-6)], ByHand),
        ],
    };

    private static HandbookEntry FullWidthDowels => new()
    {
        Id = "dowels-full-width",
        Title = "Dowels in a row over the full lane",
        Topic = Topic,
        Expression = "n = ⌊(W − 2 e) / s⌋ + 1",
        Inputs =
        [
            LaneWidth,
            Small("edge", "e", "First bar from the edge", 0, 2) with { Default = 12 * 0.0254 },
            Small("spacing", "s", "Bar spacing", 0.05, 2) with { Default = 12 * 0.0254 },
        ],
        Outputs = [new("n", "Dowels", Plain, Whole: true)],
        Source = Seen("WA-13", "12 in centres, first bar 12 in from the edge"),
        Notes = "Near a curb leave out the bars within 24 in of its back (SU-5G2).",
        Work = s => s.Result("n", BarRow.FullWidthCount(s["width"], s["edge"], s["spacing"])),
        Examples = [Example("12-ft lane", ["width", "12 ft"], [new("n", "11", 0)], ByHand)],
    };

    private static HandbookEntry WheelPathDowels => new()
    {
        Id = "dowels-wheel-path",
        Title = "Dowels grouped in the wheel paths",
        Topic = Topic,
        Expression = "n = 2 m",
        Inputs = [Whole("each", "m", "Dowels in each wheel path", 1, 10) with { Default = 4 }],
        Outputs = [new("n", "Dowels", Plain, Whole: true)],
        Source = Seen("WA-13", "four bars in each wheel path"),
        Notes = "Four or five in each wheel path on busy roads is common practice.",
        Work = s => s.Result("n", 2 * s["each"]),
        Examples = [Example("Four in each wheel path", ["each", "4"], [new("n", "8", 0)], ByHand)],
    };

    private static HandbookEntry TiesAlong => new()
    {
        Id = "ties-along",
        Title = "Tie bars along a tied side",
        Topic = Topic,
        Expression = "n = ⌈L / s⌉",
        Inputs = [RepairLength, Small("spacing", "s", "Greatest spacing", 0.1, 3) with { Default = 30 * 0.0254 }],
        Outputs = [new("n", "Tie bars", Plain, Whole: true), new("d", "Bars stand at", Short)],
        Source = SourceRef.CommonPractice,
        Notes = "Bars stand at equal distances, half of it from the ends; never wider than the spacing. No. 5 bars at 30 in is M-GUIDE's figure, from memory.",
        Work = s =>
        {
            var bars = BarMeasure.TiesAlong(s["length"], s["spacing"]);
            s.Result("n", bars);
            s.Result("d", s["length"] / bars);
        },
        Examples = [Example("16 ft at 30 in", ["length", "16 ft", "spacing", "30 in"], [new("n", "7", 0), new("d", "27.43 in", 0.005)], ByHand)],
    };

    private static HandbookEntry JoinGap => new()
    {
        Id = "join-gap",
        Title = "Gap below which two repairs should be one",
        Topic = Topic,
        Expression = "G = (2 C_j + C_s) / (p_A W + p_L), C_j = W (p_cut + p_seal) + n p_dowel",
        Inputs =
        [
            LaneWidth,
            new("cut", "p_cut", "Price of transverse saw cut", PerLong, 0, 1e5),
            new("seal", "p_seal", "Price of transverse seal", PerLong, 0, 1e5) { Default = 0 },
            Whole("dowels", "n", "Dowels at one end", 0, 30),
            Number("dowel", "p_dowel", "Price of one dowel", 0, 1e5),
            Number("setup", "C_s", "Set-up of one repair", 0, 1e6) with { Default = 0 },
            new("area", "p_A", "Price of removal and concrete", new UnitPair(Units.PerSquareYard, Units.PerSquareMetre), 0.01, 1e6),
            new("sides", "p_L", "Price of work along both sides", PerLong, 0, 1e5) { Default = 0 },
        ],
        Outputs = [new("C_j", "Cost of one end joint", Plain), new("G", "Break-even gap", Long)],
        Source = SourceRef.CommonPractice,
        Notes = "Prices as plain money per foot, metre, square yard or square metre. Where a rule asks for a least gap of old slab "
            + "(FHWA 6 ft), the larger of the two governs. A price list with size classes moves the break-even further out.",
        Work = s =>
        {
            var joint = s["width"] * (s["cut"] + s["seal"]) + s["dowels"] * s["dowel"];
            s.Result("C_j", joint);
            s.Result("G", LifeCycleCost.JoinGap(joint, s["setup"], s["area"], s["sides"], s["width"]));
        },
        Examples =
        [
            Example("12-ft lane, invented prices",
                ["width", "12 ft", "cut", "5 /ft", "seal", "3 /ft", "dowels", "11", "dowel", "14", "setup", "250", "area", "180 /yd2", "sides", "10 /ft"],
                [new("C_j", "250", 1e-6), new("G", "3.0", 1e-6)], ByHand,
                "2 × 250 + 250 = 750 over 180 × 12/9 + 10 = 250 a foot."),
        ],
    };
}
