namespace Slabwright.Sheets;

/// <summary>What the sheets need to know besides the job itself.</summary>
/// <param name="PrintedOn">Day printed in the footer; the survey's age is counted to it.</param>
public sealed record SheetOptions(DateOnly PrintedOn)
{
    /// <summary>Version of the program, printed small on the cover.</summary>
    public string Version { get; init; } = typeof(SheetOptions).Assembly.GetName().Version?.ToString(3) ?? "";

    /// <summary>Revision of the plan set, e.g. <c>0</c> or <c>B</c>.</summary>
    public string Revision { get; init; } = "0";

    /// <summary>First part of every file name.</summary>
    public string BaseName { get; init; } = "plan";

    /// <summary>
    /// Scale of the strip sheets as the number that follows "1:", e.g. 240 for 1 in = 20 ft; null lets the sheets choose.
    /// </summary>
    public double? StripScale { get; init; }
}

/// <summary>One finished file.</summary>
/// <param name="Name">File name without a folder.</param>
/// <param name="MediaType">Internet media type.</param>
/// <param name="Title">What it is, in words for a list of downloads.</param>
/// <param name="Content">The bytes.</param>
public sealed record SheetFile(string Name, string MediaType, string Title, byte[] Content);
