using Slabwright.Core.Boundaries;
using Slabwright.Core.Job;
using Slabwright.Core.Quantities;

namespace Slabwright.Sheets.Words;

/// <summary>Lift pieces of the repairs: as the lifting plan has them, else equal pieces along the repair by volume.</summary>
internal sealed class PlannedPieces(RepairPlan plan)
{
    private readonly Dictionary<string, (int Pieces, double Mass)> planned = plan.Lifts.Repairs.ToDictionary(l => l.RepairId, l => (l.Pieces.Length, l.Forces.Mass), StringComparer.Ordinal);

    /// <summary>Number of pieces.</summary>
    public int Of(Repair repair) => planned.TryGetValue(repair.Id, out var lift) ? lift.Pieces : Lifting.Pieces(repair);

    /// <summary>Mass of one piece, kg, dry and by volume.</summary>
    public double MassOf(Repair repair) => planned.TryGetValue(repair.Id, out var lift) ? lift.Mass : Lifting.PieceMass(repair);
}
