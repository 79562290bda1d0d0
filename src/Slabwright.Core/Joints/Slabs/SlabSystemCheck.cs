using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Joints.Slabs;

/// <summary>What is wrong with a slab system before anything is computed. A system with an error finding is not solved.</summary>
public static class SlabSystemCheck
{
    /// <summary>Findings, in the order of the pieces; empty where all is sound.</summary>
    public static ImmutableArray<Finding> Of(SlabSystem system)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (system.Pieces.IsEmpty) findings.Add(Bad("JNT-090", "There is no slab to compute.", "pieces", null, "Give at least one slab."));
        foreach (var piece in system.Pieces) AddPiece(findings, piece);
        if (!(system.Reaction > 0))
            findings.Add(Bad("JNT-091", "The foundation must push back.", "reaction", Units.MegapascalPerMetre.Format(system.Reaction, 1), "Give a modulus of foundation reaction above 0."));
        AddOverlaps(findings, system);
        AddMeetings(findings, system);
        AddBars(findings, system);
        foreach (var hollow in system.Voids.Where(v => !(v.To > v.From && v.Right > v.Left && v.Depth > 0)))
            findings.Add(Bad("JNT-096", "A hollow needs an area and a depth above 0.", "void", Metres(hollow.Depth), "Check its four sides and its depth."));
        return findings.ToImmutable();
    }

    private static void AddPiece(ImmutableArray<Finding>.Builder findings, SlabPiece piece)
    {
        void Positive(double value, string field, string what, string shown)
        {
            if (!(value > 0) || double.IsInfinity(value))
                findings.Add(Bad("JNT-092", $"The {what} of {piece.Name} must be above 0.", field, shown, $"Give the {what} of {piece.Name}."));
        }

        Positive(piece.Thickness, "thickness", "thickness", Metres(piece.Thickness));
        Positive(piece.Modulus, "modulus", "modulus", Units.Megapascal.Format(piece.Modulus, 0));
        Positive(piece.To - piece.From - (Math.Abs(piece.StartSkew) + Math.Abs(piece.EndSkew)) / 2, "length", "shortest length", Metres(piece.To - piece.From));
        Positive(piece.Right - piece.Left, "width", "width", Metres(piece.Right - piece.Left));
        Positive(piece.Density, "density", "density", Units.KilogramPerCubicMetre.Format(piece.Density, 0));
        if (!(piece.Poisson is >= 0 and < 0.5))
            findings.Add(Bad("JNT-092", $"Poisson's ratio of {piece.Name} must be from 0 to below 0.5.", "poisson", Number(piece.Poisson), "Concrete has about 0.15 to 0.20."));
    }

    private static void AddOverlaps(ImmutableArray<Finding>.Builder findings, SlabSystem system)
    {
        for (var a = 0; a < system.Pieces.Length; a++)
        {
            for (var b = a + 1; b < system.Pieces.Length; b++)
            {
                var (one, two) = (system.Pieces[a], system.Pieces[b]);
                var along = Math.Min(one.To, two.To) - Math.Max(one.From, two.From) - Skew(one, two);
                var across = Math.Min(one.Right, two.Right) - Math.Max(one.Left, two.Left);
                if (along > 1e-6 && across > 1e-6)
                    findings.Add(Bad("JNT-093", $"{one.Name} and {two.Name} lie over one another.", "pieces", Metres(Math.Min(along, across)), "Move or shorten one of them."));
            }
        }
    }

    private static double Skew(SlabPiece one, SlabPiece two) => new[] { one.StartSkew, one.EndSkew, two.StartSkew, two.EndSkew }.Max(Math.Abs);

    private static void AddMeetings(ImmutableArray<Finding>.Builder findings, SlabSystem system)
    {
        foreach (var meeting in system.Transverse)
        {
            if (!SideRange.Transverse(system, meeting.First, meeting.Second).Found)
                findings.Add(Bad("JNT-094", $"{Name(system, meeting.First)} does not end where {Name(system, meeting.Second)} starts.", "joints", null, "Join only pieces that face one another."));
        }

        foreach (var meeting in system.Longitudinal)
        {
            if (!SideRange.Longitudinal(system, meeting.Left, meeting.Right).Found)
                findings.Add(Bad("JNT-094", $"{Name(system, meeting.Left)} and {Name(system, meeting.Right)} do not lie side by side.", "joints", null, "Join only pieces that face one another."));
        }
    }

    private static void AddBars(ImmutableArray<Finding>.Builder findings, SlabSystem system)
    {
        foreach (var bar in system.Bars)
        {
            var range = SideRange.Transverse(system, bar.First, bar.Second);
            var radius = bar.Bar.Diameter / 2;
            if (!range.Found || bar.Across - radius < range.Low || bar.Across + radius > range.High)
                findings.Add(Bad("JNT-095", $"A bar stands outside the joint between {Name(system, bar.First)} and {Name(system, bar.Second)}.", "bars", Metres(bar.Across), "Move it between the sides of both slabs."));
        }

        foreach (var joint in system.Bars.GroupBy(b => (b.First, b.Second)))
        {
            var sorted = joint.OrderBy(b => b.Across).ToArray();
            for (var n = 1; n < sorted.Length; n++)
            {
                if (sorted[n].Across - sorted[n - 1].Across < (sorted[n].Bar.Diameter + sorted[n - 1].Bar.Diameter) / 2)
                    findings.Add(Bad("JNT-097", "Two bars stand in the same place.", "bars", Metres(sorted[n].Across), "Move or take out one of them."));
            }
        }
    }

    private static string Name(SlabSystem system, int piece) =>
        piece >= 0 && piece < system.Pieces.Length ? system.Pieces[piece].Name : $"piece {piece.ToString(CultureInfo.InvariantCulture)}";

    private static Finding Bad(string code, string sentence, string field, string? value, string mend) =>
        new(code, FindingLevel.Error, sentence, new FindingPlace(Field: field), value, mend);

    private static string Metres(double value) => Units.Metre.Format(value, 3);

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
