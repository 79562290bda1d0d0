using Slabwright.Core.Joints;

namespace Slabwright.Tests.Reference;

/// <summary>
/// IRC:58 style table VII.2.1, bottom-up damage by single axles at a modulus of rupture of 4.95 MPa (tag IRC58-FATIGUE). The law is that
/// of PCA 1984. Stresses are printed to 0.001 MPa, so repetitions deviate by up to 0.9 %; the total damage by 0.1 %.
/// </summary>
public sealed class Irc58FatigueChecks : ICheckRows
{
    private const double Rupture = 4.95;

    private static readonly (double Stress, double Applied, double Allowable, double Damage)[] Table =
    [
        (3.247, 29_396, 6_513, 4.513), (3.128, 33_546, 12_763, 2.628), (3.008, 25_974, 25_010, 1.039), (2.888, 19_986, 49_006, 0.408),
        (2.768, 9_064, 96_028, 0.094), (2.649, 8_409, 194_161, 0.043), (2.529, 6_589, 467_647, 0.014), (2.409, 6_644, 1_562_222, 0.004),
        (2.289, 6_644, 10_789_039, 0.001),
    ];

    public IEnumerable<CheckRow> Rows()
    {
        foreach (var (stress, applied, allowable, damage) in Table)
        {
            var repetitions = ConcreteFatigue.AllowableRepetitions(stress / Rupture);
            yield return Row($"repetitions at {stress:0.000} MPa", allowable, repetitions, 0.009 * allowable, "stresses are printed to 0.001 MPa");
            yield return Row($"damage at {stress:0.000} MPa", damage, applied / repetitions, 0.009 * damage + 0.0005, "");
        }

        yield return Row("damage of the table", 8.745, ConcreteFatigue.Damage(FatigueLaw.Pca1984, Table.Select(r => (r.Applied, r.Stress / Rupture))), 0.01, "");
        yield return Row("repetitions at 2.170 MPa", double.PositiveInfinity, ConcreteFatigue.AllowableRepetitions(2.170 / Rupture), 0, "");
    }

    private static CheckRow Row(string what, double published, double ours, double tolerance, string remark) =>
        new("5 Fatigue", "E5.1", "IRC:58 style table VII.2.1 (IRC58-FATIGUE)", what, published, ours, "", tolerance, remark);
}
