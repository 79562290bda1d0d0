namespace Slabwright.Core.Joints;

/// <summary>What the empirical thickness equation asks besides thickness and traffic. SI.</summary>
public sealed record ThicknessInputs
{
    /// <summary>Modulus of foundation reaction k, Pa/m.</summary>
    public required double Reaction { get; init; }

    /// <summary>Young's modulus of concrete, Pa.</summary>
    public required double Modulus { get; init; }

    /// <summary>Mean modulus of rupture S'c, Pa.</summary>
    public required double Rupture { get; init; }

    /// <summary>Load transfer coefficient J.</summary>
    public required double LoadTransfer { get; init; }

    /// <summary>Drainage coefficient Cd.</summary>
    public required double Drainage { get; init; }

    /// <summary>Serviceability at opening, e.g. 4.5.</summary>
    public required double Initial { get; init; }

    /// <summary>Serviceability at the end, e.g. 2.5.</summary>
    public required double Terminal { get; init; }

    /// <summary>Standard normal deviate ZR of the reliability; −1.645 at 95 %.</summary>
    public required double Deviate { get; init; }

    /// <summary>Overall standard deviation S0 of traffic and performance, log10.</summary>
    public required double Deviation { get; init; }
}

/// <summary>Thickness of a rigid pavement after AASHTO 1993, both ways round.</summary>
/// <remarks>Source: AASHTO Guide 1993, rigid design equation (from memory). Rooted in one road test; k, J and Cd decide much.</remarks>
public static class SlabThickness
{
    private const double Inch = 0.0254;
    private const double Psi = 6894.757293168361;

    /// <summary>18-kip equivalent single axles a slab carries; not a number where the slab is too thin for the equation.</summary>
    /// <param name="thickness">D, m.</param> <param name="x">Everything else.</param>
    public static double EquivalentAxles(double thickness, ThicknessInputs x)
    {
        var d = thickness / Inch;
        var loss = Math.Log10((x.Initial - x.Terminal) / 3.0) / (1 + 1.624e7 / Math.Pow(d + 1, 8.46));
        var strength = x.Rupture / Psi * x.Drainage * (Math.Pow(d, 0.75) - 1.132);
        var stress = 215.63 * x.LoadTransfer
            * (Math.Pow(d, 0.75) - 18.42 / Math.Pow(x.Modulus / Psi / (x.Reaction / (Psi / Inch)), 0.25));
        return Math.Pow(10, x.Deviate * x.Deviation + 7.35 * Math.Log10(d + 1) - 0.06 + loss
            + (4.22 - 0.32 * x.Terminal) * Math.Log10(strength / stress));
    }

    /// <summary>Thickness for a traffic, m, between 3 and 30 in by halving; null when none there carries it or the least already does.</summary>
    /// <param name="axles">18-kip equivalent single axles.</param> <param name="x">Everything else.</param>
    public static double? Needed(double axles, ThicknessInputs x)
    {
        var (low, high) = (3 * Inch, 30 * Inch);
        if (!(EquivalentAxles(high, x) >= axles)) return null;
        while (low < high && !double.IsFinite(EquivalentAxles(low, x))) low += 0.05 * Inch;
        low = LowPoint(low, x);
        if (EquivalentAxles(low, x) >= axles) return null;
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            if (EquivalentAxles(middle, x) >= axles) high = middle;
            else low = middle;
        }

        return high;
    }

    /// <summary>Near the thickness where the stress term vanishes the equation falls with thickness; from its low point on it rises.</summary>
    private static double LowPoint(double from, ThicknessInputs x)
    {
        var at = from;
        while (at < 30 * Inch && EquivalentAxles(at + 0.01 * Inch, x) < EquivalentAxles(at, x)) at += 0.01 * Inch;
        return at;
    }
}
