namespace Slabwright.SystemTests.Store;

/// <summary>A folder of the test's own, taken away with it.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("slabwright-test-").FullName;

    public string Of(params string[] parts) => System.IO.Path.Combine([Path, .. parts]);

    public void Write(string name, byte[] bytes)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(Of(name))!);
        File.WriteAllBytes(Of(name), bytes);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
