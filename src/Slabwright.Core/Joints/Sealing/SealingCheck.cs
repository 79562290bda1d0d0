using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Joints.Sealing;

/// <summary>Holds the sealing settings against what makes sense.</summary>
internal static class SealingCheck
{
    private static readonly UnitPair Warmth = new(Units.Fahrenheit, Units.Celsius);

    /// <summary>What is wrong or missing.</summary>
    public static IEnumerable<Finding> Of(SealingSettings settings)
    {
        if (settings.Coldest is { } cold && settings.Hottest is { } hot && cold >= hot)
        {
            yield return Bad("JNT-040", "The coldest slab temperature is not below the hottest; the assumed range was taken.", "coldest",
                Warmth.Si.Format(cold, 1), "Give the coldest and the hottest slab temperature of the year.");
        }
        else if (settings.Coldest is null || settings.Hottest is null)
        {
            yield return new("JNT-041", FindingLevel.Note,
                $"No slab temperatures are given for sealing; {Warmth.Si.Format(settings.AssumedColdest.Value, 0)} to {Warmth.Si.Format(settings.AssumedHottest.Value, 0)} was taken.",
                At("coldest"), null, "Give the coldest and the hottest slab temperature of the year in project.json.", null, settings.AssumedColdest.Source.ToString());
        }

        var (coldest, hottest) = settings.Range;
        var (from, to) = (settings.SealFrom.Value, settings.SealTo.Value);
        if (from > to || from < coldest || to > hottest)
        {
            yield return Bad("JNT-042", "The range joints are sealed in does not lie within the slab's temperatures.", "seal_from",
                $"{Warmth.Si.Format(from, 1)} to {Warmth.Si.Format(to, 1)}", "Give a range from cooler to warmer, within the coldest and the hottest.");
        }

        var sizes = settings.SealSizes.Value;
        if (!settings.Sealant.FieldMoulded && (sizes.IsEmpty || !sizes.SequenceEqual(sizes.Order()) || sizes[0] <= 0))
        {
            yield return Bad("JNT-047", "The sizes of preformed seals must rise from above 0.", "seal_sizes", null, "List the uncompressed widths made, smallest first.");
        }

        if (!settings.Sealant.FieldMoulded && settings.Sealant.LeastCompression.Value >= settings.Sealant.MostCompression.Value)
        {
            yield return Bad("JNT-048", "The preformed seal has no working range.", "most_compression",
                MeasureWords.Percent(settings.Sealant.MostCompression.Value), "Give a greatest compression above the least.");
        }
    }

    private static Finding Bad(string code, string sentence, string field, string? value, string mend) =>
        new(code, FindingLevel.Error, sentence, At(field), value, mend);

    private static FindingPlace At(string field) => new("project.json", Field: $"sealing.{field}");
}
