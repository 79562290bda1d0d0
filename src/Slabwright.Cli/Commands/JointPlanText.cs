using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;

namespace Slabwright.Cli.Commands;

/// <summary>Prints the joints of a plan: conditions, winner and alternatives of each lane, joints by kind, sealing, lifting, pressure.</summary>
internal static class JointPlanText
{
    /// <summary>The text for people.</summary>
    public static void Write(Report report, Project project, RepairPlan plan, bool all)
    {
        foreach (var lane in plan.Joints.Lanes) WriteLane(report, project, lane, all);
        WriteJoints(report, plan.Joints, project.UnitSystem);
        WriteAround(report, plan, project.UnitSystem);
        foreach (var assumed in plan.Joints.Findings.Where(f => f.Level == FindingLevel.Note)) report.Line(FindingText.Of(assumed));
    }

    /// <summary>The result for scripts; numbers in SI, a life beyond the years looked at is null.</summary>
    public static object Document(RepairPlan plan) => new
    {
        lanes = plan.Joints.Lanes.Select(l => new
        {
            l.Lane,
            l.Conditions,
            winner = l.Winner is null ? null : Document(l.Winner),
            used = Document(l.Used),
            alternatives = l.Alternatives.Select(Document),
            l.Reasons,
        }),
        joints = plan.Joints.Joints,
        holes = plan.Joints.Holes,
        seals = new { reservoirs = plan.Seals.Reservoirs.Length, joints = plan.Seals.Joints.Length },
        lifts = new { repairs = plan.Lifts.Repairs.Length, pieces = plan.Lifts.Repairs.Sum(r => r.Pieces.Length), failing = plan.Lifts.Repairs.Count(r => !r.Passes) },
        pressure = new { repairs = plan.Pressure.Repairs.Length, reliefCuts = plan.Pressure.Repairs.Count(r => r.ReliefNeeded) },
    };

    /// <summary>A limit for scripts.</summary>
    public static object Document(LimitCheck check) => new
    {
        check.Name, value = check.Units.Si.FromBase(check.Value), limit = check.Units.Si.FromBase(check.Limit), unit = check.Units.Si.Symbol, check.Sense,
        use = double.IsFinite(check.Use) ? check.Use : (double?)null, check.Holds, check.Source,
    };

    private static object Document(JointAlternative a) => new
    {
        a.Layout, a.CostPerJoint, life = double.IsFinite(a.Life) ? a.Life : (double?)null, a.Faulting, a.Bearing,
        closedBearing = new { reach10 = a.ClosedBearing.Reach10, reach18 = a.ClosedBearing.Reach18 },
        a.DeflectionTransfer, a.Deflection, a.Stress, a.Damage, a.BuildUp, a.Passes,
        checks = a.Checks.Select(Document), governing = a.Governing.Name,
    };

    private static void WriteLane(Report report, Project project, LaneJointDesign lane, bool all)
    {
        var (c, system) = (lane.Conditions, project.UnitSystem);
        report.Line($"Lane {lane.Lane}: {c.BuildUp}");
        report.Line($"  k {In(c.Reaction, Units.Pci, Units.MegapascalPerMetre, system)}, concrete {In(c.Modulus, Units.Psi, Units.Gigapascal, system)}, "
            + $"f'c {In(c.Strength, Units.Psi, Units.Megapascal, system)}, l {In(c.Radius, Units.Inch, Units.Millimetre, system)}, "
            + $"joint opens to {In(c.JointWidth, Units.Inch, Units.Millimetre, system)}");
        report.Line(string.Create(CultureInfo.InvariantCulture,
            $"  {c.TrucksPerDay:N0} trucks and {c.EquivalentAxlesPerDay:N0} equivalent axles a day, growth {100 * c.Growth:0.#} %, {c.DesignYears:0.#} design years"));
        foreach (var reason in lane.Reasons) report.Line($"  {reason.Sentence} [{reason.Source}]");
        report.Line();
        WriteAlternatives(report, project, lane, all);
        HandJointText.WriteChecks(report, lane.Used.Checks, system);
        report.Line();
    }

    private static void WriteAlternatives(Report report, Project project, LaneJointDesign lane, bool all)
    {
        var system = project.UnitSystem;
        var table = new TextTable(
            "", "bars>", "diameter>", "length>", "where", "bearing>", "closed 1.0 l>", "1.8 l>", "transfer>", "faulting>", "life, years>",
            $"cost, {project.Prices.Currency}>", "governing limit", "used>", "passes");
        var shown = all ? lane.Alternatives : OneOfEach(lane);
        foreach (var a in shown) table.Add(Row(a, a == lane.Used, system));
        report.Table(table);
        if (shown.Count < lane.Alternatives.Length) report.Line($"{lane.Alternatives.Length - shown.Count} of other lengths under --all.");
        report.Line();
    }

