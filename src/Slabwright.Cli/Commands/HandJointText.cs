using System.Globalization;
using Slabwright.Cli.Output;
using Slabwright.Core.Handbook;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;

namespace Slabwright.Cli.Commands;

/// <summary>Prints one joint worked out by hand.</summary>
internal static class HandJointText
{
    /// <summary>Inputs, closed forms beside plate finite elements, bars, limits and how the plate model ended.</summary>
    public static void Write(Report report, HandJoint joint, UnitSystem system)
    {
        report.Line("Inputs:");
        var inputs = new TextTable("option", "value", "meaning", "taken from");
        foreach (var input in joint.Inputs) inputs.Add("--" + input.Key, input.Value, input.Name, input.Source?.ToString() ?? "given");
        report.Table(inputs);
        if (joint.Run is not { } run) return;
        report.Line();
        report.Line("Closed forms beside plate finite elements, one wheel on the old slab:");
        WriteComparisons(report, joint, system);
        report.Line();
        report.Line("Bars under the wheel at the joint:");
        WriteBars(report, joint, system);
        report.Line();
        WriteChecks(report, joint.Checks, system);
        report.Line();
        report.Line(string.Create(CultureInfo.InvariantCulture,
            $"Plate model: {run.Unknowns:N0} unknowns, residual {run.Residual:0.0e0}, load not met by the base {run.Equilibrium:0.0e0} of the load."));
        report.Line("The plate model has the old slab, the repair and the slab behind, one lane wide with free long sides.");
    }

    /// <summary>Limits with value, limit and share used.</summary>
    public static void WriteChecks(Report report, IEnumerable<LimitCheck> checks, UnitSystem system)
    {
        var table = new TextTable("limit", "value>", "must be", "limit>", "used>", "holds", "source");
        foreach (var check in checks)
        {
            table.Add(check.Name, Text(check.Value, check.Units, system), check.Sense == LimitSense.AtMost ? "at most" : "at least",
                Text(check.Limit, check.Units, system), Percent(check.Use), check.Holds ? "yes" : "NO", check.Source.ToString());
        }

        report.Table(table);
    }

    /// <summary>A value in the unit of the system.</summary>
    public static string Text(double value, UnitPair units, UnitSystem system) => MeasureText.Write(value, units.In(system));

    /// <summary>A share in whole percent.</summary>
    public static string Percent(double share) => double.IsFinite(share)
        ? (100 * share).ToString("N0", CultureInfo.InvariantCulture) + " %"
        : "-";

    private static void WriteComparisons(Report report, HandJoint joint, UnitSystem system)
    {
        var table = new TextTable("where", "what", "closed form>", "plate>", "closed/plate>", "form");
        foreach (var row in joint.Comparisons)
        {
            table.Add(row.Case, row.Quantity, row.Closed is { } closed ? Text(closed, row.Units, system) : "-", row.Plate is { } plate ? Text(plate, row.Units, system) : "-",
                row.Ratio is { } ratio ? ratio.ToString("0.00", CultureInfo.InvariantCulture) : "-", row.Form);
        }

        report.Table(table);
    }

    private static void WriteBars(Report report, HandJoint joint, UnitSystem system)
    {
        var (offset, force, stress) = system == UnitSystem.Si
            ? (Units.Millimetre, Units.Kilonewton, Units.Megapascal)
            : (Units.Inch, Units.PoundOfForce, Units.Psi);
        var table = new TextTable($"bar>", $"from the left edge, {offset}>", $"reach 1.0 l, {force}>", $"reach 1.8 l, {force}>", $"plate, {force}>", $"bearing, {stress}>");
        foreach (var bar in joint.Bars)
        {
            table.Add(bar.Number.ToString(CultureInfo.InvariantCulture), Number(offset.FromBase(bar.Offset), 1), Load(bar.Reach10), Load(bar.Reach18), Load(bar.Plate),
                Number(stress.FromBase(bar.Bearing), system == UnitSystem.Si ? 2 : 0));
        }

        report.Table(table);

        string Load(double value) => Number(force.FromBase(value), system == UnitSystem.Si ? 2 : 0);
    }

    private static string Number(double value, int decimals) => value.ToString("N" + decimals, CultureInfo.InvariantCulture);
}
