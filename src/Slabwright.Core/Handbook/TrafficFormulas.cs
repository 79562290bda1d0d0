using System.Collections.Immutable;
using Slabwright.Core.Closures;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Lanes under closure, queues and axle loads.</summary>
internal static class TrafficFormulas
{
    private const string Topic = "Traffic";

    private static readonly UnitPair Time = new(Units.Minute);

    public static ImmutableArray<HandbookEntry> Entries { get; } =
        [Severity, Discharge, ShortTerm, HeavyVehicles, Queue, QueueLength, AxleFactor, LaneShare, GrowthFactor];

    private static HandbookEntry Severity => new()
    {
        Id = "closure-severity",
        Title = "Lane closure severity index",
        Topic = Topic,
        Expression = "LCSI = 1/(OR Nₒ), OR = Nₒ/N, at most 2.0",
        Inputs = [Whole("total", "N", "Lanes in normal times", 1, 12), Whole("open", "Nₒ", "Lanes left open", 1, 12)],
        Outputs = [new("LCSI", "Index", Plain)],
        Source = Seen("HCM7", "Ch. 10 Eq. 10-7, Exhibit 10-15"),
        Notes = "Capped at 2.0.",
        Work = s =>
        {
            if (s["open"] > s["total"]) s.Refuse("More lanes are open than there are.", "Give open lanes up to the total.");
            else s.Result("LCSI", WorkZoneCapacity.ClosureSeverity(s.Count("total"), s.Count("open")));
        },
        Examples = [Lanes("3", "3", "0.33"), Lanes("2", "2", "0.50"), Lanes("4", "3", "0.44"), Lanes("3", "2", "0.75"), Lanes("4", "2", "1.00"), Lanes("2", "1", "2.00")],
    };

    private static HandbookEntry Discharge => new()
    {
        Id = "closure-capacity",
        Title = "Queue discharge and capacity beside a closure",
        Topic = Topic,
        Expression = "QDR = 2093 − 154 LCSI − 194 f_Br − 179 f_AT + 9 f_LAT − 59 f_DN, c = QDR/(1 − α)",
        Inputs =
        [
            Number("severity", "LCSI", "Lane closure severity index", 0.1, 2), Whole("cones", "f_Br", "Devices: 0 hard barrier, 1 cones or drums", 0, 1),
            Whole("rural", "f_AT", "Area: 0 urban, 1 rural", 0, 1),
            new("lateral", "f_LAT", "Lane edge to devices", Long, 0, 12 * 0.3048), Whole("night", "f_DN", "0 day, 1 night", 0, 1),
            Part("drop", "α", "Drop from capacity to discharge", 0, 0.5) with { Default = 0.134 },
        ],
        Outputs = [new("QDR", "Queue discharge, cars per hour and lane", Plain), new("c", "Capacity, cars per hour and lane", Plain)],
        Source = Seen("HCM7", "Ch. 10 Eq. 10-8 and 10-9; coefficients second-hand"),
        Notes = "Without local data only; one open lane on steep upgrades, police, milled surfaces and narrow lanes are not covered. Values with a queue are the discharge, not the capacity.",
        Work = s =>
        {
            var discharge = s.Result("QDR", WorkZoneCapacity.QueueDischarge(
                s["severity"], s.Count("cones") == 1, s.Count("rural") == 1, s["lateral"], s.Count("night") == 1));
            s.Result("c", WorkZoneCapacity.FromDischarge(discharge, s["drop"]));
        },
        Examples =
        [
            Example("Three lanes to two, drums, urban, day",
                ["severity", "0.75", "cones", "1", "rural", "0", "lateral", "0 ft", "night", "0", "drop", "13.1 %"],
                [new("QDR", "1783.5", 0.05), new("c", "2052", 0.5)], Seen("HCM7", "Ch. 25 Example Problem 4")),
            Example("Two lanes to one, cones, urban, night",
                ["severity", "2", "cones", "1", "rural", "0", "lateral", "0 ft", "night", "1"], [new("QDR", "1532", 0.5)], ByHand),
            Example("Two lanes to one, cones, rural, night",
                ["severity", "2", "cones", "1", "rural", "1", "lateral", "0 ft", "night", "1"], [new("QDR", "1353", 0.5)], ByHand),
        ],
    };

