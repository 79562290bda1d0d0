using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Survey;

/// <summary>Reads the cells of one row after another by what their column means; what cannot be read becomes a finding and counts as empty.</summary>
internal sealed class RowReader
{
    private readonly BoundColumn?[] columns = new BoundColumn?[Enum.GetValues<SurveyField>().Length];
    private readonly SurveyImportOptions options;
    private readonly DecimalMark mark;
    private readonly FindingLog log;
    private bool orderToldOf;

    public RowReader(ImmutableArray<BoundColumn> bound, SurveyImportOptions options, DecimalMark mark, FindingLog log)
    {
        foreach (var column in bound) columns[(int)column.Column.Field] = column;
        (this.options, this.mark, this.log) = (options, mark, log);
        Row = new RawRow(0, []);
    }

    /// <summary>The row being read.</summary>
    public RawRow Row { get; private set; }

    /// <summary>Unit system of plain numbers.</summary>
    public UnitSystem UnitSystem => options.UnitSystem;

    /// <summary>A length as findings print it: feet or metres, as the project writes.</summary>
    /// <param name="metres">Length, m.</param>
    public string Length(double metres) => UnitSystem == UnitSystem.UsCustomary
        ? $"{Words.Number(Math.Round(Units.Foot.FromBase(metres), 2))} ft"
        : $"{Words.Number(metres)} m";

    /// <summary>The decimal mark in force.</summary>
    public DecimalMark Mark => mark;

    /// <summary>Goes to a row; formulas that ended in errors become findings and empty cells.</summary>
    public void MoveTo(RawRow row)
    {
        Row = row;
        foreach (var column in columns)
        {
            if (column is null || column.Index >= row.Cells.Length || !row.Cells[column.Index].IsError) continue;
            Report(SurveyFaults.FormulaError, column.Column.Field, $"The formula in {column.Heading} ended in an error.");
            Row = Row with { Cells = Row.Cells.SetItem(column.Index, RawCell.Empty) };
        }
    }

    /// <summary>The column of a field, or null when the file has none.</summary>
    public BoundColumn? Column(SurveyField field) => columns[(int)field];

    /// <summary>True when the row holds something for a field.</summary>
    public bool Has(SurveyField field) => !Words.MeansNothing(Text(field));

    /// <summary>The trimmed text of a field; empty when the file or row has none.</summary>
    public string Text(SurveyField field) => Cell(field).Text.Trim();

    /// <summary>The cell of a field.</summary>
    public RawCell Cell(SurveyField field) =>
        columns[(int)field] is { } column && column.Index < Row.Cells.Length ? Row.Cells[column.Index] : RawCell.Empty;

    /// <summary>Reports a fault of a field of this row.</summary>
    public void Report(
        SurveyFault fault, SurveyField? field = null, string? sentence = null, string? mend = null, string? limit = null,
        string? source = null, int? lane = null, double? at = null)
    {
        var column = field is { } f ? columns[(int)f] : null;
        var text = field is { } g && column is not null ? Text(g) : null;
        log.Add(fault, sentence, Row.Number, column?.Heading ?? (field is { } h ? SurveyColumns.Of(h).Name : null), text is "" ? null : text, mend, lane,
            at, limit, source);
    }

    /// <summary>A size in its base unit: metres, square metres, or a share; null when empty, unreadable or below zero.</summary>
    /// <param name="field">Field.</param>
    /// <param name="isShare">True when the cell gives a share of the slab's thickness.</param>
    /// <param name="signed">True when the size may be negative.</param>
    public double? Size(SurveyField field, out bool isShare, bool signed = false)
    {
        isShare = false;
        if (!Has(field) || columns[(int)field] is not { } column) return null;
        if (!TryMeasure(column, Cell(field), out var value, out var unit)) return null;
        unit ??= column.Unit ?? SurveyColumns.DefaultUnit(column.Column.Kind, options.UnitSystem)!;
        isShare = unit.Dimension == Dimension.Share;
        if (value >= 0 || signed) return unit.ToBase(value);
        Report(SurveyFaults.Negative, field, $"{column.Heading} is negative.");
        return null;
    }

