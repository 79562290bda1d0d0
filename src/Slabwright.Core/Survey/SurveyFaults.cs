using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Survey;

/// <summary>Something that can be wrong with a survey file; docs/findings.md prints this table.</summary>
/// <param name="Code">Stable code.</param>
/// <param name="Level">Weight.</param>
/// <param name="Meaning">What it means.</param>
/// <param name="Mend">What to do about it.</param>
public sealed record SurveyFault(string Code, FindingLevel Level, string Meaning, string Mend);

/// <summary>Everything that can be wrong with a survey or core file. Codes never change their meaning.</summary>
public static class SurveyFaults
{
    private static readonly ImmutableArray<SurveyFault>.Builder Kinds = ImmutableArray.CreateBuilder<SurveyFault>();

    /// <summary>The file or a part of it cannot be read.</summary>
    public static SurveyFault Unreadable { get; } = Error("SRV-001", "The file or a part of it cannot be read as what it is.", "Open it in the program that made it, save it again and import that.");

    internal static readonly SurveyFault Empty = Error("SRV-002", "The file has no rows.", "Check that the right file was chosen.");
    internal static readonly SurveyFault NoHeader = Error("SRV-003", "No row looks like a header.", "Put the column names of docs/steps/survey.md in one row above the data.");
    internal static readonly SurveyFault HeadingUnknown = Note("SRV-004", "A column's heading is not known; the column was not used.", "Rename it to one of the accepted headings if it matters.");
    internal static readonly SurveyFault HeadingTwice = Warning("SRV-005", "Two columns mean the same; the first was used.", "Remove or rename one of them.");
    internal static readonly SurveyFault ColumnMissing = Error("SRV-006", "A column the file must have is missing; no row was used.", "Add the column.");
    internal static readonly SurveyFault RowTooLong = Warning("SRV-007", "A row has more cells than the header; the extra cells were not used.", "Quote cells that hold the delimiter, or remove the extra cells.");
    internal static readonly SurveyFault RowTooShort = Note("SRV-008", "A row has fewer cells than the header; the missing cells count as empty.", "Fill the row up if something is missing.");
    internal static readonly SurveyFault TotalsRow = Note("SRV-009", "A row of totals was passed over.", "Nothing, if it is one.");
    internal static readonly SurveyFault RowMalformed = Warning("SRV-010", "A row's text was not well formed and was read as well as it could be.", "Check the row; close quotation marks, double those inside a quoted cell.");
    /// <summary>Some characters could not be decoded.</summary>
    public static SurveyFault TextDoubtful { get; } = Warning("SRV-011", "Some characters could not be decoded.", "Save the file as UTF-8.");

    internal static readonly SurveyFault FormulaError = Error("SRV-012", "A formula ended in an error; the cell was not used.", "Mend the formula or write the value.");
    /// <summary>One of several sheets or layers was read.</summary>
    public static SurveyFault SheetChosen { get; } = Note("SRV-013", "The file has several sheets or layers; the one that looks like a survey was read.", "Name the sheet or layer if another one is meant.");

