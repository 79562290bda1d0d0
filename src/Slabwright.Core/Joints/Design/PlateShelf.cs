using System.Collections.Immutable;

namespace Slabwright.Core.Joints.Design;

/// <summary>
/// Plate models by build-up: factored once however many lanes share a build-up, side by side on the cores there are. Each model is worked
/// on by one thread, so the answers do not depend on how many there are.
/// </summary>
internal sealed class PlateShelf
{
    private readonly Dictionary<object, PlateMechanics> _models = [];

    /// <summary>Makes the models of build-ups not there yet, with the answers for every candidate.</summary>
    public void Fill(IEnumerable<(JointConditions Conditions, ImmutableArray<BarLayout?> Candidates)> wanted)
    {
        var missing = wanted.DistinctBy(w => Key(w.Conditions)).Where(w => !_models.ContainsKey(Key(w.Conditions))).ToArray();
        var made = new PlateMechanics[missing.Length];
        Parallel.For(0, missing.Length, n =>
        {
            made[n] = new PlateMechanics(missing[n].Conditions, missing[n].Candidates);
            foreach (var bars in missing[n].Candidates) made[n].Warm(bars);
        });
        for (var n = 0; n < missing.Length; n++) _models[Key(missing[n].Conditions)] = made[n];
    }

    public PlateMechanics Of(JointConditions conditions) => _models[Key(conditions)];

    /// <summary>What a plate model depends on; traffic and climate enter later.</summary>
    private static object Key(JointConditions c) => (
        (c.Thickness, c.LaneWidth, Math.Min(c.OldSlab, JointSlabs.Feels * c.Radius), c.Repair),
        (c.Modulus, c.Poisson, c.Reaction, c.JointWidth, c.DowelSupport, c.SteelModulus, c.TyrePressure),
        (c.ClearLeft, c.ClearRight, string.Join(',', JointLoads.ShapeKeys(c))));
}
