using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;
using Slabwright.Data.Import;

namespace Slabwright.Data.Folder;

/// <summary>The centre line a project names.</summary>
internal static class AlignmentChoice
{
    /// <summary>The centre line, or null when the project names none or it cannot be read.</summary>
    /// <param name="road">The road's properties.</param>
    /// <param name="folder">The project folder.</param>
    /// <param name="stationing">Stationing the file states, where it states one.</param>
    public static Alignment? Read(JsonFields road, string folder, out Stationing? stationing)
    {
        stationing = null;
        if (!road.Has("alignment") || road.Object("alignment") is not { } fields) return null;
        var offset = fields.Length("start_offset", -1_000_000, 1_000_000) ?? 0;
        var name = fields.Text("name");
        if (fields.Text("file", required: true) is not { } file) return null;
        var path = Path.Combine(folder, Path.GetFileName(file));
        if (!File.Exists(path))
        {
            fields.Bad("ROAD-002", "The alignment's file is missing.", "file", file, "Put the file into the project folder and give its name here.");
            return null;
        }

        var read = Path.GetFileName(file) == FolderFormat.Pieces.Name
            ? PieceTable.Read(folder, name, fields.Text("coordinate_system") ?? "")
            : AlignmentFile.Read(path, name);
        fields.Findings.AddRange(read.Findings);
        stationing = read.Stationing;
        return read.Alignment is null ? null : read.Alignment with { StartOffset = offset };
    }

    /// <summary>Warns where the centre line does not reach from the road's start to its end.</summary>
    public static void CheckLength(Alignment? alignment, double length, JsonFields road)
    {
        const double slack = 1;
        if (alignment is null || (alignment.StartOffset >= -slack && alignment.Length - alignment.StartOffset >= length - slack)) return;
        road.Findings.Add(new("ROAD-072", FindingLevel.Warning, "The centre line is shorter than the road; past its ends it is carried on straight.",
            road.Place with { Field = "road.alignment" }, (alignment.Length - alignment.StartOffset).ToString("0.0", CultureInfo.InvariantCulture) + " m",
            "Check the road's length and the alignment's start offset.", length.ToString("0.0", CultureInfo.InvariantCulture) + " m"));
    }
}
