using System.IO.Compression;
using System.Xml;

namespace Slabwright.Data.Import;

/// <summary>
/// Finds the cells of a sheet whose formula ended in an error (ECMA-376 part 1, 18.18.11: cell type <c>e</c>), which the workbook reader
/// shows as empty. Old XLS workbooks are not looked at: there such cells stay empty.
/// </summary>
internal static class WorkbookErrors
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const int MostErrors = 100_000;

    /// <summary>Row from 1 and column from 0 of each such cell with the error's name.</summary>
    public static Dictionary<(long Row, int Column), string> Find(Stream stream, string sheet)
    {
        var errors = new Dictionary<(long, int), string>();
        stream.Position = 0;
        if (FileSniffer.Tell(stream) != FileForm.Workbook || stream.ReadByte() != 'P') return errors;
        stream.Position = 0;
        using var archive = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
        if (PartOf(archive, sheet) is not { } part) return errors;
        using var content = part.Open();
        using var xml = XmlReader.Create(content);
        while (errors.Count < MostErrors && xml.ReadToFollowing("c", Main))
        {
            if (xml.GetAttribute("t") != "e" || xml.GetAttribute("r") is not { } reference || !TryPlace(reference, out var place)) continue;
            using var cell = xml.ReadSubtree();
            errors[place] = cell.ReadToFollowing("v", Main) ? cell.ReadElementContentAsString() : "#ERROR";
        }

        return errors;
    }

    private static ZipArchiveEntry? PartOf(ZipArchive archive, string sheet)
    {
        string? id = null;
        using (var workbook = Open(archive, "xl/workbook.xml"))
        {
            while (id is null && workbook is not null && workbook.ReadToFollowing("sheet", Main))
            {
                if (workbook.GetAttribute("name") == sheet) id = workbook.GetAttribute("id", Relations);
            }
        }

        using var relations = Open(archive, "xl/_rels/workbook.xml.rels");
        while (id is not null && relations is not null && relations.ReadToFollowing("Relationship"))
        {
            if (relations.GetAttribute("Id") != id || relations.GetAttribute("Target") is not { } target) continue;
            return archive.GetEntry(target.StartsWith('/') ? target[1..] : "xl/" + target);
        }

        return null;
    }

    private static XmlReader? Open(ZipArchive archive, string name) =>
        archive.GetEntry(name) is { } entry ? XmlReader.Create(entry.Open(), new XmlReaderSettings { CloseInput = true }) : null;

    /// <summary>Reads a reference such as <c>AB12</c>.</summary>
    private static bool TryPlace(string reference, out (long Row, int Column) place)
    {
        var (column, i) = (0, 0);
        for (; i < reference.Length && char.IsAsciiLetterUpper(reference[i]) && i < 3; i++) column = 26 * column + reference[i] - 'A' + 1;
        var read = long.TryParse(reference.AsSpan(i), System.Globalization.CultureInfo.InvariantCulture, out var row);
        place = (row, column - 1);
        return read && column > 0;
    }
}
