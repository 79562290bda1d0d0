using Slabwright.Core.Evidence;

namespace Slabwright.Core.Survey;

/// <summary>Reads a row's sizes and holds them against the lane and the slab. All limits are common practice.</summary>
internal readonly struct SizeReader(RowReader row, DistressName type, RowPlace place)
{
    // TM 5-623 rates cracks in reinforced slabs up to "over 3 in"; a wider one is more likely a unit mistaken.
    private const double WidestCrack = 0.0762;
    private const double MostFaulting = 0.05;
    private const double ImpossibleFaulting = 0.3;
    private const double RoundingShare = 1.02;
    private const string Practice = "common practice";

    /// <summary>Depth, m from the surface.</summary>
    public double? Depth() => Depth(row, place);

    /// <summary>Depth of damage at a place, m from the surface; a share counts of the concrete's thickness.</summary>
    public static double? Depth(RowReader row, RowPlace place)
    {
        if (row.Size(SurveyField.Depth, out var isShare) is not { } depth) return null;
        var section = place.Lane.SectionAt((place.From + place.To) / 2);
        if (isShare)
        {
            if (depth <= 1) return depth * section.Thickness;
            row.Report(SurveyFaults.ShareUnusable, SurveyField.Depth, limit: "0 to 100 %", lane: place.Lane.Number, at: place.From);
            return null;
        }

        var most = section.Thickness + section.OverlayThickness;
        if (depth <= most * RoundingShare) return depth;
        row.Report(SurveyFaults.DepthOverThickness, SurveyField.Depth,
            $"The depth of {Words.Number(depth * 1000)} mm is more than the pavement's {Words.Number(most * 1000)} mm.",
            limit: $"{Words.Number(most * 1000)} mm", source: "project", lane: place.Lane.Number, at: place.From);
        return null;
    }

    /// <summary>Crack or spall width, m.</summary>
    public double? Width()
    {
        if (Possible(SurveyField.Width, row.Size(SurveyField.Width), place.Lane.Width) is not { } width) return null;
        var isCrack = type.Type is DistressType.LongitudinalCracking or DistressType.TransverseCracking or DistressType.CornerBreak
            or DistressType.ReflectionCracking;
        if (isCrack && width > WidestCrack)
        {
            row.Report(SurveyFaults.WidthUnlikely, SurveyField.Width, $"The crack is {Words.Number(width * 1000)} mm wide.",
                limit: $"{Words.Number(WidestCrack * 1000)} mm", source: Practice, lane: place.Lane.Number, at: place.From);
        }

        return width;
    }

    /// <summary>Length of crack or spall, m.</summary>
    public double? Length()
    {
        var across = type.Spread is DistressSpread.Across or DistressSpread.AtJoint;
        var most = across ? place.Lane.Width * 2 * Math.Max(1, SilentCount()) : place.Lane.To - place.Lane.From;
        return Possible(SurveyField.Length, row.Size(SurveyField.Length), most);
    }

    /// <summary>Area, m².</summary>
    public double? Area()
    {
        var along = Math.Max(place.To - place.From, place.Lane.SlabByNumber(place.Slab).Length) * Math.Max(1, SilentCount());
        return Possible(SurveyField.Area, row.Size(SurveyField.Area), along * place.Lane.Width * RoundingShare);
    }

    /// <summary>Faulting, m; positive when the approach side is higher.</summary>
    public double? Faulting()
    {
        if (row.Size(SurveyField.Faulting, signed: true) is not { } faulting) return null;
        if (Possible(SurveyField.Faulting, Math.Abs(faulting), ImpossibleFaulting) is null) return null;
        if (Math.Abs(faulting) > MostFaulting)
        {
            row.Report(SurveyFaults.FaultingUnlikely, SurveyField.Faulting, $"The faulting is {Words.Number(faulting * 1000)} mm.",
                limit: $"{Words.Number(MostFaulting * 1000)} mm", source: Practice, lane: place.Lane.Number, at: place.From);
        }

        return faulting;
    }

    /// <summary>Widening below the surface, m to each side.</summary>
    public double? WideningBelow() =>
        Possible(SurveyField.WideningBelow, row.Size(SurveyField.WideningBelow), place.Lane.SlabByNumber(place.Slab).Length);

    /// <summary>How many like things the row records.</summary>
    public int Count()
    {
        if (row.TryWhole(SurveyField.Count, out var count) && count is null or >= 1) return count ?? 1;
        row.Report(SurveyFaults.CountUnusable, SurveyField.Count, lane: place.Lane.Number, at: place.From);
        return 1;
    }

    private int SilentCount() => row.TryWhole(SurveyField.Count, out var count) ? count ?? 1 : 1;

    private double? Possible(SurveyField field, double? size, double most)
    {
        if (size is not { } value || value <= most) return size;
        var unit = field == SurveyField.Area ? "m2" : "m";
        row.Report(SurveyFaults.SizeImpossible, field,
            $"{row.Column(field)!.Heading} is {Words.Number(value)} {unit}, more than the lane allows there.",
            limit: $"{Words.Number(most)} {unit}", source: Practice, lane: place.Lane.Number, at: place.From);
        return null;
    }
}
