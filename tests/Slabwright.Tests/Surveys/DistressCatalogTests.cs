using Slabwright.Core.Survey;

namespace Slabwright.Tests.Surveys;

public class DistressCatalogTests
{
    [Fact]
    public void Every_type_has_its_names_and_no_two_share_one()
    {
        Assert.Equal(Enum.GetValues<DistressType>(), DistressCatalog.All.Select(n => n.Type).ToArray());
        var spellings = DistressCatalog.All.SelectMany(n => n.Aliases.Append(n.Name).Append(n.Code).Append(n.Mark).Select(a => (Words.Key(a), n.Type))).Distinct().ToList();
        var shared = spellings.GroupBy(s => s.Item1).Where(g => g.Count() > 1).Select(g => g.Key).ToList();
        Assert.True(shared.Count == 0, $"Spellings with two meanings: {string.Join(", ", shared)}.");
    }

    [Theory]
    [InlineData("4", DistressType.TransverseCracking)]
    [InlineData("5A", DistressType.TransverseJointSealDamage)]
    [InlineData("LTPP 4", DistressType.TransverseCracking)]
    [InlineData("JCP 8b", DistressType.Scaling)]
    [InlineData("4. Transverse cracking", DistressType.TransverseCracking)]
    [InlineData("Transverse Cracking (4)", DistressType.TransverseCracking)]
    [InlineData("12 Faulting", DistressType.Faulting)]
    [InlineData("TRANSVERSE_CRACK", DistressType.TransverseCracking)]
    [InlineData("\"D\"-cracking", DistressType.DurabilityCracking)]
    [InlineData("CornerBreak", DistressType.CornerBreak)]
    [InlineData("blow-up", DistressType.Blowup)]
    [InlineData("Trans. joint spall", DistressType.TransverseJointSpalling)]
    [InlineData("Spalling of Transverse Joints", DistressType.TransverseJointSpalling)]
    [InlineData("ASR", DistressType.ReactiveAggregate)]
    [InlineData("shattered slab", DistressType.ShatteredSlab)]
    [InlineData("Lane-to-Shoulder Drop-off", DistressType.LaneToShoulderDropoff)]
    [InlineData("patch/patch deterioration", DistressType.PatchDeterioration)]
    public void Common_spellings_are_known(string text, DistressType type)
    {
        Assert.True(DistressCatalog.TryFind(text, out var found));
        Assert.Equal(type, found.Type);
    }

    [Theory]
    [InlineData("")]
    [InlineData("5")]
    [InlineData("8")]
    [InlineData("17")]
    [InlineData("4 corner break")]
    [InlineData("alligator")]
    public void What_is_no_type_is_not_guessed(string text) => Assert.False(DistressCatalog.TryFind(text, out _));

    [Fact]
    public void A_slip_of_the_pen_names_its_neighbour() => Assert.Equal("Transverse cracking", DistressCatalog.Nearest("transvers craking"));
}
