using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Concrete.Mixes;

/// <summary>What is doubtful about a mix.</summary>
public static class MixChecks
{
    /// <summary>Findings of a mix; nothing is changed.</summary>
    /// <param name="mix">The mix.</param> <param name="place">Where it was read.</param>
    public static ImmutableArray<Finding> Of(ConcreteMix mix, FindingPlace place)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var yield = AbsoluteVolume.Yield(mix);
        if (Math.Abs(yield - 1) > 0.03)
        {
            findings.Add(new("CON-010", FindingLevel.Warning, "The ingredients of a cubic metre do not make a cubic metre.", place with { Field = "fine" },
                FormattableString.Invariant($"{yield:0.000} m³"), "Check the masses, the air and the relative densities.", "0.97 to 1.03 m³"));
        }

        if (mix.WaterCement is < 0.25 or > 0.6)
        {
            findings.Add(new("CON-011", FindingLevel.Warning, "The water–cement ratio is not one of repair concrete.", place with { Field = "water" },
                FormattableString.Invariant($"{mix.WaterCement:0.00}"), "Check water and cement.", "0.25 to 0.60"));
        }

        if (mix.Accelerator == Accelerator.CalciumChloride)
        {
            findings.Add(new("CON-012", FindingLevel.Note, "Calcium chloride corrodes dowels, tie bars and mesh.", place with { Field = "accelerator" }, null,
                "Check that the specification allows it; above 27 °C (80 °F) no more than 1 % of the cement.", null, "FHWA-CHECKLIST-FDR"));
            if (mix.AcceleratorDose > 0.02)
            {
                findings.Add(new("CON-013", FindingLevel.Warning, "More calcium chloride than published practice allows.", place with { Field = "accelerator_dose" },
                    FormattableString.Invariant($"{100 * mix.AcceleratorDose:0.0} %"), "Take at most 2 %, at most 1 % above 27 °C (80 °F).", "2 %", "FHWA-CHECKLIST-FDR"));
            }
        }

        return findings.ToImmutable();
    }
}
