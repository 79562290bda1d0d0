using System.Collections.Immutable;

namespace Slabwright.Core.Pavement;

/// <summary>What lies beyond a lane's edge.</summary>
public enum LaneEdge
{
    /// <summary>Another concrete lane of this road, tied along the longitudinal joint.</summary>
    TiedLane,

    /// <summary>Another concrete lane, not tied.</summary>
    UntiedLane,

    /// <summary>Concrete shoulder tied to the lane.</summary>
    TiedConcreteShoulder,

    /// <summary>Asphalt shoulder.</summary>
    AsphaltShoulder,

    /// <summary>Curb and gutter.</summary>
    Curb,

    /// <summary>Soil or gravel.</summary>
    Unpaved,
}

/// <summary>Whether the slabs carry mesh.</summary>
public enum PavementKind
{
    /// <summary>Jointed plain concrete.</summary>
    JointedPlain,

    /// <summary>Jointed reinforced concrete, longer slabs with mesh.</summary>
    JointedReinforced,
}

/// <summary>What the slab rests on.</summary>
public enum BaseKind
{
    /// <summary>Untreated granular base.</summary>
    Granular,

    /// <summary>Cement-treated or lean concrete base.</summary>
    CementTreated,

    /// <summary>Asphalt-treated base.</summary>
    AsphaltTreated,

    /// <summary>Open-graded drainage base.</summary>
    Permeable,

    /// <summary>Slab on subgrade.</summary>
    Subgrade,
}

/// <summary>A stretch of one lane with the same slab build-up.</summary>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road, greater than <paramref name="From"/>.</param>
/// <param name="Kind">Plain or reinforced.</param>
/// <param name="Thickness">Slab thickness, m.</param>
/// <param name="Base">What the slab rests on.</param>
/// <param name="OverlayThickness">Asphalt on top of the concrete, m; 0 where bare.</param>
public sealed record PavementSection(
    double From, double To, PavementKind Kind, double Thickness, BaseKind Base, double OverlayThickness = 0);

/// <summary>A full-depth repair made in the past.</summary>
/// <param name="From">Metres along the road.</param>
/// <param name="To">Metres along the road.</param>
/// <param name="Year">Year it was built, or null when unknown.</param>
public sealed record EarlierRepair(double From, double To, int? Year);

/// <summary>Concrete between two neighbouring transverse joints of one lane.</summary>
/// <param name="Number">Counted from 1 at the start of the lane.</param>
/// <param name="Lane">Lane number.</param>
/// <param name="Start">Joint it begins at.</param>
/// <param name="End">Joint it ends at.</param>
public readonly record struct Slab(int Number, int Lane, TransverseJoint Start, TransverseJoint End)
{
    /// <summary>Length at the lane centre, m.</summary>
    public double Length => End.At - Start.At;
}

/// <summary>
/// One lane of jointed concrete. Lanes number from the left in the direction of travel. <see cref="Joints"/> are sorted and begin and
/// end with a <see cref="JointKind.PavementEnd"/>, so every place between is on exactly one slab.
/// </summary>
public sealed record Lane
{
    /// <summary>Number from the left, starting at 1.</summary>
    public required int Number { get; init; }

    /// <summary>Width, m.</summary>
    public required double Width { get; init; }

    /// <summary>Where the lane's concrete begins, metres along the road.</summary>
    public required double From { get; init; }

    /// <summary>Where it ends, metres along the road.</summary>
    public required double To { get; init; }

    /// <summary>What lies to the left.</summary>
    public required LaneEdge LeftEdge { get; init; }

    /// <summary>What lies to the right.</summary>
    public required LaneEdge RightEdge { get; init; }

    /// <summary>Transverse joints and working cracks, sorted by <see cref="TransverseJoint.At"/>.</summary>
    public required ImmutableArray<TransverseJoint> Joints { get; init; }

    /// <summary>Build-up along the lane, sorted, without gaps.</summary>
    public required ImmutableArray<PavementSection> Sections { get; init; }

    /// <summary>Earlier full-depth repairs, sorted; their edges are also in <see cref="Joints"/>.</summary>
    public ImmutableArray<EarlierRepair> EarlierRepairs { get; init; } = [];

    /// <summary>True when the place lies on this lane's concrete.</summary>
    public bool Covers(double at) => at >= From && at <= To;

    /// <summary>Number of slabs.</summary>
    public int SlabCount => Joints.Length - 1;

    /// <summary>The slab with a number; throws when there is none.</summary>
    public Slab SlabByNumber(int number) => new(number, Number, Joints[number - 1], Joints[number]);

    /// <summary>The slab a place lies on; a place on a joint belongs to the slab that starts there. Clamped to the lane's ends.</summary>
    public Slab SlabAt(double at)
    {
        var low = 0;
        var high = Joints.Length - 1;
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (Joints[middle].At <= at) low = middle;
            else high = middle;
        }

        return new Slab(low + 1, Number, Joints[low], Joints[high]);
    }

    /// <summary>The build-up at a place; the last section where the place is past the end.</summary>
    public PavementSection SectionAt(double at)
    {
        foreach (var section in Sections)
        {
            if (at < section.To) return section;
        }

        return Sections[^1];
    }
}
