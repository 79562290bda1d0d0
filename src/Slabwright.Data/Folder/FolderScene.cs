using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Folder;

/// <summary>What every file of a folder needs to know of the road: its length, its stations and the units people write.</summary>
/// <param name="Length">Length of the road, m.</param>
/// <param name="Stationing">How stations are written.</param>
/// <param name="Units">Units of the project.</param>
public sealed record FolderScene(double Length, Stationing Stationing, UnitSystem Units)
{
    /// <summary>Places up to this far past an end are on it, m: half the last digit of a written station.</summary>
    public double EndTolerance => Stationing.HalfLastDigit;

    /// <summary>The road's limits as printed in findings.</summary>
    public string LimitText => $"{Stationing.Format(0)} to {Stationing.Format(Length)}";

    /// <summary>True for a place on the road, the rounding of a written station allowed for.</summary>
    public bool OnRoad(double at) => at >= -EndTolerance && at <= Length + EndTolerance;

    /// <summary>The one place of a written station, or null with a finding.</summary>
    public double? PlaceOf(string station, FindingPlace place, ICollection<Finding> findings)
    {
        if (!Stationing.TryParse(station, out var all))
        {
            findings.Add(new("ROAD-010", FindingLevel.Error, "The station cannot be read.", place, station,
                $"Write it as {Stationing.Format(0)}, as project.json says."));
            return null;
        }

        var places = all.Where(OnRoad).ToImmutableArray();
        if (places.Length == 1) return places[0];
        if (places.Length == 0 && all.Length > 0)
        {
            findings.Add(new("ROAD-013", FindingLevel.Error, "The place is not on the road.", place, station,
                "Check the station; the road's length is in project.json.", LimitText));
        }
        else if (places.Length == 0)
        {
            findings.Add(new("ROAD-011", FindingLevel.Error, "A station equation skips this station, so no place on the road has it.", place, station,
                "Check the station against the equations in project.json."));
        }
        else
        {
            findings.Add(new("ROAD-012", FindingLevel.Error, "Two places on the road have this station, before and after a station equation.", place,
                station, $"Give the length from the road's start in {place.Field?.Replace("station", "ft", StringComparison.Ordinal)} instead."));
        }

        return null;
    }
}
