using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Prices;

namespace Slabwright.Core.Quantities;

/// <summary>What is wrong in a price list before anything is measured with it.</summary>
public static class PriceListCheck
{
    /// <summary>Checks a price list. Rows count from 2, the header being row 1.</summary>
    /// <param name="prices">The list.</param> <param name="file">File name printed in the findings, or null.</param>
    public static ImmutableArray<Finding> Check(PriceList prices, string? file = null)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        for (var i = 0; i < prices.Items.Length; i++)
        {
            var place = new FindingPlace(file, i + 2);
            CheckUnit(findings, prices.Items[i], place);
            CheckMoney(findings, prices.Items[i], place);
            CheckClasses(findings, prices.Items[i], place);
            CheckRounding(findings, prices.Items[i], place);
            CheckShares(findings, prices.Items[i], place);
        }

        CheckRepeats(findings, prices, file);
        return findings.ToImmutable();
    }

    private static void CheckUnit(ImmutableArray<Finding>.Builder findings, PayItem item, FindingPlace place)
    {
        var rule = MeasurementRules.Of(item.Role);
        if (item.Unit.Dimension == rule.Dimension) return;
        findings.Add(new Finding(
            "QTY-001", FindingLevel.Error, $"Item {item.Code} ({item.Role}) cannot be paid by {Symbol(item.Unit)}.",
            place with { Field = "unit" }, item.Unit.Symbol, $"Give a unit of {Words(rule.Dimension)}.", Source: rule.Source.ToString()));
    }

    private static void CheckMoney(ImmutableArray<Finding>.Builder findings, PayItem item, FindingPlace place)
    {
        var prices = item.SizeClasses.Select(c => c.UnitPrice).Append(item.UnitPrice).ToList();
        if (prices.Min() < 0)
        {
            findings.Add(new Finding(
                "QTY-002", FindingLevel.Error, $"Item {item.Code} has a negative price.", place with { Field = "unit_price" },
                Text(prices.Min()), "Give a price of 0 or more."));
        }
        else if (prices.Min() == 0)
        {
            findings.Add(new Finding(
                "QTY-011", FindingLevel.Warning, $"Item {item.Code} is priced at nothing; the search sees it as free.",
                place with { Field = "unit_price" }, "0", "Give the price, or leave the item out if it is not paid separately."));
        }
    }

    private static void CheckClasses(ImmutableArray<Finding>.Builder findings, PayItem item, FindingPlace place)
    {
        if (item.SizeClasses.IsEmpty) return;
        place = place with { Field = "size_classes" };
        var from = item.SizeClasses.Select(c => c.FromArea).ToList();
        if (from[0] != 0 || from.Zip(from.Skip(1)).Any(p => p.Second <= p.First))
        {
            findings.Add(new Finding(
                "QTY-003", FindingLevel.Error, $"Size classes of item {item.Code} must start at 0 and rise.", place,
                string.Join(", ", from.Select(a => a.ToString("0.##", CultureInfo.InvariantCulture) + " m2")),
                "Sort the classes by area; let the first start at 0."));
        }

        if (MeasurementRules.Of(item.Role).Dimension != Dimension.Area)
        {
            findings.Add(new Finding(
                "QTY-012", FindingLevel.Warning, $"Item {item.Code} ({item.Role}) is priced by the size of the repair although it is not an area.",
                place, Mend: "Check that the contract prices it so."));
        }

        if (item.SizeClasses.Zip(item.SizeClasses.Skip(1)).Any(p => p.Second.UnitPrice > p.First.UnitPrice))
        {
            findings.Add(new Finding(
                "QTY-013", FindingLevel.Warning, $"The price of item {item.Code} rises with size.", place,
                Mend: "Larger repairs are usually cheaper per unit; check the order of the prices."));
        }
    }

    private static void CheckRounding(ImmutableArray<Finding>.Builder findings, PayItem item, FindingPlace place)
    {
        if (!(item.RoundTo > 0) || !double.IsFinite(item.RoundTo))
        {
            findings.Add(new Finding(
                "QTY-006", FindingLevel.Error, $"Item {item.Code} must be rounded to a step greater than 0.", place with { Field = "round_to" },
                Text(item.RoundTo), "Give the step in pay units, e.g. 1 or 0.1."));
        }

        if (!(item.LeastPay >= 0) || !double.IsFinite(item.LeastPay))
        {
            findings.Add(new Finding(
                "QTY-006", FindingLevel.Error, $"The least pay quantity of item {item.Code} must be 0 or more.",
                place with { Field = "least_pay" }, Text(item.LeastPay), "Give it in pay units, or 0 for none."));
        }
    }

    private static void CheckShares(ImmutableArray<Finding>.Builder findings, PayItem item, FindingPlace place)
    {
        if (item.LowShare is > 0 and <= 1 && item.HighShare >= 1 && double.IsFinite(item.HighShare)) return;
        findings.Add(new Finding(
            "QTY-007", FindingLevel.Error, $"The price range of item {item.Code} must hold the price itself.",
            place with { Field = "low_share, high_share" }, $"{Text(item.LowShare)} to {Text(item.HighShare)}",
            "Give a low share over 0 and up to 1 and a high share of 1 or more.", "0 < low ≤ 1 ≤ high"));
    }

    private static void CheckRepeats(ImmutableArray<Finding>.Builder findings, PriceList prices, string? file)
    {
        for (var i = 0; i < prices.Items.Length; i++)
        {
            var item = prices.Items[i];
            var earlier = prices.Items.Take(i).ToList();
            var place = new FindingPlace(file, i + 2, "code");
            if (earlier.Any(e => e.Code == item.Code))
            {
                findings.Add(new Finding(
                    "QTY-004", FindingLevel.Error, $"Item code {item.Code} stands twice in the price list.", place, item.Code,
                    "Give every item a code of its own."));
            }
            else if (item.Role != PayRole.LumpSum && earlier.Find(e => e.Role == item.Role) is { } other)
            {
                findings.Add(new Finding(
                    "QTY-005", FindingLevel.Warning,
                    $"Items {other.Code} and {item.Code} both pay for {item.Role}; the take-off measures both, the boundary search prices the first.",
                    place with { Field = "role" }, item.Role.ToString(), "Keep one item, or add their prices in one."));
            }
        }
    }

    private static string Symbol(Unit unit) => unit.Symbol.Length == 0 ? "the piece" : unit.Symbol;

    private static string Words(Dimension dimension) =>
        dimension == Dimension.None ? "the piece or the job (each, lump sum)" : dimension.ToString().ToLowerInvariant();

    private static string Text(decimal value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Text(double value) => value.ToString(CultureInfo.InvariantCulture);
}
