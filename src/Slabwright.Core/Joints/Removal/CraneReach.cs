using Slabwright.Core.Boundaries;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Removal;

/// <summary>Where the crane stands and how far it must reach.</summary>
internal static class CraneReach
{
    /// <summary>The crane held against the piece that lies furthest from it.</summary>
    public static CraneCheck Check(Road road, Repair repair, LiftLayout layout, double hookLoad, CraneSetting crane)
    {
        var stand = Stand(road, repair, crane);
        var radius = Rows(layout).SelectMany(_ => Columns(layout), (row, column) => Radius(repair, layout, row, column, stand, crane)).Max();
        var mass = hookLoad / SlabTemperature.Gravity;
        var capacity = LiftMechanics.ChartCapacity(crane.Chart, radius, crane.Reading);
        var allowed = capacity * crane.Share.Value;
        return new(radius, capacity, allowed, mass, allowed / mass - 1, stand);
    }

    /// <summary>Centre of turning: in the lane to the right, else to the left, beside the middle of the repair; in line past its end on a road of one lane.</summary>
    public static LanePoint Stand(Road road, Repair repair, CraneSetting crane)
    {
        var middle = (repair.From + repair.To) / 2;
        if (Beside(road, repair, +1) is { } right) return new(middle, repair.Width + (crane.BesideEdge ?? right.Width / 2));
        if (Beside(road, repair, -1) is { } left) return new(middle, -(crane.BesideEdge ?? left.Width / 2));
        return new(repair.To + crane.InLineDistance, repair.Width / 2);
    }

    /// <summary>Radius to the middle of one piece, m; beside the repair the crane moves on for pieces further along than its reach.</summary>
    public static double Radius(Repair repair, LiftLayout layout, int row, int column, LanePoint stand, CraneSetting crane)
    {
        var along = Math.Abs(repair.From + (row + 0.5) * repair.Length / layout.Along - stand.Along);
        var across = (column + 0.5) * repair.Width / layout.Across - stand.Offset;
        var inLine = stand.Along > repair.To;
        return Math.Sqrt(Square(inLine ? along : Math.Min(along, crane.AlongReach)) + Square(across));
    }

    private static Lane? Beside(Road road, Repair repair, int side)
    {
        var middle = (repair.From + repair.To) / 2;
        return road.Lanes.FirstOrDefault(l => l.Number == repair.Lane + side && l.Covers(middle));
    }

    /// <summary>First and last row: one of them lies furthest off.</summary>
    private static int[] Rows(LiftLayout layout) => [0, layout.Along - 1];

    private static int[] Columns(LiftLayout layout) => [0, layout.Across - 1];

    private static double Square(double value) => value * value;
}
