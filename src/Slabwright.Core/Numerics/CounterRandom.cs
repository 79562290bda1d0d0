namespace Slabwright.Core.Numerics;

/// <summary>
/// Random numbers by place instead of by turn: the same seed and place give the same number whatever was drawn before and on whichever
/// thread, so a simulation comes out the same on one processor and on many.
/// </summary>
/// <remarks>
/// Each place is hashed with the output function of SplitMix64 (Steele, Lea and Flood, OOPSLA 2014), applied once for the seed and
/// once for each index. Good for simulation, not for secrets.
/// </remarks>
/// <param name="seed">Seed of the whole simulation.</param>
public readonly struct CounterRandom(long seed)
{
    private const ulong Golden = 0x9E3779B97F4A7C15;

    /// <summary>The output function of SplitMix64 for a state already advanced.</summary>
    public static ulong Mix(ulong state)
    {
        state = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9;
        state = (state ^ (state >> 27)) * 0x94D049BB133111EB;
        return state ^ (state >> 31);
    }

    /// <summary>A number strictly between 0 and 1.</summary>
    /// <param name="stream">What is drawn.</param> <param name="trial">In which trial.</param> <param name="index">Which of its kind.</param>
    public double Uniform(int stream, int trial, int index)
    {
        var bits = Mix((ulong)seed + Golden);
        bits = Mix(bits + Golden * ((uint)stream + 1UL));
        bits = Mix(bits + Golden * ((uint)trial + 1UL));
        bits = Mix(bits + Golden * ((uint)index + 1UL));
        return ((bits >> 12) + 0.5) * (1.0 / (1UL << 52));
    }

    /// <summary>
    /// One number in each of <paramref name="count"/> equal steps of 0 to 1, in random order: a stratified sample, which settles
    /// quantiles with fewer trials than independent draws.
    /// </summary>
    /// <remarks>Latin hypercube sampling, McKay, Beckman and Conover 1979.</remarks>
    public double[] Stratified(int stream, int count)
    {
        var keys = new double[count];
        var order = new int[count];
        for (var i = 0; i < count; i++) (keys[i], order[i]) = (Uniform(stream, i, 0), i);
        Array.Sort(keys, order);
        var values = new double[count];
        for (var rank = 0; rank < count; rank++) values[order[rank]] = (rank + Uniform(stream, order[rank], 1)) / count;
        return values;
    }
}
