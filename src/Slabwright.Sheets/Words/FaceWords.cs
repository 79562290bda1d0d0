using System.Collections.Immutable;
using Slabwright.Core.Boundaries;

namespace Slabwright.Sheets.Words;

/// <summary>The long side of a repair in words.</summary>
public static class FaceWords
{
    /// <summary>One word where the face is the same over the whole length, else each stretch with its length.</summary>
    public static string Of(ImmutableArray<FaceStretch> faces, JobUnits units)
    {
        var joined = Join(faces);
        return joined.Count switch
        {
            0 => "",
            1 => SheetWords.Of(joined[0].Face),
            _ => string.Join("; ", joined.Select(f => $"{SheetWords.Of(f.Face)} {units.LengthText(f.To - f.From)}")),
        };
    }

    private static List<FaceStretch> Join(ImmutableArray<FaceStretch> faces)
    {
        var joined = new List<FaceStretch>();
        foreach (var face in faces)
        {
            if (joined.Count > 0 && joined[^1].Face == face.Face) joined[^1] = joined[^1] with { To = face.To };
            else joined.Add(face);
        }

        return joined;
    }
}
