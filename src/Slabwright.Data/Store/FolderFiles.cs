namespace Slabwright.Data.Store;

/// <summary>Carries a project folder between disk and store, byte for byte.</summary>
internal static class FolderFiles
{
    /// <summary>
    /// Reads all files of a folder and its subfolders in ordinal order of their paths. Names that begin with a dot belong to other
    /// programs and stay out.
    /// </summary>
    public static async Task<List<StoredFile>> ReadAsync(string folder, CancellationToken cancel)
    {
        var files = new List<StoredFile>();
        foreach (var path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            var inside = Path.GetRelativePath(folder, path).Replace(Path.DirectorySeparatorChar, '/');
            if (inside.Split('/').Any(part => part.StartsWith('.'))) continue;
            var bytes = await File.ReadAllBytesAsync(path, cancel);
            files.Add(new StoredFile { Path = inside, Bytes = bytes, Hash = ContentHash.OfFile(bytes) });
        }

        files.Sort((a, b) => string.CompareOrdinal(a.Path, b.Path));
        return files;
    }

    /// <summary>Writes files into a folder that must be missing or empty, so that nothing of the user's is overwritten.</summary>
    public static async Task WriteAsync(string folder, IEnumerable<StoredFile> files, CancellationToken cancel)
    {
        var root = Path.GetFullPath(folder);
        if (Directory.Exists(root) && Directory.EnumerateFileSystemEntries(root).Any())
            throw new IOException($"The folder {root} is not empty; choose a new or empty one.");
        foreach (var file in files)
        {
            var path = Path.GetFullPath(Path.Combine(root, file.Path));
            if (!path.StartsWith(root + Path.DirectorySeparatorChar, StringComparison.Ordinal))
                throw new IOException($"The stored path {file.Path} leads out of the folder.");
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            await File.WriteAllBytesAsync(path, file.Bytes, cancel);
        }
    }
}
