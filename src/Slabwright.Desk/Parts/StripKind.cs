using Slabwright.Core.Treatments;

namespace Slabwright.Desk.Parts;

/// <summary>Style names of the kinds of work, the same in strip, overview, legend and figures.</summary>
public static class StripKind
{
    public static string ClassOf(Treatment treatment) => treatment switch
    {
        Treatment.SlabRun => "slab-run",
        Treatment.SlabReplacement => "slab-replacement",
        Treatment.FullDepthRepair => "full-depth",
        Treatment.PartialDepthRepair => "partial-depth",
        Treatment.Seal => "seal",
        _ => "leave",
    };
}
