using System.Collections.Immutable;
using Slabwright.Core.Evidence;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Boundaries;

/// <summary>
/// A stretch of one lane that must come out: a distress with its hidden margin, or a whole slab or run called by the treatments.
/// </summary>
/// <param name="Lane">Lane number.</param>
/// <param name="From">Metres along the road, margin included.</param>
/// <param name="To">Metres along the road, margin included.</param>
/// <param name="Treatment">Full-depth repair, slab replacement or slab run.</param>
/// <param name="DistressIds">The distresses it answers.</param>
/// <param name="Reasons">Why it reaches so far: margin, growth, cores.</param>
public sealed record RemovalDemand(
    int Lane, double From, double To, Treatment Treatment, ImmutableArray<string> DistressIds, ImmutableArray<Reason> Reasons);

/// <summary>How a new transverse joint carries load.</summary>
public enum JointDesign
{
    /// <summary>Smooth dowels drilled into the old slab: a working joint.</summary>
    Dowelled,

    /// <summary>Deformed tie bars: holds the pieces together, does not work.</summary>
    Tied,

    /// <summary>Aggregate interlock only, where the rules allow it.</summary>
    Undowelled,

    /// <summary>At a fixed structure: expansion joint or isolation, no load transfer.</summary>
    Isolated,
}

/// <summary>A new transverse joint at the end of a repair or inside it.</summary>
/// <param name="At">Metres along the road.</param>
/// <param name="Design">How it carries load.</param>
/// <param name="AtExistingJoint">True when it stands where an old joint stood.</param>
/// <param name="Bars">Number of dowels or tie bars.</param>
public sealed record RepairJoint(double At, JointDesign Design, bool AtExistingJoint, int Bars);

/// <summary>How a repair's long side meets what lies beside it.</summary>
public enum LongitudinalFace
{
    /// <summary>Isolation board against old concrete.</summary>
    Isolated,

    /// <summary>Tie bars into old concrete.</summary>
    Tied,

    /// <summary>New concrete on the other side: the neighbouring lane is repaired here too.</summary>
    SharedWithRepair,

    /// <summary>Edge form, with a strip of asphalt shoulder taken out and put back.</summary>
    FormedAgainstShoulder,

    /// <summary>Edge form against curb or open ground.</summary>
    Formed,
}

/// <summary>A stretch of a repair's long side with one kind of face.</summary>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
/// <param name="Face">How it meets its neighbour.</param>
/// <param name="TieBarsSevered">True where old tie bars cross the joint and the longitudinal cut severs them.</param>
public sealed record FaceStretch(double From, double To, LongitudinalFace Face, bool TieBarsSevered)
{
    /// <summary>Why the face is as it is; null for plans drawn by hand.</summary>
    public Reason? Because { get; init; }
}

/// <summary>
/// One piece of concrete to be removed and replaced over the full width of one lane. Repairs that lie beside one another in adjoining
/// lanes share a <see cref="Group"/>.
/// </summary>
public sealed record Repair
{
    /// <summary>Identifier printed on sheets and painted on the road, e.g. <c>R014</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Lane number.</summary>
    public required int Lane { get; init; }

    /// <summary>First boundary cut, metres along the road.</summary>
    public required double From { get; init; }

    /// <summary>Last boundary cut, metres along the road.</summary>
    public required double To { get; init; }

    /// <summary>Full lane width, m.</summary>
    public required double Width { get; init; }

    /// <summary>Slab thickness here, m.</summary>
    public required double Thickness { get; init; }

    /// <summary>Full-depth repair, slab replacement (one whole slab) or slab run.</summary>
    public required Treatment Kind { get; init; }

    /// <summary>Joint at <see cref="From"/>.</summary>
    public required RepairJoint Start { get; init; }

    /// <summary>Joint at <see cref="To"/>.</summary>
    public required RepairJoint End { get; init; }

    /// <summary>New joints inside, in order.</summary>
    public ImmutableArray<RepairJoint> Intermediate { get; init; } = [];

    /// <summary>Left face, stretch by stretch, covering the whole length.</summary>
    public required ImmutableArray<FaceStretch> LeftFace { get; init; }

    /// <summary>Right face, stretch by stretch, covering the whole length.</summary>
    public required ImmutableArray<FaceStretch> RightFace { get; init; }

    /// <summary>Repairs that touch or face one another across a lane line share a group number.</summary>
    public int Group { get; init; }

    /// <summary>Distresses it answers.</summary>
    public required ImmutableArray<string> DistressIds { get; init; }

    /// <summary>Why the boundaries are where they are.</summary>
    public required ImmutableArray<Reason> Reasons { get; init; }

    /// <summary>Length, m.</summary>
    public double Length => To - From;

    /// <summary>Area, m².</summary>
    public double Area => Length * Width;
}

/// <summary>Work that does not go through the slab: partial-depth repairs and sealing.</summary>
/// <param name="Id">Identifier, e.g. <c>P003</c> or <c>S012</c>.</param>
/// <param name="Lane">Lane number.</param>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
/// <param name="Treatment">Partial-depth repair or seal.</param>
/// <param name="Length">Length to repair or seal, m.</param>
/// <param name="Area">Area, m²; 0 for sealing.</param>
/// <param name="DistressIds">Distresses it answers.</param>
public sealed record SurfaceWork(
    string Id, int Lane, double From, double To, Treatment Treatment, double Length, double Area, ImmutableArray<string> DistressIds);
