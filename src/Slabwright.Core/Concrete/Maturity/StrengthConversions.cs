using Slabwright.Core.Evidence;
using Slabwright.Core.Joints;

namespace Slabwright.Core.Concrete.Maturity;

/// <summary>A strength turned into another kind, with what it is worth.</summary>
/// <param name="Strength">Strength of the other kind, Pa.</param>
/// <param name="LogSpread">Standard deviation of its logarithm.</param>
/// <param name="Because">The formula and where it comes from.</param>
public sealed record ConvertedStrength(double Strength, double LogSpread, Reason Because);

/// <summary>Conversions between kinds of strength. Every one is labelled; a strength tested in the kind asked for is always better.</summary>
/// <remarks>Formulas fitted on mature cores give nearly twice the published flexural strength at opening and are kept for comparison only.</remarks>
public static class StrengthConversions
{
    private const double Psi = 6894.757293168361;

    /// <summary>Third-point flexural strength over the root of compressive strength, psi: 7.5, between the 5.6 and 9.3 of published pairs at opening.</summary>
    public const double ThirdPointPerRoot = 7.5;

    /// <summary>Centre-point over third-point strength, least published.</summary>
    public const double LeastCentreOverThird = 1.15;

    /// <summary>Centre-point over third-point strength, greatest published.</summary>
    public const double MostCentreOverThird = 1.20;

    /// <summary>Standard deviation of the logarithm of flexural strength by root: a quarter of ln(9.3/5.6), the published pairs taken as 95 %.</summary>
    public static double RootSpread { get; } = Math.Log(9.3 / 5.6) / 4;

    private static readonly SourceRef Root = new("ACI-318", "modulus of rupture 7.5 √f'c; published pairs 5.6 to 9.3", SourceStatus.FromMemory);
    private static readonly SourceRef Points = new("CENTRE-THIRD", "1.15 to 1.20", SourceStatus.FromMemory);

    /// <summary>Modulus of rupture by a power law on mature cores: 22.7741 f'c^0.4082, psi.</summary>
    /// <remarks>Source: FHWA-HRT-12-030, Fig. 172; 185 cores, root mean square error 69 psi. Not for opening.</remarks>
    /// <param name="compressive">Pa.</param>
    public static double MatureRupture(double compressive) => 22.7741 * Math.Pow(compressive / Psi, 0.4082) * Psi;

    /// <summary>Modulus of rupture by a root on mature cores: 10.3022 √f'c, psi.</summary>
    /// <remarks>Source: FHWA-HRT-12-031 ch. 4. Not for opening.</remarks>
    /// <param name="compressive">Pa.</param>
    public static double MatureRuptureByRoot(double compressive) => 10.3022 * Math.Sqrt(compressive / Psi) * Psi;

    /// <summary>Splitting tensile strength on mature cores: 8.9068 f'c^0.4785, psi.</summary>
    /// <remarks>Source: FHWA-HRT-12-031 ch. 6; 541 cores, root mean square error 61 psi.</remarks>
    /// <param name="compressive">Pa.</param>
    public static double MatureSplitting(double compressive) => 8.9068 * Math.Pow(compressive / Psi, 0.4785) * Psi;

    /// <summary>Third-point modulus of rupture of a military manual: 9 √f'c, psi.</summary>
    /// <remarks>Source: TM 5-809-1.</remarks>
    /// <param name="compressive">Pa.</param>
    public static double ThirdPointByManual(double compressive) => 9 * Math.Sqrt(compressive / Psi) * Psi;

    /// <summary>Third-point flexural strength by a root of compressive strength, Pa.</summary>
    public static double ThirdPointOf(double compressive) => ThirdPointPerRoot * Math.Sqrt(compressive / Psi) * Psi;

    /// <summary>Compressive strength that goes with a third-point flexural strength, Pa.</summary>
    public static double CompressiveOf(double thirdPoint) => Math.Pow(thirdPoint / Psi / ThirdPointPerRoot, 2) * Psi;

    /// <summary>Young's modulus from compressive strength, Pa; at early age a rough guide only.</summary>
    public static double Modulus(double compressive) => ConcreteStrength.Modulus(compressive);

    /// <summary>Third-point stress of a beam broken inside the middle third, Pa: P L/(b d²).</summary>
    /// <remarks>Source: IS 516; ASTM C78 (from memory).</remarks>
    /// <param name="load">N.</param> <param name="span">m.</param> <param name="width">m.</param> <param name="depth">m.</param>
    public static double ThirdPointStress(double load, double span, double width, double depth) => load * span / (width * depth * depth);

    /// <summary>Centre-point stress, Pa: 3 P L/(2 b d²).</summary>
    /// <remarks>Source: bending of a simple beam; ASTM C293 (from memory).</remarks>
    /// <param name="load">N.</param> <param name="span">m.</param> <param name="width">m.</param> <param name="depth">m.</param>
    public static double CentrePointStress(double load, double span, double width, double depth) => 1.5 * load * span / (width * depth * depth);

    /// <summary>The strength that must be shown in another kind to show a strength asked for: cautious where a range is published.</summary>
    /// <param name="needed">Strength asked for, Pa.</param> <param name="asked">Kind asked for.</param> <param name="tested">Kind tested.</param>
    public static ConvertedStrength Needed(double needed, StrengthKind asked, StrengthKind tested)
    {
        if (asked == tested) return new(needed, 0, new("same kind", "Tested in the kind asked for.", SourceRef.Project));
        if (asked != StrengthKind.Compressive && tested != StrengthKind.Compressive)
        {
            var factor = asked == StrengthKind.ThirdPointFlexural ? MostCentreOverThird : 1 / LeastCentreOverThird;
            return new(needed * factor, 0.02, Labelled($"Centre-point strength is 1.15 to 1.20 of third-point; the side that asks for more is taken.", Points));
        }

        if (tested == StrengthKind.Compressive)
        {
            var third = asked == StrengthKind.ThirdPointFlexural ? needed : needed / LeastCentreOverThird;
            return new(CompressiveOf(third), 2 * RootSpread, Labelled("Compressive strength from third-point flexure by 7.5 √f'c; pairs at opening scatter from 5.6 to 9.3.", Root));
        }

        var flexural = ThirdPointOf(needed) * (tested == StrengthKind.CentrePointFlexural ? MostCentreOverThird : 1);
        return new(flexural, RootSpread, Labelled("Flexural strength from compression by 7.5 √f'c; pairs at opening scatter from 5.6 to 9.3.", Root));
    }

    private static Reason Labelled(string sentence, SourceRef source) => new("strength conversion", sentence, source);
}
