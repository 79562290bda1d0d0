using System.Security.Cryptography;
using System.Text;

namespace Slabwright.Data.Store;

/// <summary>Names contents by their SHA-256, so that equal folders have equal names wherever they lie.</summary>
internal static class ContentHash
{
    /// <summary>Hash of one file.</summary>
    public static string OfFile(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Hash of a folder: every path with the hash of its file, in ordinal order of the paths.</summary>
    public static string OfFolder(IEnumerable<StoredFile> files)
    {
        var list = string.Concat(files.OrderBy(f => f.Path, StringComparer.Ordinal).Select(f => $"{f.Hash} {f.Path}\n"));
        return OfFile(Encoding.UTF8.GetBytes(list));
    }
}
