using System.Collections.Immutable;

namespace Slabwright.Sheets.Figures;

/// <summary>A point of a figure: x to the right, y down, in points on paper and pixels on a screen.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Down.</param>
public readonly record struct FigurePoint(double X, double Y)
{
    /// <summary>The point moved.</summary>
    public FigurePoint Moved(double dx, double dy) => new(X + dx, Y + dy);
}

/// <summary>Where a text stands relative to its point.</summary>
public enum FigureAnchor
{
    /// <summary>Begins at the point.</summary>
    Start,

    /// <summary>Has its middle at the point.</summary>
    Middle,

    /// <summary>Ends at the point.</summary>
    End,
}

/// <summary>A thing to draw. Shapes come in drawing order: later ones lie on top.</summary>
/// <param name="Style">What it stands for; fixes its ink (see <see cref="FigureInk"/>).</param>
/// <param name="Ref">What it belongs to, e.g. <c>bar-3</c>; empty where it needs no name.</param>
public abstract record FigureShape(FigureStyle Style, string Ref)
{
    /// <summary>The shape moved.</summary>
    internal abstract FigureShape Moved(double dx, double dy);
}

/// <summary>A filled area; inner rings are holes (even-odd).</summary>
/// <param name="Rings">Corners of each ring in order; the last joins the first.</param>
/// <param name="Style">What it stands for.</param>
/// <param name="Ref">What it belongs to.</param>
public sealed record FigureArea(ImmutableArray<ImmutableArray<FigurePoint>> Rings, FigureStyle Style, string Ref = "") : FigureShape(Style, Ref)
{
    internal override FigureShape Moved(double dx, double dy) => this with { Rings = [.. Rings.Select(r => FigureMoves.Of(r, dx, dy))] };
}

/// <summary>A line through its points.</summary>
/// <param name="Points">Points in order.</param>
/// <param name="Style">What it stands for.</param>
/// <param name="Ref">What it belongs to.</param>
public sealed record FigureLine(ImmutableArray<FigurePoint> Points, FigureStyle Style, string Ref = "") : FigureShape(Style, Ref)
{
    internal override FigureShape Moved(double dx, double dy) => this with { Points = FigureMoves.Of(Points, dx, dy) };
}

/// <summary>A circle.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Radius">Its radius.</param>
/// <param name="Style">What it stands for.</param>
/// <param name="Ref">What it belongs to.</param>
public sealed record FigureCircle(FigurePoint Centre, double Radius, FigureStyle Style, string Ref = "") : FigureShape(Style, Ref)
{
    internal override FigureShape Moved(double dx, double dy) => this with { Centre = Centre.Moved(dx, dy) };
}

/// <summary>One line of text.</summary>
/// <param name="Place">Point on the baseline; for turned texts the middle of the text.</param>
/// <param name="Text">The text.</param>
/// <param name="Size">Type size.</param>
/// <param name="Style">What it stands for.</param>
/// <param name="Ref">What it belongs to.</param>
public sealed record FigureText(FigurePoint Place, string Text, double Size, FigureStyle Style = FigureStyle.Note, string Ref = "") : FigureShape(Style, Ref)
{
    /// <summary>Where it stands relative to its point.</summary>
    public FigureAnchor Anchor { get; init; } = FigureAnchor.Start;

    /// <summary>Heavier weight.</summary>
    public bool Bold { get; init; }

    /// <summary>Turned to read from below upwards, about its middle.</summary>
    public bool Turned { get; init; }

    internal override FigureShape Moved(double dx, double dy) => this with { Place = Place.Moved(dx, dy) };
}

/// <summary>A drawing or chart without paper or screen: the same shapes go to the plan set, the desk and the drawing file.</summary>
/// <param name="Title">What it shows, a few words.</param>
/// <param name="Description">The same in a sentence or two, for readers who cannot see it.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="Origin">Where the figure's own zero lies: lane's left edge, joint face or axis.</param>
/// <param name="PerMetre">Points a metre where the figure is to scale; 0 for charts.</param>
/// <param name="Shapes">Shapes in drawing order.</param>
public sealed record Figure(
    string Title, string Description, double Width, double Height, FigurePoint Origin, double PerMetre, ImmutableArray<FigureShape> Shapes)
{
    /// <summary>Several figures one below the other, with a gap between.</summary>
    public static Figure Stack(string title, string description, double gap, params ReadOnlySpan<Figure> figures)
    {
        var shapes = ImmutableArray.CreateBuilder<FigureShape>();
        var (width, y) = (0.0, 0.0);
        foreach (var figure in figures)
        {
            foreach (var shape in figure.Shapes) shapes.Add(shape.Moved(0, y));
            width = Math.Max(width, figure.Width);
            y += figure.Height + gap;
        }

        return new Figure(title, description, width, Math.Max(0, y - gap), default, 0, shapes.ToImmutable());
    }
}

internal static class FigureMoves
{
    public static ImmutableArray<FigurePoint> Of(ImmutableArray<FigurePoint> points, double dx, double dy) => [.. points.Select(p => p.Moved(dx, dy))];
}
