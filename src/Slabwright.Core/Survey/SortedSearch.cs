namespace Slabwright.Core.Survey;

/// <summary>Small searches.</summary>
internal static class SortedSearch
{
    /// <summary>Index of the first item that passes, in a list whose failing items all come first; its length when none passes.</summary>
    public static int FindIndexSorted<T>(this List<T> list, Func<T, bool> passes)
    {
        var (low, high) = (0, list.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (passes(list[middle])) high = middle;
            else low = middle + 1;
        }

        return low;
    }

    /// <summary>True for one digit or more and nothing else.</summary>
    public static bool ContainsOnlyDigits(this ReadOnlySpan<char> text) => text.Length > 0 && text.IndexOfAnyExceptInRange('0', '9') < 0;
}
