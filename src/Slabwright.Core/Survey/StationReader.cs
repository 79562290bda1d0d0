using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Survey;

/// <summary>
/// Reads places along the road. A heading that says station (or milepost) holds stations, in the project's style or as a number in the
/// heading's unit; another heading or cell with a unit holds the distance from the road's start; without a unit it is a station.
/// </summary>
internal static class StationReader
{
    /// <summary>The places a cell can mean, metres along the road; empty where it cannot be read or the road has no such station.</summary>
    public static ImmutableArray<double> Places(RowReader row, SurveyField field, Stationing stationing)
    {
        if (!row.Has(field) || row.Column(field) is not { } column) return [];
        var cell = row.Cell(field);
        var (text, unit) = (cell.Text.Trim(), column.Unit);
        double? number = cell.Number;
        if (number is null && !LooksLikeStation(text) && MeasureText.Read(text, row.Mark, out var read, out var own) == MeasureEnding.Read
            && own?.Dimension is null or Dimension.Length)
        {
            (number, unit) = (read, own ?? unit);
        }

        if (number is { } value && unit is not null && !column.IsStation) return [unit.ToBase(value)];
        if (number is { } station && unit is not null) return Found(row, field, stationing.PlacesOf(unit.ToBase(station)));
        if (number is { } plain) text = plain.ToString("0.######", CultureInfo.InvariantCulture);
        if (stationing.TryParse(text, out var places)) return Found(row, field, places);
        row.Report(SurveyFaults.StationUnreadable, field, $"\"{text}\" is no station of this road.",
            $"Write stations like {stationing.Format(0)}, or give the heading a unit for the distance from the road's start.");
        return [];
    }

    private static ImmutableArray<double> Found(RowReader row, SurveyField field, ImmutableArray<double> places)
    {
        if (places.IsEmpty) row.Report(SurveyFaults.StationUnreadable, field, "The road has no such station: an equation skips it.");
        return places;
    }

    private static bool LooksLikeStation(string text) => text.IndexOf('+', StringComparison.Ordinal) > 0 || (text.Length > 0 && char.IsLetter(text[0]));
}
