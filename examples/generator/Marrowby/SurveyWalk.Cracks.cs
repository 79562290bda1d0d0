using Slabwright.Core.Pavement;

namespace Slabwright.Examples.Marrowby;

/// <content>Cracks through slabs.</content>
internal sealed partial class SurveyWalk
{
    private void CornerBreak(Spot spot)
    {
        var slab = Pick(spot, "corner break");
        var leg = Rule(1.5, 5, 0.5);
        var atEnd = _dice.Chance(0.45);
        var outside = _dice.Chance(0.75);
        var (start, end) = (Ft(outside ? slab.Start.AtRightEdge : slab.Start.AtLeftEdge), Ft(outside ? slab.End.AtRightEdge : slab.End.AtLeftEdge));
        var high = Bad(spot, 0.25);
        Add(new()
        {
            Lane = spot.Lane, Type = "corner breaks", Severity = high ? "high" : _dice.One("low", "moderate"),
            From = atEnd ? end - leg : start, To = atEnd ? end : start + leg, OffsetFrom = outside ? 12 - leg : 0, OffsetTo = outside ? 12 : leg, Length = Wheel(leg * 1.4),
            Width = Rule(0.05, high ? 0.6 : 0.2, 0.05), Depth = high && _dice.Chance(0.5) ? 9 : null, Faulting = high ? Rule(0.1, 0.4, 0.05) : null, Cause = "load",
            Note = _dice.One<string>(high ? ["Rocks under trucks", "In three pieces, cold mix in between", "Corner down, water stands on it"] : ["Tight", "Outer corner", "", ""]),
        });
    }

    private void TransverseCrack(Spot spot)
    {
        var slab = Pick(spot, "transverse cracking");
        var at = Ft(slab.Start.At + slab.Length * _dice.Between(0.28, 0.72));
        var severity = Bad(spot, 0.12) ? "high" : _dice.One("low", "low", "moderate", "moderate");
        var length = _dice.Chance(0.8) ? 12 : _dice.Whole(6, 9);
        var broken = severity == "high" ? Rule(0.2, 0.9, 0.1) : 0;
        Add(new()
        {
            Lane = spot.Lane, Type = "transverse cracking", Severity = severity, From = at - broken, To = at + broken, OffsetFrom = 0, OffsetTo = length, Length = length,
            Width = severity switch { "low" => Rule(0.03, 0.1, 0.01), "moderate" => Rule(0.13, 0.24, 0.01), _ => Rule(0.26, 0.9, 0.02) },
            Faulting = severity == "high" ? Rule(0.1, 0.45, 0.05) : null, Widening = severity == "high" && _dice.Chance(0.2) ? Rule(2, 6, 1) : null, Cause = "load",
            Note = _dice.One<string>(severity == "high" ? ["Spalled along, pumps", "Mesh broken, steps under traffic", "Working"] : ["Tight", "Mid-slab", "", "", ""]),
        });
    }

    private void LongitudinalCrack(Spot spot)
    {
        var slab = Pick(spot, "longitudinal cracking");
        var (start, end) = (Ft(slab.Start.At), Ft(slab.End.At));
        var from = start + (end - start) * _dice.Between(0, 0.25);
        var to = Math.Min(end, from + (end - start) * _dice.Between(0.5, 0.8));
        var offset = _dice.Chance(0.6) ? Rule(2.5, 3.8, 0.1) : Rule(7.5, 9.5, 0.1);
        var severity = Bad(spot, 0.08) ? "high" : _dice.One("low", "moderate");
        Add(new()
        {
            Lane = spot.Lane, Type = "longitudinal cracking", Severity = severity, From = from, To = to, OffsetFrom = offset - 0.2, OffsetTo = offset + 0.3,
            Length = Wheel(to - from), Width = severity switch { "low" => Rule(0.03, 0.1, 0.01), "moderate" => Rule(0.14, 0.45, 0.01), _ => Rule(0.55, 0.9, 0.05) },
            Faulting = severity == "high" ? Rule(0.1, 0.5, 0.05) : null, Note = _dice.One("In the wheel path", "Wanders", "Runs into the next slab", "", ""),
        });
    }

    private void Shattered(Spot spot)
    {
        var slab = Pick(spot, "shattered slab");
        Add(new()
        {
            Lane = spot.Lane, Type = "shattered slab", Severity = _dice.One("moderate", "high", "high"), From = Ft(slab.Start.At) + 0.1, To = Ft(slab.End.At) - 0.1, OffsetFrom = 0, OffsetTo = 12,
            Area = Math.Round(Ft(slab.Length) * 12), Count = 1, Cause = "load",
            Note = _dice.One("Four pieces", "Five pieces, two of them loose", "Six pieces, cold mix everywhere", "Pumping along the shoulder joint"),
        });
    }
}
