using System.Globalization;
using SpreadCheetah;
using SpreadCheetah.Styling;

namespace Slabwright.Sheets.Workbook;

/// <summary>Cell styles of the workbook.</summary>
internal sealed record CellStyles(
    StyleId Title, StyleId Header, StyleId Text, StyleId Wrapped, StyleId Whole, StyleId Measure, StyleId Exact, StyleId Money, StyleId Total, StyleId TotalText)
{
    private static readonly System.Drawing.Color HeaderFill = System.Drawing.Color.FromArgb(0x16, 0x19, 0x1d);

    public static CellStyles Add(Spreadsheet book)
    {
        var header = new Style { Font = { Bold = true, Color = System.Drawing.Color.White }, Fill = { Color = HeaderFill } };
        header.Alignment.WrapText = true;
        header.Alignment.Vertical = VerticalAlignment.Center;
        var wrapped = new Style();
        wrapped.Alignment.WrapText = true;
        wrapped.Alignment.Vertical = VerticalAlignment.Top;
        var total = new Style { Font = { Bold = true }, Format = NumberFormat.Custom("#,##0.00") };
        total.Border.Top = new EdgeBorder { BorderStyle = BorderStyle.Medium };
        var totalText = new Style { Font = { Bold = true } };
        totalText.Border.Top = new EdgeBorder { BorderStyle = BorderStyle.Medium };
        return new CellStyles(
            book.AddStyle(new Style { Font = { Bold = true, Size = 14 } }), book.AddStyle(header), book.AddStyle(new Style()), book.AddStyle(wrapped),
            book.AddStyle(new Style { Format = NumberFormat.Custom("#,##0") }), book.AddStyle(new Style { Format = NumberFormat.Custom("#,##0.00") }),
            book.AddStyle(new Style { Format = NumberFormat.Custom("#,##0.00##") }), book.AddStyle(new Style { Format = NumberFormat.Custom("#,##0.00") }),
            book.AddStyle(total), book.AddStyle(totalText));
    }
}

/// <summary>Small helpers for formulas.</summary>
internal static class FormulaText
{
    /// <summary>A name in quotes, doubled inside, as formulas write text.</summary>
    public static string Quote(string text) => "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";

    /// <summary>Row number as text.</summary>
    public static string N(int row) => row.ToString(CultureInfo.InvariantCulture);

    /// <summary>A number as formulas write it.</summary>
    public static string N(double value) => value.ToString("0.##########", CultureInfo.InvariantCulture);
}
