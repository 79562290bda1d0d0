namespace Slabwright.Core.Concrete.Maturity;

/// <summary>How a strength is tested.</summary>
public enum StrengthKind
{
    /// <summary>Cylinders crushed.</summary>
    Compressive,

    /// <summary>Beams bent by loads at the third points: modulus of rupture.</summary>
    ThirdPointFlexural,

    /// <summary>Beams bent by a load at mid-span.</summary>
    CentrePointFlexural,
}

/// <summary>Forms of the curve of strength over maturity.</summary>
public enum StrengthForm
{
    /// <summary>S = Su k M/(1 + k M).</summary>
    Hyperbolic,

    /// <summary>S = Su k (M − M0)/(1 + k (M − M0)), no strength before M0.</summary>
    HyperbolicFromSet,

    /// <summary>S = Su exp(−(τ/M)^a).</summary>
    Exponential,

    /// <summary>S = a + b log10 M; no end strength, negative when young: for the range tested only.</summary>
    Logarithmic,
}

/// <summary>A strength with its band.</summary>
/// <param name="Low">Lower end, Pa.</param> <param name="Middle">The curve, Pa.</param> <param name="High">Upper end, Pa.</param>
public readonly record struct StrengthBand(double Low, double Middle, double High);

/// <summary>Where a curve comes from; a curve measured on the mix wins over any other.</summary>
public enum CurveOrigin
{
    /// <summary>Fitted to specimens of the mix.</summary>
    Measured,

    /// <summary>Fitted to specimens of the mix tested another way and converted.</summary>
    Converted,

    /// <summary>Estimated from what is in the mix; published early strengths differ from such estimates by a factor of two.</summary>
    Composition,
}
