namespace Slabwright.Examples.Ltpp;

/// <summary>Where the example's files lie in the source tree.</summary>
public static class ExampleFolder
{
    private static readonly string Root = FindRoot();

    /// <summary>The trimmed tables.</summary>
    public static string Data { get; } = Path.Combine(Root, "examples", "ltpp", "data");

    /// <summary>The report the program writes.</summary>
    public static string Report { get; } = Path.Combine(Root, "docs", "ltpp-comparison.md");

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Slabwright.slnx"))) return folder.FullName;
        }

        throw new InvalidOperationException("The source tree was not found above " + AppContext.BaseDirectory);
    }
}
