namespace Slabwright.Core.Joints.Slabs;

/// <summary>The stretch over which two pieces face one another: across the road for a transverse joint, along it for a long side.</summary>
/// <param name="Low">First place, m.</param> <param name="High">Last place, m.</param> <param name="Found">False where they do not meet.</param>
internal readonly record struct SideRange(double Low, double High, bool Found)
{
    /// <summary>Sides that lie this near one another meet, m: wider than any joint.</summary>
    private const double Near = 0.05;

    public static SideRange Transverse(SlabSystem system, int first, int second)
    {
        if (!Known(system, first) || !Known(system, second) || first == second) return default;
        var (one, two) = (system.Pieces[first], system.Pieces[second]);
        var (low, high) = (Math.Max(one.Left, two.Left), Math.Min(one.Right, two.Right));
        var meets = high > low && Math.Abs(EndAt(one, low) - StartAt(two, low)) < Near && Math.Abs(EndAt(one, high) - StartAt(two, high)) < Near;
        return new SideRange(low, high, meets);
    }

    public static SideRange Longitudinal(SlabSystem system, int left, int right)
    {
        if (!Known(system, left) || !Known(system, right) || left == right) return default;
        var (one, two) = (system.Pieces[left], system.Pieces[right]);
        var low = Math.Max(StartAt(one, one.Right), StartAt(two, two.Left));
        var high = Math.Min(EndAt(one, one.Right), EndAt(two, two.Left));
        return new SideRange(low, high, high > low && Math.Abs(one.Right - two.Left) < Near);
    }

    /// <summary>Where a piece's start side crosses a place across the road.</summary>
    public static double StartAt(SlabPiece piece, double across) => piece.From + piece.StartSkew * (Share(piece, across) - 0.5);

    /// <summary>Where a piece's end side crosses a place across the road.</summary>
    public static double EndAt(SlabPiece piece, double across) => piece.To + piece.EndSkew * (Share(piece, across) - 0.5);

    /// <summary>Share of a piece's width at a place.</summary>
    public static double Share(SlabPiece piece, double across) => (across - piece.Left) / (piece.Right - piece.Left);

    private static bool Known(SlabSystem system, int piece) => piece >= 0 && piece < system.Pieces.Length;
}
