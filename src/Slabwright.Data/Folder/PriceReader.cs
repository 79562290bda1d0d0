using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;

namespace Slabwright.Data.Folder;

/// <summary>Reads prices.csv.</summary>
internal static class PriceReader
{
    /// <summary>Pay units without a dimension.</summary>
    internal static readonly string[] Pieces = ["each", "lump sum"];

    /// <summary>The price list, or null when there is no file.</summary>
    public static PriceList? Read(string folder, ProjectHead? head, List<Finding> findings)
    {
        var scene = head?.Scene ?? new FolderScene(0, new Stationing { Style = StationStyle.Metres }, UnitSystem.Si);
        var items = ImmutableArray.CreateBuilder<PayItem>();
        var rows = new List<long?>();
        foreach (var row in FolderTable.Read(folder, FolderFormat.Prices, scene, findings))
        {
            var item = Item(row);
            if (!row.Good) continue;
            items.Add(item);
            rows.Add(row.Place.Row);
        }

        if (!File.Exists(Path.Combine(folder, FolderFormat.Prices.Name))) return null;
        var prices = new PriceList(head?.Currency ?? "", items.ToImmutable());
        findings.AddRange(PriceListCheck.Check(prices, FolderFormat.Prices.Name).Select(f => f with { Place = InFile(f.Place, rows) }));
        return prices;
    }

    /// <summary>The check counts the items it is given from row 2; rows left out as unreadable move them.</summary>
    private static FindingPlace InFile(FindingPlace place, List<long?> rows) =>
        place.Row is { } row && row - 2 < rows.Count ? place with { Row = rows[(int)row - 2] } : place;

    private static PayItem Item(FolderRow row)
    {
        var unit = PayUnit(row);
        return new PayItem
        {
            Code = row.Text("code"),
            Name = row.Text("name"),
            Role = row.Words<PayRole>("role") ?? default,
            Unit = unit,
            UnitPrice = Money(row, "unit_price", row.Text("unit_price")) ?? 0,
            SizeClasses = [.. SizeClasses(row, unit)],
            RoundTo = row.Number("round_to") ?? 1,
            LeastPay = row.Number("least_pay") ?? 0,
            LowShare = row.Number("low_share") ?? 1,
            HighShare = row.Number("high_share") ?? 1,
            Source = Source(row.Text("source")),
        };
    }

    private static Unit PayUnit(FolderRow row)
    {
        var text = row.Text("unit");
        if (Pieces.FirstOrDefault(p => p.Equals(text.Replace('_', ' '), StringComparison.OrdinalIgnoreCase)) is { } piece) return new(piece, Dimension.None, 1);
        if (Units.TryFind(text, out var unit) && unit.Dimension is Dimension.Length or Dimension.Area or Dimension.Volume) return unit;
        if (text.Length > 0) row.Bad("ROAD-019", "The pay unit is not known.", "unit", text, "Use ft, m, ft2, yd2, m2, ft3, yd3, m3, each or lump sum.");
        return Units.One;
    }

    private static decimal? Money(FolderRow row, string field, string text)
    {
        if (text.Length == 0) return null;
        if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var money)) return money;
        row.Bad("ROAD-007", "The price is not a number of 0 or more.", field, text, "Write the price with a decimal point and without the currency.");
        return null;
    }

    private static IEnumerable<SizeClass> SizeClasses(FolderRow row, Unit unit)
    {
        foreach (var part in row.Text("size_classes").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var pair = part.Split('=', StringSplitOptions.TrimEntries);
            if (pair.Length == 2 && ExactNumber.TryRead(pair[0], unit, out var from) && Money(row, "size_classes", pair[1]) is { } price)
                yield return new(from, price);
            else row.Bad("ROAD-007", "The size class cannot be read.", "size_classes", part, "Write least size = price, parted by semicolons, for example 0=210; 12=185.");
        }
    }

    /// <summary>A source as <c>tag</c> or <c>tag, place</c>; without one the price is the project's own.</summary>
    private static SourceRef Source(string text)
    {
        if (text.Length == 0) return SourceRef.Project;
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        return comma < 0
            ? new(text, "", SourceStatus.Project)
            : new(text[..comma].Trim(), text[(comma + 1)..].Trim(), SourceStatus.Project);
    }
}
