using System.Globalization;
using System.Text;

namespace Slabwright.Core.Survey;

/// <summary>Comparing words as people write them: without case, accents, spaces and punctuation.</summary>
internal static class Words
{
    private const int MostEdits = 3;

    /// <summary>Letters and digits of a text in lower case, without accents; percent signs become <c>pct</c>.</summary>
    public static string Key(string text)
    {
        var plain = IsAscii(text) ? text : text.Normalize(NormalizationForm.FormD);
        var key = new StringBuilder(plain.Length);
        foreach (var c in plain)
        {
            if (c == '%') key.Append("pct");
            else if (char.IsLetterOrDigit(c)) key.Append(char.ToLowerInvariant(c));
        }

        return key.ToString();
    }

    /// <summary>Splits a header into words at punctuation, spaces and humps: <c>widthMm</c> becomes width, Mm.</summary>
    public static List<string> Split(string text)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            var hump = char.IsUpper(c) && i > 0 && char.IsLower(text[i - 1]);
            if (word.Length > 0 && (hump || !char.IsLetterOrDigit(c))) Flush();
            if (char.IsLetterOrDigit(c)) word.Append(c);
            else if (c is '%' or '"' or '\'') words.Add(c.ToString());
        }

        if (word.Length > 0) Flush();
        return words;

        void Flush()
        {
            words.Add(word.ToString());
            word.Clear();
        }
    }

    /// <summary>The candidate with the fewest edits from a key, ties to the first in ordinal order; null beyond three edits or a third of it.</summary>
    public static string? Nearest(string key, IEnumerable<string> candidates)
    {
        var (best, fewest) = ((string?)null, Math.Min(MostEdits, key.Length / 3) + 1);
        foreach (var candidate in candidates.Order(StringComparer.Ordinal))
        {
            if (Math.Abs(candidate.Length - key.Length) >= fewest) continue;
            var edits = Edits(key, candidate);
            if (edits < fewest) (best, fewest) = (candidate, edits);
        }

        return best;
    }

    /// <summary>True for what people write into a cell to say that there is nothing.</summary>
    public static bool MeansNothing(string text)
    {
        var trimmed = text.AsSpan().Trim();
        return trimmed.Length == 0 || trimmed is "-" or "--" or "–" or "—" or "?" || trimmed.Equals("n/a", StringComparison.OrdinalIgnoreCase)
            || trimmed.Equals("na", StringComparison.OrdinalIgnoreCase) || trimmed.Equals("null", StringComparison.OrdinalIgnoreCase)
            || trimmed.Equals("nil", StringComparison.OrdinalIgnoreCase) || trimmed.Equals("none", StringComparison.OrdinalIgnoreCase)
            || trimmed.Equals("unknown", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Letters to change, add, drop or swap with their neighbour to turn one text into the other.</summary>
    private static int Edits(string a, string b)
    {
        var (before, last, row) = (new int[b.Length + 1], new int[b.Length + 1], new int[b.Length + 1]);
        for (var j = 0; j <= b.Length; j++) row[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            (before, last, row) = (last, row, before);
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                row[j] = Math.Min(last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1), Math.Min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) row[j] = Math.Min(row[j], before[j - 2] + 1);
            }
        }

        return row[b.Length];
    }

    private static bool IsAscii(string text)
    {
        foreach (var c in text)
        {
            if (c > 127) return false;
        }

        return true;
    }

    /// <summary>A number as printed in findings.</summary>
    public static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
