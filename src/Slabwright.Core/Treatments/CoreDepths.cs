using Slabwright.Core.Survey;

namespace Slabwright.Core.Treatments;

/// <summary>Depth of damage found by cores, for the distresses they were taken at.</summary>
internal sealed class CoreDepths
{
    /// <summary>A core speaks for the depth of a distress this near along the road, m: 2 ft, common practice.</summary>
    public const double Reach = 2 * 0.3048;

    private readonly Dictionary<int, CoreSample[]> _byLane;

    public CoreDepths(IEnumerable<CoreSample> cores) => _byLane = cores.Where(c => c.DepthOfDamage > 0)
        .GroupBy(c => c.Lane).ToDictionary(g => g.Key, g => g.OrderBy(c => c.At).ToArray());

    /// <summary>The core that found the deepest damage at a distress; null when none was taken there.</summary>
    public CoreSample? DeepestAt(Distress distress)
    {
        if (!_byLane.TryGetValue(distress.Lane, out var cores)) return null;
        CoreSample? deepest = null;
        for (var i = FirstFrom(cores, distress.From - Reach); i < cores.Length && cores[i].At <= distress.To + Reach; i++)
        {
            if (deepest is null || cores[i].DepthOfDamage > deepest.DepthOfDamage) deepest = cores[i];
        }

        return deepest;
    }

    private static int FirstFrom(CoreSample[] cores, double at)
    {
        var (low, high) = (0, cores.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (cores[middle].At < at) low = middle + 1;
            else high = middle;
        }

        return low;
    }
}