    private static HandbookEntry ShortTerm => new()
    {
        Id = "closure-capacity-2000",
        Title = "Short-term closure capacity, older method",
        Topic = Topic,
        Expression = "c = (1600 + I − R) f N",
        Inputs =
        [
            Number("intensity", "I", "Work intensity adjustment", -160, 160) with { Default = 0 }, Number("ramp", "R", "Ramp adjustment", 0, 800) with { Default = 0 },
            Number("factor", "f", "Heavy-vehicle factor", 0.2, 1), Whole("open", "N", "Lanes open", 1, 12),
        ],
        Outputs = [new("c", "Capacity", Flow)],
        Source = Memory("HCM-2000", "Eq. 22-2; base of 1,600 read"),
        Notes = "Cars per hour and lane before the heavy-vehicle factor.",
        Work = s => s.Result("c", WorkZoneCapacity.ShortTerm(s["intensity"], s["ramp"], s["factor"], s.Count("open"))),
        Examples = [Example("One lane, factor 0.9", ["factor", "0.9", "open", "1"], [new("c", "1440 veh/h", 0.5)], ByHand)],
    };

    private static HandbookEntry HeavyVehicles => new()
    {
        Id = "heavy-vehicle-flow",
        Title = "Cars per hour to vehicles per hour",
        Topic = Topic,
        Expression = "f = 1/(1 + P (E − 1)), q = c f N",
        Inputs =
        [
            Number("capacity", "c", "Capacity, cars per hour and lane", 100, 3000), Whole("lanes", "N", "Lanes", 1, 12),
            Part("heavy", "P", "Share of heavy vehicles"), Number("equivalents", "E", "Cars for one heavy vehicle", 1, 15) with { Default = 2 },
        ],
        Outputs = [new("f", "Heavy-vehicle factor", Plain), new("q", "Flow", Flow)],
        Source = Seen("HCM7", "Ch. 25 Example Problems 1 and 4; E from memory"),
        Notes = "E 2.0 on level, 3.0 on rolling ground.",
        Work = s =>
        {
            var factor = s.Result("f", WorkZoneCapacity.HeavyVehicleFactor(s["heavy"], s["equivalents"]));
            s.Result("q", s["capacity"] * factor * s["lanes"]);
        },
        Examples =
        [
            Example("Three lanes", ["capacity", "2300", "lanes", "3", "heavy", "2.25 %"], [new("q", "6748 veh/h", 0.5)], Seen("HCM7", "Exhibit 25-71")),
            Example("Two lanes", ["capacity", "2300", "lanes", "2", "heavy", "2.25 %"], [new("q", "4499 veh/h", 0.5)], Seen("HCM7", "Exhibit 25-71")),
        ],
    };

    private static HandbookEntry Queue => new()
    {
        Id = "bottleneck-queue",
        Title = "Queue behind a lane closed for a while",
        Topic = Topic,
        Expression = "Q = (λ − µ₁) t, t_c = Q/(µ₂ − λ), D = Q (t + t_c)/2",
        Inputs =
        [
            new("arrivals", "λ", "Arrivals", Flow, 0, 1e5), new("reduced", "µ₁", "Capacity while closed", Flow, 0, 1e5),
            new("restored", "µ₂", "Capacity afterwards", Flow, 1, 1e5), new("duration", "t", "Time closed", Time, 1, 1e6),
        ],
        Outputs =
        [
            new("Q", "Longest queue, vehicles", Plain), new("t_c", "Clears after", Time),
            new("D", "Delay of all vehicles, vehicle-hours", Plain), new("d", "Mean delay", Time),
        ],
        Source = SourceRef.CommonPractice,
        Notes = "Steady flows; once a queue stands the discharge rate holds, not the capacity.",
        Work = s =>
        {
            if (s["restored"] <= s["arrivals"]) s.Refuse("The queue never clears.", "Give a restored capacity above the arrivals.");
            else WriteQueue(s, Queues.Bottleneck(s["arrivals"] / 3600, s["reduced"] / 3600, s["restored"] / 3600, s["duration"]));
        },
        Examples =
        [
            Example("80 a minute, capacity 120 cut to 60 for half an hour",
                ["arrivals", "4800 veh/h", "reduced", "3600 veh/h", "restored", "7200 veh/h", "duration", "30 min"],
                [new("Q", "600", 1e-6), new("t_c", "15 min", 1e-6), new("D", "225", 1e-6), new("d", "3.75 min", 1e-6)],
                ByHand, "A textbook statement; 13,500 vehicle-minutes over 3,600 vehicles."),
        ],
    };

    private static HandbookEntry QueueLength => new()
    {
        Id = "queue-length",
        Title = "Length of a queue on the road",
        Topic = Topic,
        Expression = "L = Q s / N",
        Inputs =
        [
            Number("vehicles", "Q", "Vehicles queued", 0, 1e6), Length("spacing", "s", "Room for a vehicle", 50) with { Default = 25 * 0.3048 },
            Whole("lanes", "N", "Lanes the queue stands in", 1, 12),
        ],
        Outputs = [new("L", "Length", new UnitPair(Units.Mile, Units.Kilometre))],
        Source = Seen("CA-QUEUE", "California practice, 25 ft a vehicle"),
        Notes = "25 ft standing, 40 to 50 ft moving. The page multiplies by the lanes; the dimensions ask for division.",
        Work = s => s.Result("L", Queues.Length(s["vehicles"], s["spacing"], s.Count("lanes"))),
        Examples = [Example("317 vehicles in two lanes", ["vehicles", "317", "lanes", "2"], [new("L", "0.75 mi", 0.005)], ByHand, "Ohio's 0.75-mi line.")],
    };

