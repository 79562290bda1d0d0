namespace Slabwright.Tests.Rules;

/// <summary>The source tree the tests were built from.</summary>
internal static class Repository
{
    /// <summary>Folder that holds Slabwright.slnx.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Path below the root.</summary>
    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    /// <summary>Source files below a folder, build output left out.</summary>
    public static IEnumerable<string> Sources(string folder, string pattern = "*.cs") =>
        !Directory.Exists(PathOf(folder)) ? [] : Directory.EnumerateFiles(PathOf(folder), pattern, SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
                && !f.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    /// <summary>Path as the reader of a failing test wants it.</summary>
    public static string Relative(string path) => Path.GetRelativePath(Root, path).Replace('\\', '/');

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Slabwright.slnx"))) return folder.FullName;
        }

        throw new InvalidOperationException("Slabwright.slnx was not found above " + AppContext.BaseDirectory);
    }
}