    internal static readonly SurveyFault MoreOfTheSame = Note("SRV-014", "There are more findings of one code than are listed one by one.", "Mend those listed and import again.");
    internal static readonly SurveyFault ValueMissing = Error("SRV-020", "A value the row must have is missing; the row was not used.", "Fill it in.");
    internal static readonly SurveyFault TypeUnknown = Error("SRV-021", "The distress type is not known; the row was not used.", "Use a name, number or abbreviation of the LTPP list.");
    internal static readonly SurveyFault SeverityUnknown = Error("SRV-022", "The severity is not known; the row was not used.", "Write low, moderate or high.");
    internal static readonly SurveyFault SeverityNeedless = Warning("SRV-023", "A severity is given for a type that has none; it was not used.", "Leave it empty, or check the type.");
    internal static readonly SurveyFault LaneUnknown = Error("SRV-024", "The road has no such lane; the row was not used.", "Use a lane number, counted from the left in the direction of travel.");
    internal static readonly SurveyFault NumberUnreadable = Error("SRV-025", "A number cannot be read; the value was not used.", "Write one number, with its unit where it is not the column's.");
    internal static readonly SurveyFault UnitUnknown = Error("SRV-026", "A unit is not known or does not fit; the value was not used.", "Use in, ft, mm, cm, m, ft2, yd2, m2 or %.");
    internal static readonly SurveyFault DateUnreadable = Error("SRV-027", "A date cannot be read; the fallback day was used.", "Write year-month-day.");
    internal static readonly SurveyFault DateInFuture = Error("SRV-028", "A date lies in the future; the fallback day was used.", "Correct the date.");
    internal static readonly SurveyFault DateTooOld = Error("SRV-029", "A date lies before 1900; the fallback day was used.", "Correct the date.");
    internal static readonly SurveyFault DateMissing = Warning("SRV-030", "There is no date; the fallback day was used.", "Add a date column or state the day of the survey; the age of the survey drives growth.");
    internal static readonly SurveyFault DateOrderAssumed = Note("SRV-031", "Day and month could be the other way round.", "Write year-month-day.");
    internal static readonly SurveyFault WordUnknown = Error("SRV-032", "A word is not one of the words the column knows; the value was not used.", "Use one of the words of docs/steps/survey.md.");
    internal static readonly SurveyFault StationUnreadable = Error("SRV-040", "A station cannot be read, or the road has no such station.", "Write stations as the project does.");
    internal static readonly SurveyFault StationAmbiguous = Error("SRV-041", "A station stands for more than one place; the row was not used.", "Add the slab number, or give the distance from the road's start with its unit.");
    internal static readonly SurveyFault Reversed = Warning("SRV-042", "The row ends before it starts; the two were swapped.", "Check the direction; places run in the direction of travel.");
    internal static readonly SurveyFault BeyondRoad = Error("SRV-043", "The place lies before the start or past the end of the road; the row was not used.", "Check the station.");
    internal static readonly SurveyFault BeyondLane = Error("SRV-044", "The lane has no concrete at the place; the row was not used.", "Check the lane and the station.");
    internal static readonly SurveyFault SlabUnknown = Error("SRV-045", "The lane has no slab with this number.", "Check the slab number; slabs count from 1 along the lane.");
    internal static readonly SurveyFault JointUnknown = Error("SRV-046", "The lane has no joint with this number.", "Check the joint number; joint n is where slab n starts.");
    internal static readonly SurveyFault PlacesDisagree = Warning("SRV-047", "Slab number and station do not agree; the station was used.", "Correct one of the two.");
    internal static readonly SurveyFault PlaceAssumed = Note("SRV-048", "Only the slab is given; the place in it was assumed from the type.", "Give start, middle, end or a distance in the slab.");
    internal static readonly SurveyFault CoordinatesUnusable = Error("SRV-049", "Coordinates cannot be turned into a place on this road.", "Give the project an alignment, and export the survey in its coordinate system or in longitude and latitude.");
    internal static readonly SurveyFault OutsideLanes = Error("SRV-050", "The point lies outside every lane; the row was not used.", "Check the coordinates and their coordinate system.");
    internal static readonly SurveyFault LaneDisagrees = Warning("SRV-051", "Lane and coordinates do not agree; the lane was used.", "Correct one of the two.");
    internal static readonly SurveyFault OffsetOutsideLane = Error("SRV-052", "An offset lies outside the lane; it was not used.", "Measure offsets from the lane's left edge.");
    internal static readonly SurveyFault OffsetsReversed = Warning("SRV-053", "The right side lies left of the left side; the two were swapped.", "Measure both from the lane's left edge.");
    internal static readonly SurveyFault LaneAssumed = Note("SRV-054", "The file names no lane; the road's only lane was used.", "Nothing, if the survey is of that lane.");
    internal static readonly SurveyFault ExtentDisagrees = Warning("SRV-055", "The length along the road does not agree with from and to; from and to were used.", "Correct one of them.");
    internal static readonly SurveyFault Negative = Error("SRV-060", "A size is negative; it was not used.", "Correct the value.");
    internal static readonly SurveyFault DepthOverThickness = Error("SRV-061", "The depth is greater than the slab is thick; it was not used.", "Check value and unit.");
    internal static readonly SurveyFault WidthUnlikely = Warning("SRV-062", "The crack is wider than cracks are.", "Check value and unit.");
    internal static readonly SurveyFault SizeImpossible = Error("SRV-063", "The size is not possible on this lane; it was not used.", "Check value and unit.");
    internal static readonly SurveyFault FaultingUnlikely = Warning("SRV-064", "The faulting is greater than faulting is.", "Check value and unit.");
    internal static readonly SurveyFault CountUnusable = Error("SRV-065", "The count is not a whole number of 1 or more; 1 was used.", "Write how many there are, or leave it empty.");
    internal static readonly SurveyFault ShareUnusable = Error("SRV-066", "A share of the thickness is not between 0 and 100 %; it was not used.", "Check the value.");
    internal static readonly SurveyFault ThicknessUnlikely = Warning("SRV-067", "The core is much thicker or thinner than the slab should be.", "Check value and unit, or the project's thickness.");
    internal static readonly SurveyFault Repeated = Warning("SRV-070", "The row says the same as another; it was counted once.", "Remove it, or give both their own id if there really are two.");
    internal static readonly SurveyFault NearlyRepeated = Warning("SRV-071", "The row is nearly the same as another; both were used.", "Remove one if they are the same distress.");
    internal static readonly SurveyFault IdTwice = Warning("SRV-072", "An id occurs twice; the later row was given its own.", "Use every id once.");

    /// <summary>Every fault in order of code.</summary>
    public static ImmutableArray<SurveyFault> All { get; } = Kinds.DrainToImmutable();

    private static SurveyFault Error(string code, string meaning, string mend) => Add(code, FindingLevel.Error, meaning, mend);

    private static SurveyFault Warning(string code, string meaning, string mend) => Add(code, FindingLevel.Warning, meaning, mend);

    private static SurveyFault Note(string code, string meaning, string mend) => Add(code, FindingLevel.Note, meaning, mend);

    private static SurveyFault Add(string code, FindingLevel level, string meaning, string mend)
    {
        Kinds.Add(new SurveyFault(code, level, meaning, mend));
        return Kinds[^1];
    }
}