    private static HandbookEntry AxleFactor => new()
    {
        Id = "axle-factor",
        Title = "Axle load in 18-kip equivalents on rigid pavement",
        Topic = Topic,
        Expression = "log(1/LEF) = 4.62 log 19 − 4.62 log(L + n) + 3.28 log n + G/β − G/β₁₈, G = log[(4.5 − pt)/3], β = 1 + 3.63(L + n)^5.20/[(D + 1)^8.46 n^3.52]",
        Inputs =
        [
            new("load", "L", "Load of the axle group", new UnitPair(Units.Kip, Units.Kilonewton), 1000, 1e6), Whole("axles", "n", "Axles in the group", 1, 3),
            Thickness with { Symbol = "D" }, Number("terminal", "pt", "Terminal serviceability", 1.5, 3.5) with { Default = 2.5 },
        ],
        Outputs = [new("LEF", "18-kip equivalents", Plain)],
        Source = Seen("PI-ESAL", "AASHTO 1993, rigid; TRR 1207 eq. 1"),
        Notes = "Load in kips and thickness in inches inside the formula.",
        Work = s => s.Result("LEF", EquivalentAxles.Factor(s["load"], s.Count("axles"), s["thickness"], s["terminal"])),
        Examples =
        [
            Example("30-kip single axle, 7 in", ["load", "30 kip", "axles", "1", "thickness", "7 in"], [new("LEF", "7.7", 0.05)], Seen("PI-ESAL", "AASHTO Table D.13")),
            Example("18-kip single axle", ["load", "18 kip", "axles", "1", "thickness", "9 in"], [new("LEF", "1", 1e-9)], ByHand),
        ],
    };

    private static HandbookEntry LaneShare => new()
    {
        Id = "design-lane-share",
        Title = "Share of trucks in the design lane",
        Topic = Topic,
        Expression = "f = 1.567 − 0.0826 ln(q) − 0.12368 (three lanes or more)",
        Inputs = [Number("volume", "q", "One-way AADT, vehicles per day", 500, 2e5), Whole("lanes", "N", "Lanes in that direction", 2, 8)],
        Outputs = [new("f", "Share", Plain)],
        Source = Memory("NCHRP-277", "equation; table of FDOT 625-010-002 read"),
        Notes = "The table's AADT counts both directions.",
        Work = s => s.Result("f", EquivalentAxles.DesignLaneShare(s["volume"], s.Count("lanes"))),
        Examples =
        [
            Trucks("2000", "2", "0.94"), Trucks("2000", "3", "0.82"), Trucks("4000", "2", "0.88"), Trucks("4000", "3", "0.76"),
            Trucks("6000", "2", "0.85"), Trucks("6000", "3", "0.72"),
        ],
    };

    private static HandbookEntry GrowthFactor => new()
    {
        Id = "traffic-growth",
        Title = "Growth factor of traffic",
        Topic = Topic,
        Expression = "F = [(1 + g)ⁿ − 1]/g",
        Inputs = [Part("growth", "g", "Growth a year", 0, 0.3), Number("years", "n", "Years", 1, 100)],
        Outputs = [new("F", "First-year volumes in all years", Plain)],
        Source = SourceRef.CommonPractice,
        Notes = "Equals n where there is no growth.",
        Work = s => s.Result("F", EquivalentAxles.GrowthFactor(s["growth"], s["years"])),
        Examples = [Grown("2 %", "24.297"), Grown("3 %", "26.870"), Grown("4 %", "29.778"), Grown("5 %", "33.066")],
    };

    private static void WriteQueue(CalculationSheet s, BottleneckQueue queue)
    {
        s.Result("Q", queue.Greatest);
        s.Result("t_c", queue.ClearsAfter);
        s.Result("D", queue.Delay / 3600);
        s.Result("d", queue.MeanDelay);
    }

    private static WorkedExample Lanes(string total, string open, string index) =>
        Example($"{total} lanes to {open}", ["total", total, "open", open], [new("LCSI", index, 0.005)], Seen("HCM7", "Exhibit 10-15"));

    private static WorkedExample Trucks(string volume, string lanes, string share) => Example(
        $"{volume} vehicles a day one way, {lanes} lanes", ["volume", volume, "lanes", lanes], [new("f", share, 0.0051)],
        Seen("FDOT-625", "Table D.2"));

    private static WorkedExample Grown(string growth, string factor) =>
        Example($"20 years at {growth}", ["growth", growth, "years", "20"], [new("F", factor, 0.0005)], ByHand);
}