    /// <summary>A length or area in its base unit; null when empty, unreadable or below zero.</summary>
    public double? Size(SurveyField field, bool signed = false) => Size(field, out _, signed);

    /// <summary>Reads the number of a cell and the unit it states itself.</summary>
    public bool TryMeasure(BoundColumn column, RawCell cell, out double value, out Unit? unit)
    {
        (value, unit) = (cell.Number ?? 0, null);
        if (cell.Number is not null) return true;
        var field = column.Column.Field;
        var ending = MeasureText.Read(cell.Text, mark, out value, out unit);
        if (ending == MeasureEnding.Read && unit is not null && !HeaderFinder.Fits(column.Column.Kind, unit)) ending = MeasureEnding.UnitUnknown;
        if (ending == MeasureEnding.NotANumber) Report(SurveyFaults.NumberUnreadable, field, $"{column.Heading} is not a number.");
        if (ending == MeasureEnding.UnitUnknown) Report(SurveyFaults.UnitUnknown, field, $"{column.Heading} has a unit that is not known or does not fit.");
        return ending == MeasureEnding.Read;
    }

    /// <summary>A whole number; null when empty, false when it is none.</summary>
    public bool TryWhole(SurveyField field, out int? whole)
    {
        whole = null;
        if (!Has(field)) return true;
        if (!TryPlainNumber(field, out var number) || number != Math.Floor(number) || Math.Abs(number) > int.MaxValue) return false;
        whole = (int)number;
        return true;
    }

    /// <summary>A plain number without unit, also with a leading # as in <c>#12</c>.</summary>
    public bool TryPlainNumber(SurveyField field, out double number)
    {
        var cell = Cell(field);
        number = cell.Number ?? 0;
        return cell.Number is not null || MeasureText.TryNumber(cell.Text.AsSpan().Trim().TrimStart('#'), mark, out number);
    }

    /// <summary>Yes or no; false when empty or unknown.</summary>
    public bool YesNo(SurveyField field)
    {
        var text = Text(field);
        if (Words.MeansNothing(text)) return false;
        switch (Words.Key(text))
        {
            case "y" or "yes" or "true" or "t" or "1" or "x" or "si" or "ja" or "oui":
                return true;
            case "n" or "no" or "false" or "f" or "0":
                return false;
            default:
                if (text is "✓" or "✔" or "☑") return true;
                Report(SurveyFaults.WordUnknown, field, $"\"{text}\" is neither yes nor no.", "Write yes or no.");
                return false;
        }
    }

    /// <summary>The survey day of the row, or the fallback day with a finding.</summary>
    public DateOnly Day()
    {
        var fallback = options.SurveyDate ?? options.Today;
        var cell = Cell(SurveyField.Date);
        if (columns[(int)SurveyField.Date] is null) return fallback;
        if (cell.IsBlank || (cell.Day is null && Words.MeansNothing(cell.Text))) return Fallback(SurveyFaults.DateMissing, "The row has no date");
        if (!DayText.TryRead(cell, options.UnitSystem, out var day, out var assumed)) return Fallback(SurveyFaults.DateUnreadable, "The date cannot be read");
        if (day > options.Today) return Fallback(SurveyFaults.DateInFuture, $"The date {day:yyyy-MM-dd} lies after today, {options.Today:yyyy-MM-dd}");
        if (day.Year < 1900) return Fallback(SurveyFaults.DateTooOld, $"The date {day:yyyy-MM-dd} lies before 1900");
        if (assumed && !orderToldOf)
        {
            orderToldOf = true;
            Report(SurveyFaults.DateOrderAssumed, SurveyField.Date, $"Dates like this were read as {day:yyyy-MM-dd}.");
        }

        return day;

        DateOnly Fallback(SurveyFault fault, string what)
        {
            Report(fault, SurveyField.Date, $"{what}; {fallback:yyyy-MM-dd} was used.");
            return fallback;
        }
    }

    /// <summary>The note with the photo's name.</summary>
    public string Note()
    {
        var (note, photo) = (Text(SurveyField.Note), Text(SurveyField.Photo));
        if (photo.Length == 0) return note;
        return note.Length == 0 ? $"photo {photo}" : $"{note} (photo {photo})";
    }
}
