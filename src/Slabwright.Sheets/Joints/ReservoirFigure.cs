using System.Collections.Immutable;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>
/// The reservoir of a joint in section, to scale: saw cut, bead over its rod or preformed seal, recess. Old slab to the left; the middle of the
/// joint at the surface is the figure's zero.
/// </summary>
public static class ReservoirFigure
{
    /// <summary>Slab shown on each side, m.</summary>
    private const double Beside = 0.028;

    /// <summary>Slab shown below the widening cut, m.</summary>
    private const double Below = 0.014;

    /// <summary>Draws a reservoir.</summary>
    /// <param name="alternative">Its sizes.</param>
    /// <param name="recess">Top of the seal below the surface, m.</param>
    /// <param name="units">Units of the dimensions.</param>
    /// <param name="scale">Points a metre.</param>
    /// <param name="ruler">Measures texts.</param>
    public static Figure Draw(ReservoirAlternative alternative, double recess, JobUnits units, double scale, TextRuler ruler)
    {
        ArgumentNullException.ThrowIfNull(alternative);
        ArgumentNullException.ThrowIfNull(units);
        var figure = new FigureBuilder(ruler);
        var half = alternative.Width * scale / 2;
        var (side, floor, bottom) = (half + Beside * scale, alternative.SawDepth * scale, (alternative.SawDepth + Below) * scale);
        figure.Box(FigureStyle.OldConcrete, -side, 0, 0, bottom);
        figure.Box(FigureStyle.NewConcrete, 0, 0, side, bottom);
        figure.Line(FigureStyle.BoundaryCut, 0, floor, 0, bottom);
        figure.Box(FigureStyle.Reservoir, -half, 0, half, floor, "reservoir");
        var (top, base_) = (recess * scale, (recess + alternative.SealDepth) * scale);
        if (alternative.SealSize is null) Bead(figure, alternative, half, top, base_, scale);
        else figure.Box(FigureStyle.Backer, -half, top, half, base_, "seal");
        figure.Line(FigureStyle.Surface, -side, 0, -half, 0);
        figure.Line(FigureStyle.Surface, half, 0, side, 0);
        figure.Text("old slab", -side + 5, bottom - 6, FigureDimensions.TextSize, FigureAnchor.Start, true);
        figure.Text("new concrete", side - 5, bottom - 6, FigureDimensions.TextSize, FigureAnchor.End, true);
        Dimensions(figure, alternative, recess, units, (half, side, top, base_, floor, base_ + Math.Max((alternative.Rod ?? 0) * scale / 2, FigureDimensions.TextSize)));
        var kind = alternative.SealSize is { } size ? $"preformed seal {units.Detail(size)} wide before it is pressed in" : $"bead {units.Detail(alternative.SealDepth)} deep over a rod";
        return figure.Build("Reservoir of the joint in section",
            $"Saw cut {units.Detail(alternative.Width)} wide and {units.Detail(alternative.SawDepth)} deep, {kind}, its top {units.Detail(recess)} below the surface.", scale);
    }

    /// <summary>Sealant with its hollow underside, and the rod that gives it.</summary>
    private static void Bead(FigureBuilder figure, ReservoirAlternative alternative, double half, double top, double depth, double scale)
    {
        var rod = (alternative.Rod ?? 0) * scale / 2;
        var centre = depth + rod;
        var underside = Enumerable.Range(0, 13).Select(i => Math.PI * i / 12).Select(a => new FigurePoint(half * Math.Cos(a), centre - rod * Math.Sin(a)));
        figure.Area(FigureStyle.Sealant, "sealant", [new FigurePoint(-half, top), new FigurePoint(half, top), .. underside]);
        if (rod <= 0) return;
        ImmutableArray<FigurePoint> round = [.. Enumerable.Range(0, 32).Select(i => Math.PI * 2 * i / 32).Select(a => new FigurePoint(half * Math.Cos(a), centre + rod * Math.Sin(a)))];
        figure.Area(FigureStyle.Backer, "rod", round);
    }

    private static void Dimensions(FigureBuilder figure, ReservoirAlternative a, double recess, JobUnits units, (double Half, double Side, double Top, double Base, double Floor, double Rod) at)
    {
        foreach (var x in new[] { -at.Half, at.Half }) figure.Line(FigureStyle.Extension, x, -15, x, 0);
        FigureDimensions.Level(figure, -at.Half, at.Half, -12, "saw width " + units.Detail(a.Width));
        var name = a.SealSize is null ? "bead " : "seal ";
        var right = at.Side + 10;
        FigureDimensions.Upright(figure, right, 0, at.Top, "recess " + units.Detail(recess));
        FigureDimensions.Upright(figure, right, at.Top, at.Base, name + units.Detail(a.SealDepth));
        FigureDimensions.Upright(figure, -at.Side - 10, 0, at.Floor, "saw depth " + units.Detail(a.SawDepth), true);
        if (a.Rod is not { } rod) return;
        figure.Line(FigureStyle.Extension, 0, at.Rod, right, at.Rod);
        figure.Text("rod " + units.Detail(rod), right + 4, at.Rod + 2.4, FigureDimensions.TextSize);
    }
}
