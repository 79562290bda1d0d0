using System.Globalization;
using Slabwright.Core.Concrete.Maturity;

namespace Slabwright.Tests.Reference;

/// <summary>
/// The forms of strength over age against every mix of the open strength data that was tested at five ages or more: one age is left out, the
/// form fitted to the others and asked for it. Inside the tested ages that judges the form; beyond the last one it shows what extending costs.
/// </summary>
public sealed class StrengthAgeSeriesChecks : ICheckRows
{
    private const string Source = "I-C. Yeh, open data of 790 strengths (YEH-1998, CC BY 4.0); each age left out of the fit in turn";

    private static readonly (string Name, double From, double To)[] Classes =
        [("w/cm to 0.35", 0, 0.35), ("w/cm 0.35 to 0.45", 0.35, 0.45), ("w/cm 0.45 to 0.55", 0.45, 0.55), ("w/cm over 0.55", 0.55, 9)];

    private static readonly StrengthForm[] Forms = [StrengthForm.Hyperbolic, StrengthForm.HyperbolicFromSet, StrengthForm.Exponential, StrengthForm.Logarithmic];

    private sealed record Series(double WaterCement, (double Days, double Strength)[] Points);

    private readonly record struct Guess(double Measured, double Predicted);

    /// <inheritdoc/>
    public IEnumerable<CheckRow> Rows()
    {
        var all = Read().ToArray();
        foreach (var (name, from, to) in Classes)
        {
            var series = all.Where(s => s.WaterCement > from && s.WaterCement <= to).ToArray();
            foreach (var form in Forms)
            {
                yield return Row(name, form, "an age between", series.SelectMany(s => Enumerable.Range(1, s.Points.Length - 2).Select(i => Left(s, i, form))), 0.08);
                yield return Row(name, form, "the oldest", series.Select(s => Left(s, s.Points.Length - 1, form)), 0.20);
            }
        }
    }

    private static CheckRow Row(string name, StrengthForm form, string which, IEnumerable<Guess?> guesses, double tolerance)
    {
        var all = guesses.ToArray();
        var known = all.OfType<Guess>().ToArray();
        var rms = Math.Sqrt(known.Average(g => Math.Pow(g.Predicted - g.Measured, 2)));
        var off = known.Select(g => Math.Abs(g.Predicted / g.Measured - 1)).Order().ToArray();
        var unfitted = all.Length == known.Length ? "" : $"; {all.Length - known.Length} without a fit";
        var measured = known.Average(g => g.Measured);
        return new("C10 Open strength data", name, Source, $"{StrengthCurveFit.Words(form).TrimEnd(',')}, mean strength at {which}", Math.Round(measured, 2), known.Average(g => g.Predicted), "MPa", tolerance * measured,
            string.Create(CultureInfo.InvariantCulture, $"{known.Length} strengths, root mean square {rms:0.0} MPa, nine of ten within {100 * off[(int)(0.9 * (off.Length - 1))]:0} %, worst {100 * off[^1]:0} %{unfitted}"));
    }

    /// <summary>Measured and predicted strength of an age left out; null where the form does not fit the others.</summary>
    private static Guess? Left(Series series, int index, StrengthForm form)
    {
        var rest = series.Points.Where((_, i) => i != index).Select(p => new MaturityStrength(24 * p.Days, p.Strength * 1e6)).ToArray();
        var (days, measured) = series.Points[index];
        return StrengthCurveFit.Fit(form, StrengthKind.Compressive, MaturityScale.Age, rest) is { } curve && curve.Strength(24 * days) is > 0 and var strength && double.IsFinite(strength)
            ? new Guess(measured, strength / 1e6)
            : null;
    }

    /// <summary>Mixes tested at five ages or more; results of one age averaged.</summary>
    private static IEnumerable<Series> Read() => File.ReadLines(Path.Combine(AppContext.BaseDirectory, "data", "concrete", "concrete_strength.csv")).Skip(1)
        .Select(l => Array.ConvertAll(l.Split(','), c => double.Parse(c, CultureInfo.InvariantCulture)))
        .GroupBy(r => string.Join('|', r[..7]))
        .Select(g => new Series(g.First()[3] / (g.First()[0] + g.First()[1] + g.First()[2]), [.. g.GroupBy(r => r[7]).OrderBy(a => a.Key).Select(a => (a.Key, a.Average(r => r[8])))]))
        .Where(s => s.Points.Length >= 5);
}
