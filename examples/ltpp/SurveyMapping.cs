using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Pavement;
using Slabwright.Core.Survey;

namespace Slabwright.Examples.Ltpp;

/// <summary>
/// Turns a section survey, which gives totals, into distresses on slabs. Each counted thing becomes one distress; cracks and spalls along
/// the lane, given in metres, become one distress for each slab length begun. Where on the section a thing lay is not in the table, so
/// the distresses are dealt out over the slabs one after the other.
/// </summary>
public static class SurveyMapping
{
    /// <summary>Length of an LTPP section, m: 500 ft.</summary>
    public const double SectionLength = 500 * 0.3048;

    /// <summary>Faulting is joined from the nearest faulting survey within this many days.</summary>
    public const int FaultingWithinDays = 183;

    private static readonly (string Column, DistressType Type, bool PerSlabLength)[] BySeverity =
    [
        ("CORNER_BREAKS_NO", DistressType.CornerBreak, false),
        ("DURAB_CRACK_NO", DistressType.DurabilityCracking, false),
        ("LONG_CRACK_L", DistressType.LongitudinalCracking, true),
        ("TRANS_CRACK_NO", DistressType.TransverseCracking, false),
        ("JOINT_SEAL_TRANS_NO", DistressType.TransverseJointSealDamage, false),
        ("LONG_SPALLING_L", DistressType.LongitudinalJointSpalling, true),
        ("TRANS_SPALLING_NO", DistressType.TransverseJointSpalling, false),
        ("PATCH_FLEX_NO", DistressType.PatchDeterioration, false),
        ("PATCH_RIGID_NO", DistressType.PatchDeterioration, false),
    ];

    private static readonly (string Column, DistressType Type)[] WithoutSeverity =
    [
        ("SCALING_NO", DistressType.Scaling),
        ("BLOWUPS_NO", DistressType.Blowup),
        ("PUMPING_NO", DistressType.WaterBleedingAndPumping),
        ("MAP_CRACK_NO", DistressType.MapCracking),
    ];

    private static readonly (string Letter, Severity Severity)[] Letters =
        [("L", Severity.Low), ("M", Severity.Moderate), ("H", Severity.High)];

    /// <summary>The section as a road of one lane. Null when the survey did not count slabs and no other survey of the section did.</summary>
    public static (Road Road, SurveyRecord Survey)? Map(SectionHistory section, SectionSurvey survey)
    {
        var slabs = (int)(survey.Slabs ?? section.Surveys.Select(s => s.Slabs).FirstOrDefault(s => s > 0) ?? 0);
        if (slabs <= 0) return null;
        return (RoadOf(section, survey, slabs), new SurveyRecord(DealtOut(section, survey, slabs), [], []));
    }

    private static Road RoadOf(SectionHistory section, SectionSurvey survey, int slabs)
    {
        var layer = section.Layers.OrderBy(l => Math.Abs(l.ConstructionNumber - survey.ConstructionNumber))
            .ThenByDescending(l => l.Number).FirstOrDefault();
        var kind = layer?.Material == 5 ? PavementKind.JointedReinforced : PavementKind.JointedPlain;
        var joints = Enumerable.Range(0, slabs + 1).Select(i => new TransverseJoint(
            SectionLength * i / slabs, i == 0 || i == slabs ? JointKind.PavementEnd : JointKind.Dowelled));
        var lane = new Lane
        {
            Number = 1, Width = 12 * 0.3048, From = 0, To = SectionLength, LeftEdge = LaneEdge.TiedLane, RightEdge = LaneEdge.AsphaltShoulder,
            Joints = [.. joints], Sections = [new PavementSection(0, SectionLength, kind, layer?.Thickness ?? 9 * 0.0254, BaseKind.Granular)],
        };
        return new Road
        {
            Name = section.Key.ToString(), Length = SectionLength, Stationing = new Stationing { Style = StationStyle.Metres },
            Lanes = [lane], Climate = new Climate(FreezeThaw: false),
        };
    }

    private static ImmutableArray<Distress> DealtOut(SectionHistory section, SectionSurvey survey, int slabs)
    {
        var slabLength = SectionLength / slabs;
        var crackFaulting = Nearest(section.CrackFaulting, survey.Day);
        var distresses = ImmutableArray.CreateBuilder<Distress>();
        foreach (var (column, type, perSlabLength) in BySeverity)
        {
            foreach (var (letter, severity) in Letters)
            {
                var amount = survey.Value($"{column}_{letter}");
                Add(type, severity, perSlabLength ? Math.Ceiling(amount / slabLength) : amount);
            }
        }

        foreach (var (column, type) in WithoutSeverity) Add(type, Severity.None, survey.Value(column));
        if (survey.Value("POLISH_AGG_A") > 0) Add(DistressType.PolishedAggregate, Severity.None, 1);
        if (Nearest(section.JointFaulting, survey.Day) is { } faulting && faulting != 0)
            Add(DistressType.Faulting, Severity.None, 1, faulting);
        return distresses.ToImmutable();

        void Add(DistressType type, Severity severity, double count, double? faultingThere = null)
        {
            for (var i = 0; i < count; i++)
            {
                var slab = distresses.Count % slabs + 1;
                distresses.Add(new Distress
                {
                    Id = (distresses.Count + 1).ToString(CultureInfo.InvariantCulture), Lane = 1, Type = type, Severity = severity,
                    Slab = slab, From = (slab - 0.5) * slabLength, To = (slab - 0.5) * slabLength, SurveyedOn = survey.Day,
                    Faulting = type == DistressType.TransverseCracking ? crackFaulting : faultingThere,
                });
            }
        }
    }

    private static double? Nearest(IReadOnlyList<(DateOnly Day, double Faulting)> faulting, DateOnly day)
    {
        var near = faulting.Where(f => Math.Abs(f.Day.DayNumber - day.DayNumber) <= FaultingWithinDays)
            .OrderBy(f => Math.Abs(f.Day.DayNumber - day.DayNumber)).ThenBy(f => f.Day).ToList();
        return near.Count > 0 ? near[0].Faulting : null;
    }
}
