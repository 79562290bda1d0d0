namespace Slabwright.SystemTests.Folder;

/// <summary>Finds the examples of the repository.</summary>
internal static class Examples
{
    /// <summary>Folder of an example.</summary>
    public static string PathOf(string example) => Path.Combine(SourceTree.Root, "examples", example);
}
