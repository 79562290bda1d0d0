using Slabwright.Core.Prices;
using Slabwright.Core.RuleSets;

namespace Slabwright.Core.Boundaries;

/// <summary>
/// Prices a drawn plan from its records alone, repair by repair in decimal money: what the optimiser claims must come out here too.
/// Shares no code with the search.
/// </summary>
public static class PlanPricing
{
    /// <summary>Cost of a plan by the price list, unrounded quantities times prices.</summary>
    /// <param name="rules">The rule set; tie bar spacing is taken from it.</param>
    /// <param name="prices">The price list.</param>
    /// <param name="repairs">The plan, faces and joints drawn.</param>
    /// <param name="options">Planning choices; the defaults when null.</param>
    public static decimal Cost(
        RuleSet rules, PriceList prices, IReadOnlyList<Repair> repairs, BoundaryOptions? options = null)
    {
        options ??= BoundaryOptions.Default;
        return repairs.Sum(r => Transverse(prices, r) + Area(prices, r, options) + Pieces(prices, r, options)
            + Side(rules, prices, r.LeftFace, left: true) + Side(rules, prices, r.RightFace, left: false));
    }

    private static decimal Transverse(PriceList prices, Repair repair)
    {
        var (drilled, tied) = (Ends(repair, JointDesign.Dowelled), Ends(repair, JointDesign.Tied));
        var inner = repair.Intermediate.Sum(j => j.Bars);
        return Amount(prices, PayRole.RepairSetUp, 1) + Amount(prices, PayRole.TransverseSawCut, 2 * repair.Width)
            + Amount(prices, PayRole.TransverseSeal, (2 + repair.Intermediate.Length) * repair.Width)
            + Amount(prices, PayRole.DrilledDowel, drilled) + Amount(prices, PayRole.TieBar, tied)
            + Amount(prices, PayRole.BasketDowel, inner);
    }

    private static int Ends(Repair repair, JointDesign design) =>
        (repair.Start.Design == design ? repair.Start.Bars : 0) + (repair.End.Design == design ? repair.End.Bars : 0);

    private static decimal Area(PriceList prices, Repair repair, BoundaryOptions options)
    {
        var loose = repair.Area * options.LooseBaseShare * options.LooseBaseDepth;
        var extra = Amount(prices, PayRole.BaseConcrete, loose);
        if (prices.Find(PayRole.FullDepthArea) is not { } item) return extra;
        var pay = Math.Max(item.Unit.FromBase(repair.Area), item.LeastPay);
        return extra + (decimal)pay * item.PriceFor(repair.Area);
    }

    private static decimal Pieces(PriceList prices, Repair repair, BoundaryOptions options)
    {
        var pieces = Math.Ceiling(repair.Length / options.LiftPiece - 1e-6);
        return Amount(prices, PayRole.InternalSawCut, (pieces - 1) * repair.Width);
    }

    /// <summary>A shared edge is cut and sealed once: it is counted with the repair to its right.</summary>
    private static decimal Side(
        RuleSet rules, PriceList prices, IEnumerable<FaceStretch> faces, bool left)
    {
        var total = 0m;
        foreach (var face in faces)
        {
            var length = face.To - face.From;
            var (cuts, board, ties, forms, strips) = face.Face switch
            {
                LongitudinalFace.Isolated => (1, 1, 0, 0, 0),
                LongitudinalFace.Tied => (1, 0, 1, 0, 0),
                LongitudinalFace.SharedWithRepair => (left ? 1 : 0, 0, 0, 0, 0),
                LongitudinalFace.FormedAgainstShoulder => (0, 0, 0, 1, 1),
                _ => (0, 0, 0, 1, 0),
            };
            var bars = ties == 0 ? 0 : length / (rules.Joints.TieBarSpacing?.Value ?? 30 * 0.0254);
            total += Amount(prices, PayRole.LongitudinalSawCut, cuts * length) + Amount(prices, PayRole.LongitudinalSeal, cuts * length)
                + Amount(prices, PayRole.IsolationBoard, board * length) + Amount(prices, PayRole.TieBar, bars)
                + Amount(prices, PayRole.EdgeForm, forms * length) + Amount(prices, PayRole.ShoulderStrip, strips * length);
        }

        return total;
    }

    private static decimal Amount(PriceList prices, PayRole role, double quantity) =>
        prices.Find(role) is { } item ? (decimal)item.Unit.FromBase(quantity) * item.UnitPrice : 0;
}
