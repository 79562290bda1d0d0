using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;

namespace Slabwright.Data.Import;

/// <summary>
/// Reads surveys and core files: delimited text, XLSX and XLS workbooks, GeoJSON and GeoPackage, told apart by content and not by name.
/// Bad input never throws: what cannot be read becomes findings and the rest is kept. Text is streamed, so memory goes with what is kept.
/// </summary>
public static class SurveyImporter
{
    /// <summary>Reads the distresses of a survey file.</summary>
    /// <param name="path">File.</param>
    /// <param name="road">The road surveyed.</param>
    /// <param name="options">How to read.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <param name="progress">Told the number of rows read, every thousand.</param>
    public static SurveyRecord Import(
        string path, Road road, SurveyImportOptions options, CancellationToken cancellation = default, IProgress<long>? progress = null) =>
        FromFile(path, options, (stream, name) => Import(stream, name, road, options, cancellation, progress));

    /// <summary>Reads the distresses of a survey file.</summary>
    /// <param name="stream">Content; left open.</param>
    /// <param name="fileName">Name for findings and origins.</param>
    /// <param name="road">The road surveyed.</param>
    /// <param name="options">How to read.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <param name="progress">Told the number of rows read, every thousand.</param>
    public static SurveyRecord Import(
        Stream stream, string fileName, Road road, SurveyImportOptions options, CancellationToken cancellation = default,
        IProgress<long>? progress = null) =>
        Read(stream, fileName, options, cores: false, cancellation, (source, log) =>
            SurveyInterpreter.ReadDistresses(source, road, options, log, cancellation, progress));

    /// <summary>Reads the samples of a core file.</summary>
    /// <param name="path">File.</param>
    /// <param name="road">The road cored.</param>
    /// <param name="options">How to read.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <param name="progress">Told the number of rows read, every thousand.</param>
    public static SurveyRecord ImportCores(
        string path, Road road, SurveyImportOptions options, CancellationToken cancellation = default, IProgress<long>? progress = null) =>
        FromFile(path, options, (stream, name) => ImportCores(stream, name, road, options, cancellation, progress));

    /// <summary>Reads the samples of a core file.</summary>
    /// <param name="stream">Content; left open.</param>
    /// <param name="fileName">Name for findings.</param>
    /// <param name="road">The road cored.</param>
    /// <param name="options">How to read.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <param name="progress">Told the number of rows read, every thousand.</param>
    public static SurveyRecord ImportCores(
        Stream stream, string fileName, Road road, SurveyImportOptions options, CancellationToken cancellation = default,
        IProgress<long>? progress = null) =>
        Read(stream, fileName, options, cores: true, cancellation, (source, log) =>
            SurveyInterpreter.ReadCores(source, road, options, log, cancellation, progress));

    private static SurveyRecord FromFile(string path, SurveyImportOptions options, Func<Stream, string, SurveyRecord> read)
    {
        var name = Path.GetFileName(path);
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, 1 << 16, FileOptions.SequentialScan);
            return read(stream, name);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Unreadable(new FindingLog(name, options.MostFindingsPerCode), e);
        }
    }

    private static SurveyRecord Read(
        Stream stream, string fileName, SurveyImportOptions options, bool cores, CancellationToken cancellation,
        Func<RawSource, FindingLog, SurveyRecord> interpret)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(options);
        var log = new FindingLog(Path.GetFileName(fileName), options.MostFindingsPerCode);
        using var copy = stream.CanSeek ? null : Copy(stream, cancellation);
        using var table = OpenTable(copy ?? stream, new ReadRequest(log, options, cores));
        return interpret(table.Source, log);
    }

    private static OpenedTable OpenTable(Stream stream, ReadRequest request)
    {
        try
        {
            return FileSniffer.Tell(stream) switch
            {
                FileForm.Empty => OpenedTable.Nothing(request),
                FileForm.Workbook => WorkbookReader.Open(stream, request),
                FileForm.GeoPackage => GeoPackageReader.Open(stream, request),
                FileForm.Json => GeoJsonReader.Open(stream, request),
                _ => DelimitedFile.Open(stream, request),
            };
        }
        catch (Exception e) when (Broken.IsContent(e))
        {
            request.Log.Add(SurveyFaults.Unreadable, $"The file cannot be read: {Broken.Words(e)}");
            return OpenedTable.Nothing(request);
        }
    }

    private static FileStream Copy(Stream stream, CancellationToken cancellation)
    {
        var copy = TemporaryFile();
        var buffer = new byte[1 << 16];
        for (var read = stream.Read(buffer); read > 0; read = stream.Read(buffer))
        {
            cancellation.ThrowIfCancellationRequested();
            copy.Write(buffer, 0, read);
        }

        copy.Position = 0;
        return copy;
    }

    private static FileStream TemporaryFile() => new(
        Path.Combine(Path.GetTempPath(), Path.GetRandomFileName()), FileMode.CreateNew, FileAccess.ReadWrite,
        FileShare.ReadWrite | FileShare.Delete, 1 << 16, FileOptions.DeleteOnClose);

    private static SurveyRecord Unreadable(FindingLog log, Exception e)
    {
        log.Add(SurveyFaults.Unreadable, $"The file cannot be opened: {Broken.Words(e)}", mend: "Check that it is there and may be read.");
        return new SurveyRecord([], [], log.ToFindings());
    }
}

/// <summary>What a reader is asked for.</summary>
/// <param name="Log">Where its findings go.</param>
/// <param name="Options">How to read.</param>
/// <param name="Cores">True for a core file.</param>
internal sealed record ReadRequest(FindingLog Log, SurveyImportOptions Options, bool Cores);

/// <summary>A table being read, with what must be closed after it.</summary>
internal sealed class OpenedTable(RawSource source, Action? close = null) : IDisposable
{
    /// <summary>Its rows.</summary>
    public RawSource Source => source;

    /// <summary>A table without rows.</summary>
    public static OpenedTable Nothing(ReadRequest request) => new(new RawSource(request.Log.File, []));

    /// <inheritdoc/>
    public void Dispose() => close?.Invoke();
}
