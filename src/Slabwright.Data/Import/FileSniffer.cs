namespace Slabwright.Data.Import;

/// <summary>Forms of file a survey may come in.</summary>
internal enum FileForm
{
    /// <summary>No content.</summary>
    Empty,

    /// <summary>Delimited text.</summary>
    Text,

    /// <summary>XLSX or XLS workbook.</summary>
    Workbook,

    /// <summary>GeoPackage.</summary>
    GeoPackage,

    /// <summary>GeoJSON.</summary>
    Json,
}

/// <summary>Tells a file's form from its first bytes.</summary>
internal static class FileSniffer
{
    /// <summary>The form of a stream, which is left at its start.</summary>
    public static FileForm Tell(Stream stream)
    {
        stream.Position = 0;
        var head = new byte[512];
        var length = stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        stream.Position = 0;
        var bytes = head.AsSpan(0, length);
        if (length == 0) return FileForm.Empty;
        if (bytes.StartsWith("PK\x03\x04"u8) || bytes.StartsWith("PK\x05\x06"u8)) return FileForm.Workbook;
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0])) return FileForm.Workbook;
        if (bytes.StartsWith("SQLite format 3"u8)) return FileForm.GeoPackage;
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF])) bytes = bytes[3..];
        var text = bytes.TrimStart(" \t\r\n"u8);
        return text.Length > 0 && text[0] == (byte)'{' ? FileForm.Json : FileForm.Text;
    }
}
