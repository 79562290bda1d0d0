using Slabwright.Core.Joints;

namespace Slabwright.Tests.Reference;

/// <summary>
/// IRC:58 style table VII.2.1, bottom-up damage by single axles at a modulus of rupture of 4.95 MPa (tag IRC58-FATIGUE). The law is that
/// of PCA 1984. Stresses are printed to 0.001 MPa, so repetitions deviate by up to 0.9 %; the total damage by 0.1 %.
/// </summary>
public class Irc58FatigueTests
{
    public static TheoryData<double, double, double> Rows { get; } = new()
    {
        { 3.247, 29_396, 6_513 }, { 3.128, 33_546, 12_763 }, { 3.008, 25_974, 25_010 }, { 2.888, 19_986, 49_006 }, { 2.768, 9_064, 96_028 },
        { 2.649, 8_409, 194_161 }, { 2.529, 6_589, 467_647 }, { 2.409, 6_644, 1_562_222 }, { 2.289, 6_644, 10_789_039 },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Allowable_repetitions(double stress, double applied, double allowable)
    {
        Assert.True(applied > 0);
        Assert.Equal(1, ConcreteFatigue.AllowableRepetitions(stress / 4.95) / allowable, 0.009);
    }

    [Fact]
    public void The_damage_adds_up_to_the_printed_total()
    {
        var damage = Rows.Sum(r => r.Data.Item2 / ConcreteFatigue.AllowableRepetitions(r.Data.Item1 / 4.95));
        Assert.Equal(8.745, damage, 0.01);
    }

    [Fact]
    public void Small_stresses_do_no_damage() => Assert.Equal(double.PositiveInfinity, ConcreteFatigue.AllowableRepetitions(2.170 / 4.95));

    /// <summary>Values worked from the printed law by hand: SR 0.50, 0.60 and 0.70.</summary>
    [Theory]
    [InlineData(0.50, 7.620e5)]
    [InlineData(0.60, 3.093e4)]
    [InlineData(0.70, 1.917e3)]
    public void Round_ratios(double ratio, double repetitions) =>
        Assert.Equal(1, ConcreteFatigue.AllowableRepetitions(ratio) / repetitions, 0.001);
}
