using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>A piece on its slings from the side, to scale: hook height, leg and its angle from the horizontal.</summary>
public static class SlingFigure
{
    /// <summary>Draws the slings of a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="thickness">Slab thickness, m.</param>
    /// <param name="forces">Forces on it.</param>
    /// <param name="units">Units of the dimensions.</param>
    /// <param name="scale">Points a metre.</param>
    /// <param name="ruler">Measures texts.</param>
    public static Figure Draw(LiftPiece piece, double thickness, LiftForces forces, JobUnits units, double scale, TextRuler ruler)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(forces);
        ArgumentNullException.ThrowIfNull(units);
        var figure = new FigureBuilder(ruler);
        var width = (piece.RightOffset - piece.LeftOffset) * scale;
        var (hookX, hookY) = (width / 2, -forces.HookHeight * scale);
        figure.Box(FigureStyle.OldConcrete, 0, 0, width, thickness * scale, "piece");
        figure.Line(FigureStyle.Surface, 0, 0, width, 0);
        double[] pins = [.. piece.Pins.Select(p => (p.Offset - piece.LeftOffset) * scale).Distinct().Order()];
        foreach (var pin in pins)
        {
            figure.Line(FigureStyle.Rigging, pin, 0, hookX, hookY);
            figure.Line(FigureStyle.Rigging, pin, -2, pin, thickness * scale * 0.75);
        }

        figure.Line(FigureStyle.Rigging, hookX, hookY, hookX, hookY - 16);
        figure.Circle(FigureStyle.Balloon, hookX, hookY, 3.2, "hook");
        figure.Text($"hook load {units.ForceText(forces.HookLoad)}", hookX + 8, hookY - 6, FigureDimensions.TextSize, FigureAnchor.Start, true);
        FigureDimensions.Upright(figure, -10, hookY, 0, "hook " + units.Running(forces.HookHeight), true);
        FigureDimensions.Level(figure, 0, width, thickness * scale + 14, units.Running(width / scale));
        if (pins.Length > 0) Angle(figure, pins[^1], hookX, hookY, forces, units);
        return figure.Build("Slings of a piece", $"Hook {units.Running(forces.HookHeight)} above the slab, legs {units.Running(forces.LegLength)} long, {units.ForceText(forces.LegPull)} in each leg that carries.", scale);
    }

    private static void Angle(FigureBuilder figure, double pin, double hookX, double hookY, LiftForces forces, JobUnits units)
    {
        var degrees = Units.Degree.FromBase(Math.Asin(Math.Clamp(forces.HookHeight / forces.LegLength, -1, 1)));
        figure.Text($"leg {units.Running(forces.LegLength)}, {JobUnits.Number(degrees)}° from level", (pin + hookX) / 2 + 9, hookY * 0.5 - 8, FigureDimensions.TextSize);
        figure.Text($"{units.ForceText(forces.LegPull)} in the leg", (pin + hookX) / 2 + 9, hookY * 0.5 + 1, FigureDimensions.TextSize);
    }
}
