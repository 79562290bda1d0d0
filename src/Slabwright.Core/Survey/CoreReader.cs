using Slabwright.Core.Evidence;

namespace Slabwright.Core.Survey;

/// <summary>Makes a core sample of a row.</summary>
internal sealed class CoreReader(RowReader row, PlaceReader places)
{
    /// <summary>A core this far off the section's thickness is worth a second look, as a share of it. Common practice.</summary>
    private const double ThicknessDoubt = 0.3;

    /// <summary>The core of the current row; null when the row cannot be used, with the findings told. Its identifier may be empty.</summary>
    public CoreSample? Read()
    {
        if (places.Read(DistressSpread.Across) is not { } place) return null;
        var at = (place.From + place.To) / 2;
        var thickness = row.Size(SurveyField.Thickness);
        var built = place.Lane.SectionAt(at).Thickness;
        if (thickness is { } t && Math.Abs(t - built) > ThicknessDoubt * built)
        {
            row.Report(SurveyFaults.ThicknessUnlikely, SurveyField.Thickness,
                $"The core is {Words.Number(t * 1000)} mm, the project's slab {Words.Number(built * 1000)} mm thick.",
                limit: $"within {Words.Number(ThicknessDoubt * 100)} %", source: "common practice", lane: place.Lane.Number, at: at);
        }

        var depth = CoreDepth(place, thickness);
        return new CoreSample(row.Text(SurveyField.Id), place.Lane.Number, at, place.Left, thickness, depth, Widening(place), row.Note());
    }

    /// <summary>Depth of damage; held against the core where it was measured, else against the project's slab.</summary>
    private double? CoreDepth(RowPlace place, double? thickness)
    {
        if (thickness is not { } core) return SizeReader.Depth(row, place);
        if (row.Size(SurveyField.Depth, out var isShare) is not { } depth) return null;
        if (isShare && depth <= 1) return depth * core;
        var overlay = place.Lane.SectionAt(place.From).OverlayThickness;
        if (!isShare && depth <= core + overlay) return depth;
        row.Report(isShare ? SurveyFaults.ShareUnusable : SurveyFaults.DepthOverThickness, SurveyField.Depth,
            limit: isShare ? "0 to 100 %" : $"{Words.Number((core + overlay) * 1000)} mm", source: "this core", lane: place.Lane.Number, at: place.From);
        return null;
    }

    private double? Widening(RowPlace place)
    {
        var most = place.Lane.SlabByNumber(place.Slab).Length;
        if (row.Size(SurveyField.WideningBelow) is not { } widening || widening <= most) return row.Size(SurveyField.WideningBelow);
        row.Report(SurveyFaults.SizeImpossible, SurveyField.WideningBelow, limit: $"{row.Length(most)}", lane: place.Lane.Number, at: place.From);
        return null;
    }
}
