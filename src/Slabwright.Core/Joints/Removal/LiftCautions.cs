using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;

namespace Slabwright.Core.Joints.Removal;

/// <summary>What keeps people alive when slabs hang.</summary>
internal static class LiftCautions
{
    private static readonly SourceRef Load = new("29-CFR-1926.704", "", SourceStatus.Verified);
    private static readonly SourceRef Rigging = new("29-CFR-1926.251", "", SourceStatus.Verified);

    public static ImmutableArray<CrewNote> For(LiftingSettings settings) =>
    [
        new("Nobody under it", "Nobody stands under or beside a hanging piece, nor between it and anything fixed.", Load),
        new("Straight up", "Lift truly upright, slowly, and stop when the piece comes loose; a slanting pull breaks the slab beside it.",
            new SourceRef("UFGS-02753", "lift-out of slabs", SourceStatus.Verified)),
        new("Rated gear", $"Pins, slings, hooks and shackles marked with their rating; anchors {settings.AnchorFactor:0.##} times, gear {settings.GearFactor:0.##} times the pull.", settings.PracticeSource),
        new("Proof test", "Lifting devices made for the job are marked and tested to 125 % of their rating before use.", Rigging),
        new("Try the first", "Weigh the first piece on the crane. If it pulls harder than planned, stop: a bar is not cut through, or the base holds; cut smaller.", SourceRef.CommonPractice),
        new("Dust", "Saw and drill wet or with extraction: the dust holds silica.", SourceRef.CommonPractice),
        new("Overhead and ground", "Look for lines overhead, and for soft ground, drains and edges under the outriggers.", SourceRef.CommonPractice),
        new("Who decides", "Local codes, the maker's chart and a qualified person decide; these figures bind nobody.", SourceRef.CommonPractice),
    ];
}
