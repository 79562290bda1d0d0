using System.Globalization;

namespace Slabwright.Sheets.Figures;

/// <summary>Maps values to places on a chart, and knows round steps for its ticks.</summary>
/// <param name="First">Value at the start.</param>
/// <param name="Last">Value at the end.</param>
/// <param name="Step">Distance of the ticks: 1, 2 or 5 times a power of ten.</param>
/// <param name="Start">Place of the first value.</param>
/// <param name="End">Place of the last value.</param>
public readonly record struct PlotScale(double First, double Last, double Step, double Start, double End)
{
    /// <summary>A scale whose ends are ticks.</summary>
    /// <param name="least">Least value to show.</param>
    /// <param name="greatest">Greatest value to show.</param>
    /// <param name="start">Place of the least.</param>
    /// <param name="end">Place of the greatest.</param>
    /// <param name="ticks">About how many steps.</param>
    public static PlotScale Round(double least, double greatest, double start, double end, int ticks = 5)
    {
        var step = StepFor(least, greatest, ticks);
        return new PlotScale(Math.Floor(least / step + 1e-9) * step, Math.Ceiling(greatest / step - 1e-9) * step, step, start, end).Spread();
    }

    /// <summary>A scale that ends at its values; only the ticks are round.</summary>
    /// <param name="least">Least value to show.</param>
    /// <param name="greatest">Greatest value to show.</param>
    /// <param name="start">Place of the least.</param>
    /// <param name="end">Place of the greatest.</param>
    /// <param name="ticks">About how many steps.</param>
    public static PlotScale Exact(double least, double greatest, double start, double end, int ticks = 5) =>
        new PlotScale(least, greatest, StepFor(least, greatest, ticks), start, end).Spread();

    /// <summary>A round step that divides a range into at most some parts.</summary>
    public static double StepFor(double least, double greatest, int parts)
    {
        var raw = (greatest - least) / parts;
        if (!(raw > 0) || double.IsInfinity(raw)) return 1;
        var power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        foreach (var factor in new[] { 1.0, 2, 5 })
        {
            if (factor * power >= raw * (1 - 1e-9)) return factor * power;
        }

        return 10 * power;
    }

    /// <summary>Place of a value.</summary>
    public double At(double value) => Start + (End - Start) * (value - First) / (Last - First);

    /// <summary>Values of the ticks.</summary>
    public IEnumerable<double> Ticks()
    {
        for (var i = Math.Ceiling(First / Step - 1e-6); i * Step <= Last + Step * 1e-6; i++) yield return i * Step;
    }

    /// <summary>A tick's value with as many decimals as the step needs.</summary>
    public string Text(double value)
    {
        var decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(Step) - 1e-9), 0, 8);
        var text = value.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.TrimStart('-').All(c => c is '0' or '.' or ',') ? text.TrimStart('-') : text.Replace('-', '−');
    }

    /// <summary>Opens a scale that has no extent, so that one value can be shown.</summary>
    private PlotScale Spread() => Last > First ? this : this with { First = First - Step, Last = Last + Step };
}
