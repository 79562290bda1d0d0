using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;

namespace Slabwright.Core.Treatments;

/// <summary>A distress with what the road says about its place: everything a rule may ask for.</summary>
/// <param name="Distress">As surveyed.</param>
/// <param name="Slab">The slab it lies in.</param>
/// <param name="Section">Build-up there.</param>
/// <param name="Cause">Cause as stated, or durability cracking or reactive aggregate seen in the same slab.</param>
/// <param name="BesideEarlierRepair">As surveyed, or touching an earlier repair of the lane.</param>
/// <param name="FreezeThaw">Climate of the road.</param>
/// <param name="Core">Core taken at the distress that found the deepest damage; null when there is none.</param>
internal sealed record DistressFacts(
    Distress Distress, Slab Slab, PavementSection Section, DistressCause Cause, bool BesideEarlierRepair, bool FreezeThaw, CoreSample? Core)
{
    /// <summary>The greater of the depth surveyed and the depth a core found, m; null when neither was measured.</summary>
    public double? Depth => CoreSpeaks ? Core!.DepthOfDamage : Distress.Depth;

    /// <summary>Depth as a share of the slab's thickness, the core's own where it speaks; null when not measured.</summary>
    public double? DepthShare => Depth / Thickness;

    /// <summary>Slab thickness, m.</summary>
    public double Thickness => CoreSpeaks ? Core!.Thickness ?? Section.Thickness : Section.Thickness;

    private bool CoreSpeaks => Core is not null && !(Distress.Depth >= Core.DepthOfDamage);

    public bool Plain => Section.Kind == PavementKind.JointedPlain;

    public bool ThroughOverlay => Distress.ThroughOverlay || Section.OverlayThickness > 0;

    /// <summary>Other distresses of the slab that call for full-depth work; known in the second pass only.</summary>
    public int OtherCallsInSlab { get; init; }

    /// <summary>Slabs in a row with full-depth calls, this one included; known in the second pass only.</summary>
    public int DamagedSlabsInRow { get; init; }

    public static DistressFacts Of(Distress distress, Lane lane, Climate climate, DistressCause materialCause, CoreSample? core)
    {
        var slab = distress.Slab >= 1 && distress.Slab <= lane.SlabCount
            ? lane.SlabByNumber(distress.Slab)
            : lane.SlabAt(distress.Middle);
        var beside = distress.BesideEarlierRepair
            || lane.EarlierRepairs.Any(r => distress.From <= r.To && distress.To >= r.From);
        var cause = distress.Cause == DistressCause.Unknown ? materialCause : distress.Cause;
        return new DistressFacts(distress, slab, lane.SectionAt(distress.Middle), cause, beside, climate.FreezeThaw, core);
    }

    /// <summary>The inputs of the decision, ready to print.</summary>
    public ImmutableArray<ReasonInput> Inputs(UnitSystem units)
    {
        var (small, large, decimals) = units == UnitSystem.UsCustomary ? (Units.Inch, Units.Foot, 2) : (Units.Millimetre, Units.Metre, 0);
        var inputs = ImmutableArray.CreateBuilder<ReasonInput>(12);
        inputs.Add(new ReasonInput("type", TradeWords.Of(Distress.Type)));
        inputs.Add(new ReasonInput("severity", TradeWords.Of(Distress.Severity)));
        Measured("depth", Depth, share: DepthShare, from: CoreSpeaks ? $", core {Core!.Id}" : "");
        Measured("width", Distress.Width);
        Measured("faulting", Distress.Faulting);
        if (Cause != DistressCause.Unknown)
            inputs.Add(new ReasonInput("cause", TradeWords.Of(Cause) + (Distress.Cause == Cause ? "" : ", seen in the same slab")));
        inputs.Add(new ReasonInput("slab", string.Create(CultureInfo.InvariantCulture,
            $"{Slab.Number}, {large.Format(Slab.Length)} long, {small.Format(Thickness, decimals == 0 ? 0 : 1)} thick")));
        inputs.Add(new ReasonInput("pavement", Plain ? "jointed plain" : "jointed reinforced"));
        if (BesideEarlierRepair) inputs.Add(new ReasonInput("place", "in or beside an earlier repair"));
        if (ThroughOverlay) inputs.Add(new ReasonInput("overlay", "come through an asphalt overlay"));
        inputs.Add(new ReasonInput("climate", FreezeThaw ? "freeze-thaw" : "no freeze-thaw"));
        return inputs.ToImmutable();

        void Measured(string name, double? value, double? share = null, string from = "")
        {
            var text = value is { } metres ? small.Format(metres, decimals) : "not measured";
            if (share is { } part) text += $", {Units.Percent.Format(part, 0)} of thickness";
            inputs.Add(new ReasonInput(name, text + from));
        }
    }

    /// <summary>The inputs of a rule that looks at the slab.</summary>
    public ImmutableArray<ReasonInput> SlabInputs(UnitSystem units) =>
        Inputs(units)
            .Add(new ReasonInput("other full-depth calls in the slab", OtherCallsInSlab.ToString(CultureInfo.InvariantCulture)))
            .Add(new ReasonInput("damaged slabs in a row", DamagedSlabsInRow.ToString(CultureInfo.InvariantCulture)));
}
