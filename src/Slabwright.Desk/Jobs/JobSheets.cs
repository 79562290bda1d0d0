using System.Collections.Immutable;
using System.IO.Compression;
using Slabwright.Sheets;

namespace Slabwright.Desk.Jobs;

/// <summary>The files of one plan, drawn when first asked for and kept.</summary>
public sealed class JobSheets(OpenJob job)
{
    /// <summary>Name of the file that holds all others.</summary>
    public const string BundleName = "all-sheets.zip";

    private readonly Lazy<Task<ImmutableArray<SheetFile>>> all = new(() => Task.Run(() => Draw(job)));

    public Task<ImmutableArray<SheetFile>> AllAsync() => all.Value;

    /// <summary>One file by its name, the bundle included; null when there is none of that name.</summary>
    public async Task<SheetFile?> FindAsync(string name)
    {
        var files = await AllAsync();
        return name == BundleName ? Bundle(files) : files.FirstOrDefault(f => f.Name == name);
    }

    private static ImmutableArray<SheetFile> Draw(OpenJob job) => [.. SheetSet.Write(job.Project, job.Plan, new SheetOptions(job.Today))];

    private static SheetFile Bundle(ImmutableArray<SheetFile> files)
    {
        using var bytes = new MemoryStream();
        using (var archive = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var file in files)
            {
                using var entry = archive.CreateEntry(file.Name).Open();
                entry.Write(file.Content);
            }
        }

        return new SheetFile(BundleName, "application/zip", "All sheets and files", bytes.ToArray());
    }
}
