using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Data.Import;

namespace Slabwright.Data.Folder;

/// <summary>Reads and writes a centre line piece by piece, without loss. Always in metres, whatever the project's units.</summary>
internal static class PieceTable
{
    private const string Line = "line", Arc = "arc", Spiral = "spiral", Chords = "chords", Chord = "chord";

    private static readonly FolderScene Nowhere = new(0, new Stationing { Style = StationStyle.Metres }, UnitSystem.Si);

    /// <summary>The centre line, or null when one of its pieces cannot be used.</summary>
    public static AlignmentReadResult Read(string folder, string? name, string coordinateSystem)
    {
        var findings = new List<Finding>();
        var elements = ImmutableArray.CreateBuilder<AlignmentElement>();
        var chords = ImmutableArray.CreateBuilder<PlanPoint>();
        var whole = true;
        foreach (var row in FolderTable.Read(folder, FolderFormat.Pieces, Nowhere, findings))
        {
            var kind = row.Text("kind");
            var start = new PlanPoint(row.Length("east") ?? 0, row.Length("north") ?? 0);
            if (kind != Chord) Flush(chords, elements);
            if (kind is Chords or Chord) AddChord(row, kind, start, chords);
            else if (Piece(row, kind, start) is { } element) elements.Add(element);
            whole &= row.Good;
        }

        Flush(chords, elements);
        if (whole && elements.Count == 0)
        {
            whole = false;
            findings.Add(new("ROAD-061", FindingLevel.Error, "The file has no pieces.", new(FolderFormat.Pieces.Name), null, "Add a row for each piece of the centre line."));
        }

        return new(whole ? new(name ?? "", elements.ToImmutable(), coordinateSystem) : null, null, [.. findings]);
    }

    /// <summary>Writes a centre line.</summary>
    public static string Write(Alignment alignment)
    {
        var table = new CsvText();
        table.Add("kind", "east_m", "north_m", "end_east_m", "end_north_m", "heading_rad", "curvature_per_m", "end_curvature_per_m", "length_m");
        foreach (var element in alignment.Elements)
        {
            switch (element)
            {
                case LineElement line:
                    table.Add(Line, T(line.Start.East), T(line.Start.North), T(line.End.East), T(line.End.North), "", "", "", "");
                    break;
                case ArcElement arc:
                    table.Add(Arc, T(arc.Start.Point.East), T(arc.Start.Point.North), "", "", T(arc.Start.Heading), T(arc.Curvature), "", T(arc.ArcLength));
                    break;
                case SpiralElement s:
                    table.Add(Spiral, T(s.Start.Point.East), T(s.Start.Point.North), "", "", T(s.Start.Heading), T(s.StartCurvature), T(s.EndCurvature), T(s.SpiralLength));
                    break;
                case PolylineElement run:
                    for (var i = 0; i < run.Points.Length; i++)
                        table.Add(i == 0 ? Chords : Chord, T(run.Points[i].East), T(run.Points[i].North), "", "", "", "", "", "");
                    break;
                default:
                    throw new ArgumentException($"A piece of kind {element.GetType().Name} cannot be written.", nameof(alignment));
            }
        }

        return table.ToString();
    }

    private static AlignmentElement? Piece(FolderRow row, string kind, PlanPoint start)
    {
        var (heading, curvature, length) = (row.Number("heading_rad"), row.Number("curvature_per_m"), row.Length("length"));
        switch (kind)
        {
            case Line when row.Length("end_east") is { } east && row.Length("end_north") is { } north && new PlanPoint(east, north) != start:
                return new LineElement(start, new(east, north));
            case Arc when heading is not null && curvature is not null and not 0 && length > 0:
                return new ArcElement(new(start, heading.Value), curvature.Value, length.Value);
            case Spiral when heading is not null && curvature is not null && length > 0 && row.Number("end_curvature_per_m") is { } last:
                return new SpiralElement(new(start, heading.Value), curvature.Value, last, length.Value);
            default:
                row.Bad("ROAD-068", "The piece cannot be read.", "kind", kind, "Write line with end_east and end_north; arc or spiral with heading, curvature and length; or chords and chord.");
                return null;
        }
    }

    private static void AddChord(FolderRow row, string kind, PlanPoint point, ImmutableArray<PlanPoint>.Builder chords)
    {
        if (kind == Chord && (chords.Count == 0 || chords[^1] == point))
            row.Bad("ROAD-068", "The point does not carry a run of chords on.", "kind", kind, "Begin a run with chords, and give points apart from one another.");
        else chords.Add(point);
    }

    private static void Flush(ImmutableArray<PlanPoint>.Builder chords, ImmutableArray<AlignmentElement>.Builder elements)
    {
        if (chords.Count > 1) elements.Add(new PolylineElement(chords.ToImmutable()));
        chords.Clear();
    }

    private static string T(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
