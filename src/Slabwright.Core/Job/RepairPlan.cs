using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Removal;
using Slabwright.Core.Joints.Sealing;
using Slabwright.Core.Quantities;
using Slabwright.Core.Treatments;

namespace Slabwright.Core.Job;

/// <summary>The whole result of one run over a <see cref="Project"/>: what each step handed on.</summary>
public sealed record RepairPlan
{
    /// <summary>A decision for each distress, in survey order.</summary>
    public required ImmutableArray<TreatmentDecision> Decisions { get; init; }

    /// <summary>Where the rule sets disagree.</summary>
    public required ImmutableArray<Disagreement> Disagreements { get; init; }

    /// <summary>What must come out, margins included.</summary>
    public required ImmutableArray<RemovalDemand> Demands { get; init; }

    /// <summary>The boundaries.</summary>
    public required BoundaryResult Boundaries { get; init; }

    /// <summary>The joints: layouts of the lanes and every joint of every repair.</summary>
    public JointPlan Joints { get; init; } = JointPlan.Empty;

    /// <summary>Sealing of the repair joints.</summary>
    public SealPlan Seals { get; init; } = SealPlan.Empty;

    /// <summary>How each repair is lifted out.</summary>
    public LiftPlan Lifts { get; init; } = LiftPlan.Empty;

    /// <summary>Pressure met when sawing.</summary>
    public PressurePlan Pressure { get; init; } = PressurePlan.Empty;

    /// <summary>Opening of each mix on each work night.</summary>
    public ConcretePlan Concrete { get; init; } = ConcretePlan.Empty;

    /// <summary>Partial-depth repairs and sealing.</summary>
    public required ImmutableArray<SurfaceWork> SurfaceWorks { get; init; }

    /// <summary>The quantities.</summary>
    public required QuantityResult Quantities { get; init; }

    /// <summary>Findings of all steps, survey and folder included.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }
}
