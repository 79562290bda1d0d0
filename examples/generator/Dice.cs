namespace Slabwright.Examples;

/// <summary>
/// Repeatable random numbers (SplitMix64, Steele, Lea and Flood 2014), so that the examples come out the same on every machine and
/// every version of .NET.
/// </summary>
public sealed class Dice(ulong seed)
{
    private ulong _state = seed;

    /// <summary>An even number between 0 and 1.</summary>
    public double Next()
    {
        _state += 0x9E3779B97F4A7C15;
        var z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        z ^= z >> 31;
        return (z >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>An even number between two.</summary>
    public double Between(double low, double high) => low + (high - low) * Next();

    /// <summary>A whole number from low to high, both included.</summary>
    public int Whole(int low, int high) => low + (int)(Next() * (high - low + 1));

    /// <summary>True with a chance.</summary>
    public bool Chance(double share) => Next() < share;

    /// <summary>One of several.</summary>
    public T One<T>(params IReadOnlyList<T> items) => items[Whole(0, items.Count - 1)];

    /// <summary>A number near 0 with a spread of about 1: the sum of twelve even numbers less 6, which needs no library function.</summary>
    public double Bell()
    {
        var sum = -6.0;
        for (var i = 0; i < 12; i++) sum += Next();
        return sum;
    }
}
