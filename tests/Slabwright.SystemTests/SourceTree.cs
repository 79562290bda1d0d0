namespace Slabwright.SystemTests;

/// <summary>Finds what the tests were built beside.</summary>
internal static class SourceTree
{
    public static string Root { get; } = FindRoot();

    /// <summary>The demo project.</summary>
    public static string Demo => Path.Combine(Root, "examples", "marrowby-parkway");

    /// <summary>The other example, small and in metres.</summary>
    public static string SmallDemo => Path.Combine(Root, "examples", "ostrevad-bypass");

    /// <summary>A built file of a source project, of the same configuration as the tests.</summary>
    public static string Built(string project, string file)
    {
        var framework = new DirectoryInfo(AppContext.BaseDirectory);
        return Path.Combine(Root, "src", project, "bin", framework.Parent!.Name, framework.Name, file);
    }

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Slabwright.slnx"))) return folder.FullName;
        }

        throw new InvalidOperationException("Slabwright.slnx was not found above " + AppContext.BaseDirectory);
    }
}
