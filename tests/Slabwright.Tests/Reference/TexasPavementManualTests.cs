using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using static Slabwright.Tests.Treatments.Sample;

namespace Slabwright.Tests.Reference;

/// <summary>TxDOT Pavement Manual, chapter 10 section 2.2: candidates for full-depth repair of jointed pavement.</summary>
public class TexasPavementManualTests
{
    [Theory]
    [InlineData(DistressType.CornerBreak, Severity.Low, null, Treatment.FullDepthRepair)]
    [InlineData(DistressType.ShatteredSlab, Severity.None, null, Treatment.SlabReplacement)]
    [InlineData(DistressType.TransverseCracking, Severity.Low, 9.0, Treatment.FullDepthRepair)]
    [InlineData(DistressType.TransverseCracking, Severity.Moderate, 1.0, Treatment.Seal)]
    [InlineData(DistressType.TransverseCracking, Severity.Moderate, 2.0, Treatment.Seal)]
    public void Section_2_2_candidates_on_a_9_in_slab(DistressType type, Severity severity, double? depthInches, Treatment expected)
    {
        var distress = Distress(type, severity) with { Depth = depthInches * Inch };
        Assert.Equal(expected, DecideOne(Set("texas"), distress).Treatment);
    }
}
