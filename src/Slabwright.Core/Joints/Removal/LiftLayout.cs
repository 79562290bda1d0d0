using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Removal;

/// <summary>How many pieces a repair is cut into: the same answer for the crane and for the saw cuts paid.</summary>
/// <param name="Along">Pieces along the repair, all equally long.</param>
/// <param name="Across">Pieces across the lane, all equally wide.</param>
public readonly record struct LiftLayout(int Along, int Across)
{
    private const int MostAcross = 3;

    /// <summary>Number of pieces.</summary>
    public int Pieces => Along * Across;

    /// <summary>Length of the cuts between pieces, m.</summary>
    public double CutLength(Repair repair) => (Along - 1) * repair.Width + (Across - 1) * repair.Length;

    /// <summary>
    /// The fewest pieces that keep every limit: none longer than the longest, none heavier than pins, slings, rigging and crane allow.
    /// Where nothing keeps them, the layout that comes nearest.
    /// </summary>
    /// <param name="road">The road; says whether a lane lies beside for the crane.</param>
    /// <param name="repair">The repair.</param>
    /// <param name="settings">Limits.</param>
    public static LiftLayout Of(Road road, Repair repair, LiftingSettings settings)
    {
        var least = LiftCount.Pieces(repair.Length, settings.LongestPiece.Value);
        var first = new LiftLayout(least, 1);
        if (!LiftCheck.Usable(settings)) return first;
        var best = (Layout: first, Use: double.PositiveInfinity);
        foreach (var layout in Candidates(least, repair, settings))
        {
            var use = LiftLimits.Of(road, repair, layout, settings).Max(c => c.Use);
            if (use <= 1 + 1e-6) return layout;
            if (use < best.Use) best = (layout, use);
        }

        return best.Layout;
    }

    /// <summary>Layouts by their number of pieces, full width first.</summary>
    private static IEnumerable<LiftLayout> Candidates(int least, Repair repair, LiftingSettings settings)
    {
        var first = new LiftLayout(least, 1);
        yield return first;
        var most = Math.Max(least, (int)Math.Floor(repair.Length / settings.ShortestPiece.Value + 1e-9));
        var more = Enumerable.Range(1, MostAcross).SelectMany(across => Enumerable.Range(least, most - least + 1).Select(along => new LiftLayout(along, across)));
        foreach (var layout in more.Where(l => l != first).OrderBy(l => l.Pieces).ThenBy(l => l.Across)) yield return layout;
    }
}

/// <summary>The limits of a layout.</summary>
internal static class LiftLimits
{
    private static readonly UnitPair Long = new(Units.Foot, Units.Metre);
    private static readonly UnitPair Mass = new(Units.Pound, Units.Kilogram);
    private static readonly UnitPair Force = new(Units.PoundOfForce, Units.Kilonewton);

    /// <summary>Every limit with its value for one layout.</summary>
    public static ImmutableArray<LimitCheck> Of(Road road, Repair repair, LiftLayout layout, LiftingSettings settings)
    {
        var forces = LiftPlanner.ForcesOf(repair, layout, settings);
        var checks = ImmutableArray.CreateBuilder<LimitCheck>();
        checks.Add(new("length of a piece", repair.Length / layout.Along, settings.LongestPiece.Value, LimitSense.AtMost, Long, settings.LongestPiece.Source));
        if (settings.HeaviestPiece is { } heaviest)
            checks.Add(new("mass of a piece", forces.WetMass, heaviest, LimitSense.AtMost, Mass, Evidence.SourceRef.Project));
        if (settings.PinStrength is { } pin)
            checks.Add(new($"strength asked of a pin, {settings.AnchorFactor:0.##} times its pull", forces.PinStrength, pin, LimitSense.AtMost, Force, settings.PracticeSource));
        if (settings.GearStrength is { } gear)
            checks.Add(new($"strength asked of a sling leg, {settings.GearFactor:0.##} times its pull", forces.GearStrength, gear, LimitSense.AtMost, Force, settings.PracticeSource));
        if (settings.Crane is not { } crane) return checks.ToImmutable();
        var check = CraneReach.Check(road, repair, layout, forces.HookLoad, crane);
        checks.Add(new("crane radius", check.Radius, crane.Chart[^1].Radius, LimitSense.AtMost, Long, Evidence.SourceRef.Project));
        if (check.Allowed is { } allowed)
            checks.Add(new("load on the crane's hook", check.HookMass, allowed, LimitSense.AtMost, Mass, Evidence.SourceRef.Project));
        return checks.ToImmutable();
    }
}
