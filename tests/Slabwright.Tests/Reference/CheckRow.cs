using System.Globalization;

namespace Slabwright.Tests.Reference;

/// <summary>
/// One published value beside ours: asserted by <see cref="CheckTests"/> and printed in docs/joint-checks.md.
/// </summary>
/// <param name="Section">Section of the page, e.g. <c>1 Wheel load</c>; sections sort by their text.</param>
/// <param name="Item">Number of the example within the section, e.g. <c>E1.1</c> or <c>table 9.5</c>.</param>
/// <param name="Source">Where the value is published, or <c>worked independently</c>.</param>
/// <param name="What">What is compared, with the inputs that tell it apart.</param>
/// <param name="Published">The published value in <paramref name="Unit"/>.</param>
/// <param name="Ours">Our value in the same unit.</param>
/// <param name="Unit">Unit symbol; empty for ratios and counts.</param>
/// <param name="Tolerance">Greatest deviation that counts as agreement, in <paramref name="Unit"/>.</param>
/// <param name="Remark">Why it deviates, where it does.</param>
public sealed record CheckRow(
    string Section, string Item, string Source, string What, double Published, double Ours, string Unit, double Tolerance, string Remark = "")
{
    /// <summary>True for a published value that cannot be right; then the row must NOT agree.</summary>
    public bool NotReproduced { get; init; }

    /// <summary>Deviation as a share of the published value; the plain difference where that is 0.</summary>
    public double Deviation => Published == 0 ? Ours : (Ours - Published) / Math.Abs(Published);

    /// <summary>True when within the tolerance.</summary>
    public bool Agrees => Math.Abs(Ours - Published) <= Tolerance;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Item} {What}: {Ours:G8} against {Published:G8} ± {Tolerance:G3} {Unit}");
}

/// <summary>A set of checks, one class per published source. Every class in this assembly that implements it is found.</summary>
public interface ICheckRows
{
    /// <summary>The rows in printing order.</summary>
    IEnumerable<CheckRow> Rows();
}
