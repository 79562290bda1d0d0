using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Joints.Sealing;

/// <summary>Steps and checks for the crew that seals.</summary>
internal static class SealNotes
{
    private static readonly UnitPair Small = new(Units.Inch, Units.Millimetre);
    private static readonly UnitPair Warmth = new(Units.Fahrenheit, Units.Celsius);
    private static readonly SourceRef Manual = new("TM-5-822-11", "ch. 5", SourceStatus.Verified);

    public static ImmutableArray<CrewNote> For(SealingSettings settings, UnitSystem units)
    {
        var family = settings.Sealant;
        var least = MeasureWords.Of(family.LeastTemperature.Value, Warmth, units, 0);
        var tolerance = MeasureWords.Of(settings.SawTolerance.Value, Small, units, 3);
        ImmutableArray<CrewNote> shared =
        [
            new("Temperature", family.FieldMoulded ? $"Air and slab at least {least} and warming." : $"Air and slab above {least}.", family.LeastTemperature.Source),
            new("Slab first", "Measure the slab's temperature, not the air's, and read the table.", SourceRef.CommonPractice),
            new("Clean faces", "Saw, wash, dry and blow out; faces vertical, clean and dry. Spalls under 1/4 in (6 mm) may stay if a preformed seal sits below them.",
                new SourceRef("NB-31", "surface", SourceStatus.Verified)),
            new("Same day", "Prepare no more than can be sealed the same day.", Manual),
        ];
        return family.FieldMoulded
            ? [.. shared,
                new("Backer rod", "Soft, non-absorbing and tight in the joint; it must not bond to the sealant. Cut it flat at crossings.", new SourceRef("TM-5-822-11", "sec. 2-5", SourceStatus.Verified)),
                new("Fill", $"From the bottom up, top {MeasureWords.Of(family.Recess.Value, Small, units, 3)} below the surface.", Manual),
                new("Two faces", "Sealant that also sticks to the bottom of the reservoir tears early.", new SourceRef("TM-5-822-11", "sec. 2-7", SourceStatus.Verified)),
                Sides()]
            : [.. shared,
                new("Saw width", $"By the table for the day's slab temperature, within {tolerance}.", settings.SawTolerance.Source),
                new("Stretch", "Mark two points on the seal and compare their distance before and after it goes in.", new SourceRef("NB-32", "check for stretch", SourceStatus.Verified)),
                new("Splices", "None over one or two lanes.", new SourceRef("NB-32", "splices", SourceStatus.Verified)),
                Sides()];
    }

    private static CrewNote Sides() => new("Long sides", "Saw and seal the long sides that meet concrete to the same reservoir; match the surrounding joints.",
        new SourceRef("UFC-3-270-04", "sec. 5.13", SourceStatus.Verified));
}
