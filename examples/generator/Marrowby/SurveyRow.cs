namespace Slabwright.Examples.Marrowby;

/// <summary>One distress as the crew wrote it: feet and inches.</summary>
internal sealed record SurveyRow
{
    public string Id { get; init; } = "";
    public required int Lane { get; init; }
    public required string Type { get; init; }
    public string Severity { get; init; } = "";
    public required double From { get; init; }
    public required double To { get; init; }
    public double? OffsetFrom { get; init; }
    public double? OffsetTo { get; init; }
    public double? Length { get; init; }
    public double? Width { get; init; }
    public double? Depth { get; init; }
    public double? Faulting { get; init; }
    public double? Area { get; init; }
    public double? Widening { get; init; }
    public int? Count { get; init; }
    public string Cause { get; init; } = "";
    public bool BesideRepair { get; init; }
    public bool ThroughOverlay { get; init; }
    public string Note { get; init; } = "";
}
