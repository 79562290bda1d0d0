namespace Slabwright.SystemTests;

/// <summary>The source tree the tests were built from.</summary>
internal static class SourceTree
{
    /// <summary>Folder that holds Slabwright.slnx.</summary>
    public static string Root { get; } = FindRoot();

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Slabwright.slnx"))) return folder.FullName;
        }

        throw new InvalidOperationException("Slabwright.slnx was not found above " + AppContext.BaseDirectory);
    }
}
