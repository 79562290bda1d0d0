using System.Text;

namespace Slabwright.Core.Evidence;

/// <summary>
/// The words for enum members as files and sheets print them: <c>CornerBreak</c> is <c>corner break</c>, <c>FullDepthRepair</c> is
/// <c>full-depth repair</c>.
/// </summary>
public static class TradeWords
{
    /// <summary>The words of a member.</summary>
    public static string Of<T>(T member) where T : struct, Enum
    {
        var name = member.ToString();
        var words = new StringBuilder(name.Length + 4);
        foreach (var letter in name)
        {
            if (char.IsUpper(letter) && words.Length > 0) words.Append(' ');
            words.Append(char.ToLowerInvariant(letter));
        }

        return words.Replace(" depth repair", "-depth repair").Replace("lane to shoulder", "lane-to-shoulder").ToString();
    }

    /// <summary>Finds the member of some words; case, spaces, hyphens and underscores do not matter.</summary>
    public static bool TryRead<T>(string words, out T member) where T : struct, Enum
    {
        var letters = string.Concat(words.Where(char.IsLetter));
        member = default;
        return letters.Length == words.Count(c => c is not (' ' or '-' or '_'))
            && Enum.TryParse(letters, ignoreCase: true, out member);
    }

    /// <summary>All words of an enum, for findings that list what is allowed.</summary>
    public static string All<T>() where T : struct, Enum => string.Join(", ", Enum.GetValues<T>().Select(Of));
}
