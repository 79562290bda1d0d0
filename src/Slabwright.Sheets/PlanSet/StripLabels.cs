using Slabwright.Core.Boundaries;
using Slabwright.Core.Job;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>A label of a repair beside the lanes.</summary>
/// <param name="Repair">The repair.</param>
/// <param name="Lines">Its lines; the first is bold.</param>
/// <param name="Target">Where the leader ends along the row, pt.</param>
/// <param name="Width">Width, pt.</param>
internal sealed record StripLabel(Repair Repair, string[] Lines, float Target, float Width)
{
    public const float Size = 6.3f;
    public const float Leading = 7.4f;

    /// <summary>Left edge, pt; set by the placing.</summary>
    public float X { get; set; }

    /// <summary>Tier, 0 next to the lanes.</summary>
    public int Tier { get; set; }

    /// <summary>Where the leader leaves the label and passes the tiers nearer to the lanes, pt.</summary>
    public float Channel { get; set; }

    public float Height => Lines.Length * Leading + 2;

    /// <summary>The label of a repair: number and kind, stations, and where its first cut is found.</summary>
    public static StripLabel Of(Project project, Repair repair, PaperFonts fonts, JobUnits units, float target)
    {
        var lane = project.Road.LaneByNumber(repair.Lane);
        string[] lines =
        [
            $"{repair.Id}  {SheetWords.CodeOf(repair.Kind)} {units.LengthNumber(repair.Length)} × {units.LengthText(repair.Width)}",
            $"{project.Road.Stationing.Format(repair.From)} to {project.Road.Stationing.Format(repair.To)}",
            "start " + CutPlace.OfStart(project.Road, repair).Describe(lane, units),
        ];
        return new StripLabel(repair, lines, target, WidthOf(lines, fonts));
    }

    /// <summary>The same label with the number only, for crowded rows; the schedule has the rest.</summary>
    public StripLabel Short(PaperFonts fonts) => new(Repair, [Repair.Id], Target, WidthOf([Repair.Id], fonts));

    private static float WidthOf(string[] lines, PaperFonts fonts) =>
        lines.Select((l, i) => fonts.Measure(l, i == 0 ? Face.Bold : Face.Text, Size)).Max();
}

/// <summary>
/// Places labels in tiers beside the lanes. Labels keep the order of their repairs and leaders pass between the labels of nearer tiers, so
/// that neither labels nor leaders lie on one another.
/// </summary>
internal static class StripLabelPlacing
{
    private const int Tiers = 4;
    private const float Gap = 7;

    /// <summary>Places all labels between two edges; returns the number of tiers used.</summary>
    public static int Place(List<StripLabel> labels, float left, float right, PaperFonts fonts)
    {
        labels.Sort((a, b) => a.Target.CompareTo(b.Target));
        var ends = new float[Tiers];
        Array.Fill(ends, left - Gap);
        var used = 0;
        for (var i = 0; i < labels.Count; i++)
        {
            if (!TryPlace(labels[i], ends, left, right))
            {
                labels[i] = labels[i].Short(fonts);
                if (!TryPlace(labels[i], ends, left, right)) Force(labels[i], ends, right);
            }

            Take(labels[i], ends);
            used = Math.Max(used, labels[i].Tier + 1);
        }

        return used;
    }

    private static bool TryPlace(StripLabel label, float[] ends, float left, float right)
    {
        var best = float.PositiveInfinity;
        for (var tier = 0; tier < Tiers; tier++)
        {
            var nearest = tier == 0 ? float.NegativeInfinity : ends.Take(tier).Max();
            var channel = Math.Max(label.Target, nearest + Gap / 2);
            var x = Math.Max(Math.Max(left, label.Target - label.Width / 2), ends[tier] + Gap);
            if (x + label.Width > right) x = Math.Max(right - label.Width, ends[tier] + Gap);
            if (tier > 0 && channel > x + label.Width - 2) x = channel - label.Width + 2;
            if (x + label.Width > right + 0.01f) continue;
            if (tier == 0) channel = Math.Clamp(label.Target, x + 1, x + label.Width - 1);
            else channel = Math.Max(channel, x + 1);
            var cost = Math.Abs(x + label.Width / 2 - label.Target) + Math.Abs(channel - label.Target) + 22 * tier;
            if (cost >= best) continue;
            (best, label.X, label.Tier, label.Channel) = (cost, x, tier, channel);
        }

        return float.IsFinite(best);
    }

    private static void Force(StripLabel label, float[] ends, float right)
    {
        label.Tier = Tiers - 1;
        label.X = Math.Max(ends[Tiers - 1] + Gap, right - label.Width);
        label.Channel = label.X + label.Width / 2;
    }

    private static void Take(StripLabel label, float[] ends)
    {
        ends[label.Tier] = label.X + label.Width;
        for (var tier = 0; tier < label.Tier; tier++) ends[tier] = Math.Max(ends[tier], label.Channel - Gap / 2);
    }
}