    /// <summary>Of each arrangement and diameter the one used, else the cheapest that passes, else the one that comes nearest.</summary>
    private static IReadOnlyList<JointAlternative> OneOfEach(LaneJointDesign lane) =>
    [
        .. lane.Alternatives.GroupBy(a => (a.Layout?.Arrangement, a.Layout?.Bars, a.Layout?.Diameter))
            .Select(g => g.FirstOrDefault(a => a == lane.Used) ?? g.FirstOrDefault(a => a.Passes) ?? g.MinBy(a => a.Governing.Use)!)
            .OrderBy(a => a.CostPerJoint),
    ];

    private static string[] Row(JointAlternative a, bool used, UnitSystem system) =>
    [
        used ? "*" : "",
        Count(a.Layout?.Bars ?? 0),
        a.Layout is { } bars ? In(bars.Diameter, Units.Inch, Units.Millimetre, system) : "-",
        a.Layout is { } one ? In(one.Length, Units.Inch, Units.Millimetre, system) : "-",
        a.Layout is { } layout ? TradeWords.Of(layout.Arrangement) : "no bars",
        In(a.Bearing, Units.Psi, Units.Megapascal, system),
        In(a.ClosedBearing.Reach10, Units.Psi, Units.Megapascal, system),
        In(a.ClosedBearing.Reach18, Units.Psi, Units.Megapascal, system),
        HandJointText.Percent(a.DeflectionTransfer),
        In(a.Faulting, Units.Inch, Units.Millimetre, system),
        double.IsFinite(a.Life) ? a.Life.ToString("0.0", CultureInfo.InvariantCulture) : "100+",
        a.CostPerJoint.ToString("N2", CultureInfo.InvariantCulture),
        a.Governing.Name,
        HandJointText.Percent(a.Governing.Use),
        a.Passes ? "yes" : "NO",
    ];

    private static void WriteJoints(Report report, JointPlan joints, UnitSystem system)
    {
        report.Line($"{Count(joints.Joints.Length)} joints:");
        var kinds = new TextTable("joint", "kind", "joints>", "bars>");
        foreach (var group in joints.Joints.GroupBy(j => (j.Position, j.Design)).OrderBy(g => g.Key.Position).ThenBy(g => g.Key.Design))
            kinds.Add(TradeWords.Of(group.Key.Position), TradeWords.Of(group.Key.Design), Count(group.Count()), Count(group.Sum(j => j.Bars?.Bars ?? 0)));
        report.Table(kinds);
        report.Line();
        var holes = new TextTable("holes for", "anchor", "bar>", "hole>", "depth>", "holes>");
        foreach (var hole in joints.Holes)
        {
            holes.Add(TradeWords.Of(hole.Kind), hole.Anchor, In(hole.BarDiameter, Units.Inch, Units.Millimetre, system),
                In(hole.HoleDiameter, Units.Inch, Units.Millimetre, system), In(hole.HoleDepth, Units.Inch, Units.Millimetre, system), Count(hole.Holes));
        }

        report.Table(holes);
        report.Line();
    }

    private static void WriteAround(Report report, RepairPlan plan, UnitSystem system)
    {
        foreach (var same in plan.Seals.Reservoirs.GroupBy(r => (r.Family.Kind, r.Chosen?.Width, r.Chosen?.SawDepth)))
        {
            var lanes = string.Join(", ", same.Select(r => r.Lane).Distinct().Order());
            var chosen = same.Key is { Width: { } width, SawDepth: { } depth }
                ? $"sawn {In(width, Units.Inch, Units.Millimetre, system)} wide and {In(depth, Units.Inch, Units.Millimetre, system)} deep"
                : "no width keeps every limit";
            report.Line($"Sealing: {TradeWords.Of(same.Key.Kind)}, {chosen}: {Count(same.Sum(r => r.Joints))} joints in lanes {lanes}.");
        }

        if (!plan.Lifts.Repairs.IsEmpty)
        {
            var heaviest = plan.Lifts.Repairs.MaxBy(r => r.Forces.HookLoad)!;
            report.Line($"Lifting: {Count(plan.Lifts.Repairs.Sum(r => r.Pieces.Length))} pieces of {Count(plan.Lifts.Repairs.Length)} repairs; most on the hook "
                + $"{In(heaviest.Forces.HookLoad, Units.PoundOfForce, Units.Kilonewton, system)} at {heaviest.RepairId}; "
                + $"{Count(plan.Lifts.Repairs.Count(r => !r.Passes))} repairs fail a limit.");
        }

        if (!plan.Pressure.Repairs.IsEmpty)
            report.Line($"Pressure: {Count(plan.Pressure.Repairs.Count(r => r.ReliefNeeded))} of {Count(plan.Pressure.Repairs.Length)} repairs need a relief cut.");
    }

    private static string In(double value, Unit customary, Unit si, UnitSystem system) => HandJointText.Text(value, new UnitPair(customary, si), system);

    private static string Count(int number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
