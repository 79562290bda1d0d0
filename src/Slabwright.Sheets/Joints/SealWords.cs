using System.Globalization;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Sealing;

namespace Slabwright.Sheets.Joints;

/// <summary>Words about seals.</summary>
public static class SealWords
{
    /// <summary>Kind of sealant as printed.</summary>
    public static string Of(SealantKind kind) => kind switch
    {
        SealantKind.HotPour => "Hot-poured sealant",
        SealantKind.Silicone => "Silicone",
        _ => "Preformed compression seal",
    };

    /// <summary>Mark of a reservoir on sheets and in tables: <c>S1</c> for the first.</summary>
    public static string MarkOf(SealPlan plan, Reservoir reservoir) => MarkOf(plan.Reservoirs.IndexOf(reservoir));

    /// <summary>Mark of a reservoir by its index.</summary>
    public static string MarkOf(int index) => "S" + (index + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>What the joint drawing shows of a joint's reservoir; null where none is chosen.</summary>
    public static JointReservoir? ReservoirOf(SealPlan plan, DesignedJoint designed)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(designed);
        var joint = plan.Joints.FirstOrDefault(j => j.RepairId == designed.RepairId && Math.Abs(j.At - designed.At) < 1e-6);
        if (joint is null || joint.Reservoir < 0 || plan.Reservoirs[joint.Reservoir].Chosen is not { } chosen) return null;
        return new JointReservoir(chosen.Width, chosen.SawDepth);
    }
}
