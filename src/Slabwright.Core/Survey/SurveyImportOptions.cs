using System.Collections.Immutable;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Survey;

/// <summary>How to read a survey or core file.</summary>
public sealed record SurveyImportOptions
{
    /// <summary>System of plain numbers whose unit neither heading nor cell tells; also decides day or month first.</summary>
    public required UnitSystem UnitSystem { get; init; }

    /// <summary>Today; a survey day after it is a finding.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Day of the survey for rows without one; null: today, with a finding.</summary>
    public DateOnly? SurveyDate { get; init; }

    /// <summary>Headings of the file and the column each one means; an empty name leaves the column out. Goes before the built-in headings.</summary>
    public ImmutableDictionary<string, string> Headings { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Decimal mark; unknown: told from the file.</summary>
    public DecimalMark DecimalMark { get; init; }

    /// <summary>Coordinate system of points and coordinate columns, e.g. <c>EPSG:4326</c>; <c>local</c>: the alignment's; empty: as the file says, else the alignment's.</summary>
    public string CoordinateSystem { get; init; } = "";

    /// <summary>Sheet of a workbook or layer of a GeoPackage; null: the one that looks like a survey.</summary>
    public string? SheetOrLayer { get; init; }

    /// <summary>Findings listed per code; the rest is counted.</summary>
    public int MostFindingsPerCode { get; init; } = 1000;
}
