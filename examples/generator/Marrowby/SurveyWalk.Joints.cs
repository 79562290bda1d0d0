using Slabwright.Core.Pavement;

namespace Slabwright.Examples.Marrowby;

/// <content>What goes wrong at transverse joints.</content>
internal sealed partial class SurveyWalk
{
    private void JointDeterioration(Spot spot)
    {
        var slab = Pick(spot, "joint deterioration", StartsAtJoint);
        var high = Bad(spot, 0.4);
        var material = spot == DurabilityTwo || spot == DurabilityOne;
        var at = Ft(slab.Start.At);
        Add(new()
        {
            Lane = spot.Lane, Type = "joint deterioration", Severity = high ? "high" : "moderate",
            From = at - Rule(0.4, high ? 2.6 : 1.4, 0.1), To = at + Rule(0.5, high ? 2.8 : 1.5, 0.1), OffsetFrom = 0, OffsetTo = 12, Length = 12,
            Depth = _dice.Chance(0.6) ? Rule(high ? 7 : 4.5, 9, 0.5) : null,
            Widening = _dice.Chance(material ? 0.5 : 0.2) ? Rule(2, material ? 12 : 6, 1) : null,
            Cause = material ? "durability cracking" : _dice.One("load", "joint", "joint", ""),
            Note = _dice.One<string>(high
                ? ["Broken down over full width, asphalt cold patch on top", "Loose pieces, drummy for a yard each side", "Sounded hollow both sides", "Patched by the night gang, already out again", ""]
                : ["Sounds dull beyond the spall", "Sealed over, opens in winter", "Fines on the shoulder", ""]),
        });
    }

    private void DurabilityCracking(Spot spot)
    {
        var slab = Pick(spot, "durability cracking", StartsAtJoint);
        var severity = _dice.One("low", "moderate", "moderate", "high");
        var reach = severity switch { "low" => 0.9, "moderate" => 1.9, _ => 3.2 } + _dice.Between(0, 0.8);
        var at = Ft(slab.Start.At);
        var left = _dice.Chance(0.6) ? 0 : _dice.Whole(4, 7);
        Add(new()
        {
            Lane = spot.Lane, Type = "durability (\"D\") cracking", Severity = severity, From = at - reach, To = at + reach * _dice.Between(0.7, 1.2),
            OffsetFrom = left, OffsetTo = 12, Area = Math.Round(2 * reach * (12 - left)),
            Depth = severity == "high" ? Rule(6, 9.5, 0.5) : null, Widening = _dice.Chance(0.35) ? Rule(3, 12, 1) : null, Cause = "durability cracking",
            Note = _dice.One("Dark stain along the joint", "Crescent cracks at the corner, spreading", "Map stain wider than last time", "", ""),
        });
    }

    private void TransverseSpall(Spot spot)
    {
        var slab = Pick(spot, "spalling of transverse joints", StartsAtJoint);
        var width = Rule(1, 9, 0.5);
        var length = Rule(1.5, 11, 0.5);
        var left = Math.Round(_dice.Between(0, 12 - length), 1);
        var at = Ft(slab.Start.At);
        Add(new()
        {
            Lane = spot.Lane, Type = "spalling of transverse joints", Severity = width < 3 ? "low" : width <= 6 ? "moderate" : "high",
            From = at - width / 24, To = at + width / 24, OffsetFrom = left, OffsetTo = left + length, Length = length, Width = width,
            Depth = _dice.Chance(0.75) ? Rule(0.5, width > 6 ? 5 : 3.5, 0.5) : null,
            Cause = spot == DurabilityTwo || spot == DurabilityOne ? "durability cracking" : _dice.One("", "joint", "joint"),
            Note = _dice.One("Seal gone, stones in the joint", "Popped out under the grader blade", "Old cold mix in it", "", "", ""),
        });
    }

    private void Faulting(Spot spot)
    {
        var slab = Pick(spot, "faulting", StartsAtJoint);
        var at = Ft(slab.Start.At);
        Add(new()
        {
            Lane = spot.Lane, Type = "faulting of transverse joints and cracks", From = at, To = at, OffsetFrom = 0, OffsetTo = 12,
            Faulting = Rule(spot == BeforeBridge ? 0.2 : 0.1, spot == BeforeBridge ? 0.55 : 0.35, 0.05), Cause = "load",
            Note = _dice.One("You can hear it from the shoulder", "Approach side high", "Fines pumped at the edge", "", ""),
        });
    }

    private void Blowup(Spot spot)
    {
        var slab = Pick(spot, "blowup", StartsAtJoint);
        var at = Ft(slab.Start.At);
        Add(new()
        {
            Lane = spot.Lane, Type = "blowups", From = at - Rule(1.5, 3, 0.5), To = at + Rule(1.5, 3.5, 0.5), OffsetFrom = 0, OffsetTo = 12, Length = 12,
            Depth = 10, Cause = "joint", Note = "Lifted in the July heat of last year, milled down and filled with cold mix",
        });
    }

    private void Reflection(Spot spot)
    {
        var slab = Pick(spot, "reflection cracking", StartsAtJoint);
        var at = Ft(slab.Start.At);
        var severity = _dice.One("low", "moderate", "moderate", "high");
        Add(new()
        {
            Lane = spot.Lane, Type = "reflection cracking", Severity = severity, From = at - (severity == "high" ? 0.8 : 0.2), To = at + (severity == "high" ? 0.9 : 0.2),
            OffsetFrom = 0, OffsetTo = 12, Length = 12, Width = severity switch { "low" => 0.1, "moderate" => 0.3, _ => 0.8 }, ThroughOverlay = true,
            Depth = severity == "high" ? Rule(7, 10, 0.5) : null, Note = _dice.One("Joint came through, edges ravelled", "Second crack beside it", "Sealed in 2022, open again", ""),
        });
    }

    private void SealDamage(Spot spot)
    {
        var slab = Pick(spot, "seal damage", StartsAtJoint);
        var at = Ft(slab.Start.At);
        Add(new()
        {
            Lane = spot.Lane, Type = "transverse joint seal damage", Severity = _dice.One("low", "moderate", "high"), From = at, To = at, OffsetFrom = 0, OffsetTo = 12,
            Length = 12, Count = 1, Note = _dice.One("Seal pulled off one face", "Grass in it", "Gone", ""),
        });
    }
}
