namespace Slabwright.SystemTests.Folder;

/// <summary>A folder that goes away with the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    /// <summary>Full path.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("slabwright-").FullName;

    /// <summary>A copy of a folder's files, subfolders included.</summary>
    public static TemporaryFolder CopyOf(string folder)
    {
        var copy = new TemporaryFolder();
        foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            var target = System.IO.Path.Combine(copy.Path, System.IO.Path.GetRelativePath(folder, file));
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        return copy;
    }

    /// <summary>Replaces text in one of its files; fails when it is not there.</summary>
    public void Change(string file, string from, string to)
    {
        var path = System.IO.Path.Combine(Path, file);
        var text = File.ReadAllText(path);
        Assert.Contains(from, text);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Path, recursive: true);
}
