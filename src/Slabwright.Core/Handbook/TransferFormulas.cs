using System.Collections.Immutable;
using Slabwright.Core.Joints;
using static Slabwright.Core.Handbook.Entry;

namespace Slabwright.Core.Handbook;

/// <summary>Load transfer of a joint from its stiffness, and what it does to deflection and stress.</summary>
internal static class TransferFormulas
{
    private const string Topic = "Dowels";

    private static readonly HandbookInput LoadRatio = Number("ratio", "a/l", "Load radius over l", 0, 0.5);

    public static ImmutableArray<HandbookEntry> Entries { get; } = [Fits, StressFit, SumRule];

    private static HandbookEntry Fits => new()
    {
        Id = "transfer-fits",
        Title = "Load transfer from joint stiffness",
        Topic = Topic,
        Expression = "LTE = 1/{1 + 10^[(0.214 − 0.183 a/l − log R)/1.18]}; LTE = 1/(1 + 1.2 R^−0.849)",
        Inputs = [Number("stiffness", "R", "Dimensionless joint stiffness, AGG/(k l) or D/(s k l)", 0.001, 1e5), LoadRatio],
        Outputs = [new("LTE", "Load transfer, fit with load size", Share), new("LTEc", "Load transfer, fit without", Share)],
        Source = Memory("FHWA-RD-02-088", "first fit; second fit Crovetti 1994, NCHRP 1-37A"),
        Notes = "Against the exact integral of two half-plates the first stays within 0.022 for R 0.1 to 100 and a/l 0 to 0.3; the second reads 0.015 to 0.045 high.",
        Work = s =>
        {
            if (s["stiffness"] is < 0.1 or > 100 || s["ratio"] > 0.3) s.Doubt("The fits were checked for R 0.1 to 100 and a/l to 0.3 only.", "R 0.1 to 100");
            s.Result("LTE", LoadTransfer.Deflection(s["stiffness"], s["ratio"]));
            s.Result("LTEc", LoadTransfer.ByCrovetti(s["stiffness"]));
        },
        Examples =
        [
            Fit("1", "0.1", "41.7 %"), Fit("5", "0.1", "72.4 %"), Fit("10", "0.1", "81.7 %"), Fit("1", "0.3", "42.8 %"), Fit("10", "0.3", "83.5 %"),
        ],
    };

    private static HandbookEntry StressFit => new()
    {
        Id = "transfer-stress",
        Title = "Deflection transfer from stress transfer",
        Topic = Topic,
        Expression = "LTE = {[1206 a/l + 377] s² − 393 a/l s³}/{1 + 689 a/l s + [370 − 154 a/l] s²}",
        Inputs = [Part("stress", "s", "Stress transfer", 0.001), LoadRatio],
        Outputs = [new("LTE", "Load transfer by deflection", Share)],
        Source = Memory("HAMMONS-1997", "low confidence"),
        Notes = "Low confidence. Within 0.03 of the exact integral up to a stress transfer of 0.45; above it passes 1 and must not be used.",
        Work = s =>
        {
            var transfer = s.Result("LTE", LoadTransfer.FromStressTransfer(s["stress"], s["ratio"]));
            if (s["stress"] > LoadTransfer.MostStressTransfer) s.Doubt("The fit is good to a stress transfer of 45 % only.", "45 %");
            if (transfer > 1) s.Refuse("The fit gives more than full load transfer here.", "Use a stress transfer of 45 % or less.");
        },
        Examples =
        [
            Example("Half-plates, a/l 0.1, R 10", ["stress", "27.8 %", "ratio", "0.1"], [new("LTE", "81.7 %", 3)], ByHand, "Exact integral of two half-plates."),
            Example("Half-plates, a/l 0.3, R 10", ["stress", "43.8 %", "ratio", "0.3"], [new("LTE", "83.5 %", 3)], ByHand, "Exact integral of two half-plates."),
        ],
    };

    private static HandbookEntry SumRule => new()
    {
        Id = "transfer-sum",
        Title = "Both sides of a joint from the free edge",
        Topic = Topic,
        Expression = "dl = d_free/(1 + T), du = d_free T/(1 + T); share transferred TL = T/(1 + T)",
        Inputs = [new("free", "d_free", "Deflection of the free edge", Short, 0, 0.1), Part("transfer", "T", "Unloaded over loaded side")],
        Outputs = [new("dl", "Loaded side", Short), new("du", "Unloaded side", Short), new("TL", "Share transferred", Share)],
        Source = ByHand,
        Notes = "Exact for two equal half-plates joined by a shear spring without moment; the same for stresses with the stress transfer. US airfield practice takes 25 % of the free-edge stress across (from memory).",
        Work = s =>
        {
            s.Result("dl", LoadTransfer.LoadedSide(s["free"], s["transfer"]));
            s.Result("du", LoadTransfer.UnloadedSide(s["free"], s["transfer"]));
            s.Result("TL", LoadTransfer.Transferred(s["transfer"]));
        },
        Examples =
        [
            Example("Half-plates, a/l 0.1, R 10", ["free", "0.400248 in", "transfer", "81.7 %"],
                [new("dl", "0.2203 in", 0.00005), new("du", "0.1799 in", 0.0001)], ByHand, "Exact integral; k l² and P put to 1."),
        ],
    };

    private static WorkedExample Fit(string stiffness, string ratio, string transfer) => Example(
        $"Half-plates, R {stiffness}, a/l {ratio}", ["stiffness", stiffness, "ratio", ratio],
        [new("LTE", transfer, 2.2), new("LTEc", transfer, 4.5)], ByHand, "Exact integral.");
}
