namespace Slabwright.Core.Evidence;

/// <summary>How much a finding weighs.</summary>
public enum FindingLevel
{
    /// <summary>Worth knowing; nothing was dropped or changed.</summary>
    Note,

    /// <summary>The value was used, but somebody should look at it.</summary>
    Warning,

    /// <summary>The row or value was not used until it is mended.</summary>
    Error,
}

/// <summary>Where a finding points: file, row (1 is the first line of the file), field and, on the road, lane and place.</summary>
/// <param name="File">File name without its folder, or null when the finding is not about a file.</param>
/// <param name="Row">Row in the file, counted from 1 with the header as row 1; null when not about a row.</param>
/// <param name="Field">Header or property name as the file spells it.</param>
/// <param name="Lane">Lane number from the left, or null.</param>
/// <param name="At">Metres along the road, or null.</param>
public sealed record FindingPlace(string? File = null, long? Row = null, string? Field = null, int? Lane = null, double? At = null);

/// <summary>
/// A validation result: data, never an exception. Names the place, the offending value, the reason and the mend,
/// so that the person who wrote the file can put it right without asking.
/// </summary>
/// <param name="Code">Stable code such as <c>SRV-012</c>; documented in docs/findings.md.</param>
/// <param name="Level">Weight of the finding.</param>
/// <param name="Sentence">What is wrong, in the engineer's words.</param>
/// <param name="Place">Where.</param>
/// <param name="Value">The value as found, or null.</param>
/// <param name="Mend">What to do about it.</param>
/// <param name="Limit">The limit that was crossed with its unit, or null.</param>
/// <param name="Source">Source of the limit, or null.</param>
public sealed record Finding(
    string Code,
    FindingLevel Level,
    string Sentence,
    FindingPlace Place,
    string? Value = null,
    string? Mend = null,
    string? Limit = null,
    string? Source = null);
