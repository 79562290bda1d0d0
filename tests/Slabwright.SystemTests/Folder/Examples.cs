namespace Slabwright.SystemTests.Folder;

/// <summary>Finds the examples of the repository.</summary>
internal static class Examples
{
    /// <summary>Folder of an example.</summary>
    public static string PathOf(string example)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Slabwright.slnx"))) folder = folder.Parent;
        return Path.Combine(folder?.FullName ?? throw new DirectoryNotFoundException("The repository's root is not above the tests."), "examples", example);
    }
}
