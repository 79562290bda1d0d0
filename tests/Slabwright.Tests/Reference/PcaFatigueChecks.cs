using Slabwright.Core.Joints;

namespace Slabwright.Tests.Reference;

/// <summary>
/// PCA 1984 design problem 1A (from memory): 9.5 in, dowelled, no concrete shoulder, k 130 pci, MR 650 psi, load safety factor 1.2;
/// equivalent stress 206 psi (single, 18 kip) and 192 psi (tandem, 36 kip). The printed repetitions are read off a nomograph: within 13 %.
/// And all laws at round ratios, worked independently.
/// </summary>
public sealed class PcaFatigueChecks : ICheckRows
{
    private const string Section = "5 Fatigue";
    private const string Pca = "PCA EB109 1984, design problem 1A (from memory)";
    private const string Independent = "Fatigue laws (from memory) at round ratios; worked independently";

    private static readonly (double Stress, double Standard, double Load, double Passes, double Printed)[] Axles =
    [
        (206, 18, 36.0, 6_310, 27_000), (206, 18, 33.6, 14_690, 77_000), (206, 18, 31.2, 30_140, 230_000), (206, 18, 28.8, 64_410, 1.2e6),
        (192, 36, 62.4, 21_320, 1.1e6),
    ];

    public IEnumerable<CheckRow> Rows()
    {
        foreach (var axle in Axles)
        {
            yield return new(
                Section, "E5.2", Pca, $"repetitions, {(axle.Standard > 20 ? "tandem" : "single")} axle of {axle.Load} kip", axle.Printed,
                ConcreteFatigue.AllowableRepetitions(Ratio(axle)), "", 0.13 * axle.Printed, "printed value read off a nomograph");
        }

        var used = ConcreteFatigue.Damage(FatigueLaw.Pca1984, Axles.Select(a => (a.Passes, Ratio(a))));
        yield return new(Section, "E5.2", Pca, "fatigue used", 62.8, 100 * used, "%", 6, "the nomograph rounds repetitions up");
        (double Ratio, double Pca, double Zero, double New, double Report)[] rows =
            [(0.50, 7.620e5, 6.383e8, 4.560e4, 1.247e5), (0.60, 3.093e4, 1.107e7, 5.368e3, 1.469e4), (0.70, 1.917e3, 1.919e5, 1.231e3, 3.369e3)];
        foreach (var row in rows)
        {
            yield return Law(FatigueLaw.Pca1984, row.Ratio, row.Pca);
            yield return Law(FatigueLaw.ZeroMaintenance50, row.Ratio, row.Zero);
            yield return Law(FatigueLaw.Nchrp137A, row.Ratio, row.New);
            yield return Law(FatigueLaw.Nchrp137AReport, row.Ratio, row.Report);
        }

        yield return Law(FatigueLaw.ZeroMaintenance24, 0.50, 6.3826e7);
        yield return Law(FatigueLaw.Power213, 0.50, 7.8245e4);
        yield return Law(FatigueLaw.Nchrp126, 0.50, 3.6179e6);
        yield return Law(FatigueLaw.VesicSaxena, 0.50, 3.6e6);
        yield return Law(FatigueLaw.Are, 0.50, 2.1690e5);
    }

    private static double Ratio((double Stress, double Standard, double Load, double Passes, double Printed) axle) =>
        ConcreteFatigue.ScaledStress(axle.Stress, axle.Load, axle.Standard) / 650;

    private static CheckRow Law(FatigueLaw law, double ratio, double repetitions) => new(
        Section, "table 5.1", Independent, $"{FatigueLaws.Of(law).Name}, SR {ratio:0.00}", repetitions,
        ConcreteFatigue.AllowableRepetitions(law, ratio), "", 0.0006 * repetitions);
}
