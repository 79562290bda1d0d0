namespace Slabwright.Sheets.Paper;

/// <summary>Breaks text into lines of a width.</summary>
internal static class TextFlow
{
    /// <summary>Lines of a text; words longer than the width are broken inside. Line feeds in the text start new lines.</summary>
    public static List<string> Wrap(PaperFonts fonts, string text, Face face, float size, float width)
    {
        var lines = new List<string>();
        foreach (var paragraph in text.Split('\n'))
        {
            if (fonts.Measure(paragraph, face, size) <= width) lines.Add(paragraph);
            else WrapParagraph(fonts, paragraph, face, size, width, lines);
        }

        return lines;
    }

    /// <summary>A text cut to a width, ending in an ellipsis where something is left out.</summary>
    public static string Fit(PaperFonts fonts, string text, Face face, float size, float width)
    {
        if (fonts.Measure(text, face, size) <= width) return text;
        var (low, high) = (0, text.Length);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (fonts.Measure(text[..middle] + "…", face, size) <= width) low = middle;
            else high = middle - 1;
        }

        return text[..low].TrimEnd() + "…";
    }

    private static void WrapParagraph(PaperFonts fonts, string paragraph, Face face, float size, float width, List<string> lines)
    {
        var space = fonts.Measure(" ", face, size);
        var (line, used) = ("", 0f);
        foreach (var word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var (rest, length) = (word, fonts.Measure(word, face, size));
            if (line.Length > 0 && used + space + length <= width)
            {
                line += " " + rest;
                used += space + length;
                continue;
            }

            if (line.Length > 0) lines.Add(line);
            while (length > width && rest.Length > 1)
            {
                var fits = LongestStart(fonts, rest, face, size, width);
                lines.Add(rest[..fits]);
                rest = rest[fits..];
                length = fonts.Measure(rest, face, size);
            }

            (line, used) = (rest, length);
        }

        if (line.Length > 0) lines.Add(line);
    }

    private static int LongestStart(PaperFonts fonts, string word, Face face, float size, float width)
    {
        var (low, high) = (1, word.Length);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (fonts.Measure(word[..middle], face, size) <= width) low = middle;
            else high = middle - 1;
        }

        return low;
    }
}
