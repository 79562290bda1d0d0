using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.SystemTests.Sheets;

/// <summary>Jobs at the edge of what the sheets must bear, by name so that test reports say which one failed.</summary>
internal static class OddJobs
{
    private static readonly Dictionary<string, HandMadeJob> ByName = new()
    {
        ["usual"] = new HandMadeJob(),
        ["one repair"] = new HandMadeJob { Repairs = 1 },
        ["no repairs"] = new HandMadeJob { Repairs = 0 },
        ["no alignment"] = new HandMadeJob { HasAlignment = false, Repairs = 8 },
        ["SI, four lanes, skewed joints"] = new HandMadeJob { Units = UnitSystem.Si, Style = StationStyle.Metres, LaneCount = 4, Repairs = 40, Skew = 0.6 },
        ["one lane, mileposts"] = new HandMadeJob { LaneCount = 1, Style = StationStyle.Mileposts, Repairs = 10 },
        ["falling stations with an equation"] = new HandMadeJob { Direction = -1, Equations = [new StationEquation(700, 9000)], Repairs = 12 },
        ["an equation between two round stations"] = new HandMadeJob { Equations = [new StationEquation(1000 * 0.3048, 11_025.5 * 0.3048)], Length = 500, Repairs = 8 },
        ["short and crowded"] = new HandMadeJob { Length = 380, Repairs = 36 },
        ["very long names"] = new HandMadeJob
        {
            Name = string.Join(' ', Enumerable.Repeat("Reconstruction of the northbound carriageway between the junctions", 5)) + " Donaudampfschifffahrtsgesellschaftskapitänsmützenfabrikzufahrtsstraßenunterführung",
            Repairs = 6,
        },
    };

    public static TheoryData<string> Names => [.. ByName.Keys];

    public static HandMadeJob Of(string name) => ByName[name];
}
