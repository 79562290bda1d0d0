using System.Globalization;
using System.Collections.Immutable;
using Slabwright.Cli.Output;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;

namespace Slabwright.Cli.Commands;

/// <summary>Later specimens held against the strength curves, with the call to move a curve or to make a new one.</summary>
internal static class ConcreteCurves
{
    /// <summary>Prints the checks of every mix.</summary>
    public static int Run(Report report, ConcreteStudy study, ConcreteWords words, ImmutableArray<Finding> findings)
    {
        var results = study.Curves.Where(c => c.Curve is not null)
            .Select(c => (Mix: c.MixId, Curve: c.Curve!, Result: study.Validations.GetValueOrDefault(c.MixId) ?? CurveValidation.Check(c.Curve!, []))).ToArray();
        report.Line("Later specimens against the strength curves: within 10 % a curve holds, from 10 % on it is moved, beyond 15 % made anew (TEX-426-A, from memory).");
        report.Line();
        var table = new TextTable("mix", "age>", "maturity>", "measured>", "curve>", "off>");
        foreach (var (mix, curve, result) in results)
        {
            foreach (var check in result.Checks)
            {
                table.Add(mix, string.Create(CultureInfo.InvariantCulture, $"{check.Break.Hours:0.#} h"), string.Create(CultureInfo.InvariantCulture, $"{check.Maturity:0.#} {curve.Scale.Unit}"),
                    words.Strength(check.Break.Strength), words.Strength(check.Expected), (100 * check.Deviation).ToString("+0.0;−0.0;0.0", CultureInfo.InvariantCulture) + " %");
            }
        }

        report.Table(table);
        report.Line();
        foreach (var (mix, _, result) in results) report.Line($"{mix}: {Call(result)}");
        report.Line();
        ConcretePlanText.Cautions(report);
        ImmutableArray<Finding> all = [.. findings, .. results.SelectMany(r => r.Result.Findings).Where(f => !findings.Contains(f))];
        var document = new
        {
            curves = results.Select(r => new
            {
                r.Mix, r.Result.Verdict, r.Result.Factor, curve = ConcreteDocument.Curve(r.Mix, r.Curve),
                checks = r.Result.Checks.Select(c => new { c.Break.Hours, c.Maturity, c.Break.Strength, c.Expected, c.Deviation, c.Break.Row }),
            }),
            cautions = ConcretePlan.Cautions,
        };
        return report.End("concrete", Endings.Of(all), document, all);
    }

    private static string Call(CurveValidationResult result) => result.Verdict switch
    {
        CurveVerdict.Unchecked => "no later specimens; break some from time to time (use 'check' in breaks.csv).",
        CurveVerdict.Agrees => "the curve holds.",
        CurveVerdict.Adjust => string.Create(CultureInfo.InvariantCulture, $"move the curve: take {result.Factor:0.00} of it, and find out what changed in the mix."),
        _ => "make a new curve; until then open on specimens.",
    };
}
