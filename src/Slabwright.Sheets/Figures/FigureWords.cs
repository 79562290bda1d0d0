namespace Slabwright.Sheets.Figures;

/// <summary>Breaks words of a figure into lines.</summary>
internal static class FigureWords
{
    /// <summary>Lines of at most a width; a word longer than it stands alone.</summary>
    public static List<string> Wrap(string text, double size, double width, TextRuler ruler)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && ruler(longer, size, false) > width)
            {
                lines.Add(line);
                line = word;
            }
            else line = longer;
        }

        if (line.Length > 0) lines.Add(line);
        return lines;
    }
}
