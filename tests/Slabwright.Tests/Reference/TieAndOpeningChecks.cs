using Slabwright.Core.Joints;
using static Slabwright.Tests.Reference.US;

namespace Slabwright.Tests.Reference;

/// <summary>Tie bars: NPTEL IIT Bombay lecture 29 p. 14 and Huang ch. 4 (from memory); longest slabs for an opening, Huang (from memory).</summary>
public sealed class TieAndOpeningChecks : ICheckRows
{
    private const string Bombay = "NPTEL IIT Bombay lecture 29 p. 14";
    private const string Huang = "Huang 2004 ch. 4 (from memory)";

    public IEnumerable<CheckRow> Rows()
    {
        const double Kgf = 98066.5;
        var metric = TieBars.SteelPerLength(2400, 0.18, 3.6, 1.5, 1750 * Kgf);
        yield return Row("E4.1", Bombay, "steel, 18 cm, 3.6 m to the edge", 1.33, metric * 1e4, "cm²/m", 0.005, "the page states 1700 kg/cm² but uses 1750");
        yield return Row("E4.1", Bombay, "spacing of 1-cm bars", 59, TieBars.Spacing(0.01, metric) * 100, "cm", 0.5);
        yield return Row("E4.1", Bombay, "length, bond 24.6 kg/cm²", 36, TieBars.Length(1750 * Kgf, 0.01, 24.6 * Kgf, 0) * 100, "cm", 0.5);
        var us = TieBars.SteelPerLength(150 * Pcf, 8 * Inch, 12 * Foot, 1.5, 27_000 * Psi);
        yield return Row("E4.2", Huang, "spacing of No. 4 bars of 0.2 in², two 12-ft lanes, 8 in", 36, 0.2 * Inch * Inch / us / Inch, "in", 0.05);
        yield return Row("E4.2", Huang, "length, bond 350 psi", 22.3, TieBars.Length(27_000 * Psi, 0.5 * Inch, 350 * Psi, 3 * Inch) / Inch, "in", 0.05);
        yield return Row("E4.4", Huang, "longest slab without dowels, 0.05 in", 14.9, Longest(JointMovement.UndowelledLimit), "ft", 0.05);
        yield return Row("E4.4", Huang, "longest slab with dowels, 0.25 in", 74.5, Longest(JointMovement.DowelledLimit), "ft", 0.05);
    }

    private static double Longest(double opening) =>
        JointMovement.LongestSlab(opening, JointMovement.StabilisedRestraint, 5.5e-6 / Fahrenheit, 60 * Fahrenheit, 1e-4) / Foot;

    private static CheckRow Row(string item, string source, string what, double published, double ours, string unit, double tolerance, string remark = "") =>
        new("4 Tie bars, opening, seals", item, source, what, published, ours, unit, tolerance, remark);
}
