namespace Slabwright.Core.Concrete.Maturity;

/// <summary>The forms of strength over maturity, their inverses and their slopes by their constants.</summary>
/// <remarks>
/// Sources: hyperbolic Carino 1984 (from memory), exponential Freiesleben Hansen and Pedersen (from memory), logarithmic Plowman 1956 (from memory).
/// </remarks>
public static class StrengthForms
{
    /// <summary>Constants of a form.</summary>
    public static int ParameterCount(StrengthForm form) => form is StrengthForm.Hyperbolic or StrengthForm.Logarithmic ? 2 : 3;

    /// <summary>Value of a form; the logarithmic one may be negative.</summary>
    /// <param name="form">The form.</param> <param name="constants">Its constants, see <see cref="StrengthCurve.Parameters"/>.</param>
    /// <param name="maturity">Maturity, 0 or more.</param>
    public static double Value(StrengthForm form, ReadOnlySpan<double> constants, double maturity)
    {
        if (maturity <= 0) return form == StrengthForm.Logarithmic ? double.NegativeInfinity : 0;
        switch (form)
        {
            case StrengthForm.Hyperbolic:
                return Saturating(constants[0], constants[1] * maturity);
            case StrengthForm.HyperbolicFromSet:
                return maturity <= constants[2] ? 0 : Saturating(constants[0], constants[1] * (maturity - constants[2]));
            case StrengthForm.Exponential:
                return constants[0] * Math.Exp(-Math.Pow(constants[1] / maturity, constants[2]));
            default:
                return constants[0] + constants[1] * Math.Log10(maturity);
        }
    }

    /// <summary>Maturity at which a form takes a strength; infinite when it never does, 0 for no strength.</summary>
    public static double Inverse(StrengthForm form, ReadOnlySpan<double> constants, double strength)
    {
        if (form == StrengthForm.Logarithmic) return constants[1] > 0 ? Math.Pow(10, (strength - constants[0]) / constants[1]) : double.PositiveInfinity;
        if (strength <= 0) return 0;
        if (strength >= constants[0]) return double.PositiveInfinity;
        var rise = strength / (constants[0] - strength) / constants[1];
        return form switch
        {
            StrengthForm.Hyperbolic => rise,
            StrengthForm.HyperbolicFromSet => constants[2] + rise,
            _ => constants[1] / Math.Pow(Math.Log(constants[0] / strength), 1 / constants[2]),
        };
    }

    /// <summary>Slopes by the logarithms of the constants; by the constants themselves for M0 and the straight line.</summary>
    internal static double[] Slopes(StrengthForm form, ReadOnlySpan<double> constants, double maturity)
    {
        var (slopes, moved) = (new double[constants.Length], constants.ToArray());
        for (var j = 0; j < slopes.Length; j++)
        {
            const double Step = 1e-5;
            var value = constants[j];
            var step = IsLogarithm(form, j) ? Step * value : Step * (Math.Abs(value) + 1e-3);
            moved[j] = value + step;
            var up = Value(form, moved, maturity);
            moved[j] = value - step;
            var down = Value(form, moved, maturity);
            moved[j] = value;
            slopes[j] = (up - down) / (2 * step) * (IsLogarithm(form, j) ? value : 1);
            if (!double.IsFinite(slopes[j])) slopes[j] = 0;
        }

        return slopes;
    }

    /// <summary>True for constants that are fitted by their logarithm and so stay above 0.</summary>
    internal static bool IsLogarithm(StrengthForm form, int constant) =>
        form != StrengthForm.Logarithmic && !(form == StrengthForm.HyperbolicFromSet && constant == 2);

    private static double Saturating(double end, double rise) => end * rise / (1 + rise);
}
