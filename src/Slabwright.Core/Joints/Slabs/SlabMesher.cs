using Slabwright.Core.Numerics.Plates;

namespace Slabwright.Core.Joints.Slabs;

/// <summary>Meshes one piece: fine at its transverse sides and under the wheels named, coarser between.</summary>
internal static class SlabMesher
{
    public static PlatePanel Panel(SlabSystem system, SlabPiece piece)
    {
        var along = new List<FineStretch> { new(piece.From, piece.From, system.Mesh.AtJoint), new(piece.To, piece.To, system.Mesh.AtJoint) };
        var across = new List<FineStretch>();
        foreach (var wheel in system.FineAt)
        {
            var (start, end) = (wheel.Along - wheel.Length / 2, wheel.Along + wheel.Length / 2);
            var (left, right) = (wheel.Across - wheel.Width / 2, wheel.Across + wheel.Width / 2);
            if (end > piece.From - 1 && start < piece.To + 1) along.Add(new(start, end, wheel.Length * system.Mesh.AtWheel));
            if (right > piece.Left - 1 && left < piece.Right + 1) across.Add(new(left, right, wheel.Width * system.Mesh.AtWheel));
        }

        var (most, growth) = (system.Mesh.Most, system.Mesh.Growth);
        var alongLines = GradedLines.Between(piece.From, piece.To, most, growth, along);
        var acrossLines = GradedLines.Between(piece.Left, piece.Right, most, growth, across);
        var (start0, start1) = (piece.From - piece.StartSkew / 2, piece.From + piece.StartSkew / 2);
        var (end0, end1) = (piece.To - piece.EndSkew / 2, piece.To + piece.EndSkew / 2);
        var hollows = system.Voids;
        return PlatePanel.Between(
            [(start0, piece.Left), (end0, piece.Left), (end1, piece.Right), (start1, piece.Right)],
            PlatePanel.Fractions(alongLines), PlatePanel.Fractions(acrossLines), new PlateSection(piece.Modulus, piece.Poisson, piece.Thickness), system.Reaction,
            hollows.IsEmpty ? null : (x, y) => hollows.Where(h => h.Covers(x, y)).Select(h => h.Depth).DefaultIfEmpty(0).Max());
    }
}
