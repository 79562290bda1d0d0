using Slabwright.Core.Survey;

namespace Slabwright.Data.Import;

/// <summary>Broken files: the libraries that read them fail in many ways, and every one of them means the same to the user.</summary>
internal static class Broken
{
    /// <summary>True for a failure that the file's content can cause.</summary>
    public static bool IsContent(Exception e) => e is not (OperationCanceledException or OutOfMemoryException or ObjectDisposedException);

    /// <summary>The failure in words, on one line.</summary>
    public static string Words(Exception e)
    {
        var line = e.Message.ReplaceLineEndings(" ").Trim();
        return line.Length > 200 ? line[..200] + "…" : line;
    }

    /// <summary>Passes rows on until one cannot be read; that becomes a finding and ends the reading, the rows before it stay.</summary>
    public static IEnumerable<RawRow> Guard(IEnumerable<RawRow> rows, FindingLog log)
    {
        using var each = rows.GetEnumerator();
        long last = 0;
        while (true)
        {
            try
            {
                if (!each.MoveNext()) yield break;
                last = each.Current.Number;
            }
            catch (Exception e) when (IsContent(e))
            {
                log.Add(SurveyFaults.Unreadable, $"The file cannot be read beyond row {last}: {Words(e)}", last);
                yield break;
            }

            yield return each.Current;
        }
    }
}
