using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using static Slabwright.Tests.Treatments.Sample;

namespace Slabwright.Tests.Treatments;

public class DisagreementsTests
{
    [Fact]
    public void Only_distresses_the_sets_call_differently_are_listed_with_every_call()
    {
        var crack = Distress(DistressType.TransverseCracking, Severity.Moderate, 5, "crack") with { Faulting = 0 };
        var corner = Distress(DistressType.CornerBreak, Severity.High, 9, "corner");
        var found = Assert.Single(Disagreements.Find(Road(), Survey(crack, corner), [Common, Set("fhwa")]));
        Assert.Equal("crack", found.DistressId);
        Assert.Equal(
            [new RuleSetCall("common-practice", Treatment.FullDepthRepair, "CP-TRANSVERSE"), new RuleSetCall("fhwa", Treatment.Seal, "FHWA-TRANSVERSE-BELOW")],
            found.Calls);
    }

    [Fact]
    public void One_set_alone_disagrees_with_nobody() =>
        Assert.Empty(Disagreements.Find(Road(), Survey(Distress(DistressType.Blowup)), [Common]));
}
