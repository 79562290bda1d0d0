namespace Slabwright.Examples.Ltpp;

/// <summary>A survey with what followed it.</summary>
/// <param name="Section">The section.</param>
/// <param name="Survey">The survey.</param>
/// <param name="Event">The full-depth work that followed within the window; null where none did.</param>
public sealed record Observation(SectionHistory Section, SectionSurvey Survey, WorkEvent? Event);

/// <summary>Chooses the surveys to compare. No choice looks at the distress.</summary>
public static class Sampling
{
    /// <summary>A section without work must have been observed for this long after the survey, months.</summary>
    public const int QuietMonths = 60;

    /// <summary>For every full-depth event the last survey in the months before it, later than any earlier full-depth event.</summary>
    public static List<Observation> Worked(IEnumerable<SectionHistory> sections, int months)
    {
        var worked = new List<Observation>();
        foreach (var section in sections)
        {
            var earlier = DateOnly.MinValue;
            foreach (var work in section.FullDepthEvents)
            {
                var from = earlier;
                var survey = section.Surveys.LastOrDefault(s => s.Day < work.Day && s.Day >= from && s.Day.AddMonths(months) >= work.Day);
                if (survey is not null) worked.Add(new Observation(section, survey, work));
                earlier = work.Day;
            }
        }

        return worked;
    }

    /// <summary>
    /// For every section with no full-depth event on record the last survey after which it stayed in view for five years and was not
    /// overlaid.
    /// </summary>
    public static List<Observation> Quiet(IEnumerable<SectionHistory> sections) =>
        [.. sections
            .Where(s => !s.FullDepthEvents.Any())
            .Select(s => (Section: s, Survey: s.Surveys.LastOrDefault(v => StaysQuiet(s, v, QuietMonths))))
            .Where(p => p.Survey is not null)
            .Select(p => new Observation(p.Section, p.Survey!, null))];

    /// <summary>Every survey whose next months are known: full-depth work followed, or the section stayed in view without an overlay.</summary>
    public static List<Observation> All(IEnumerable<SectionHistory> sections, int months)
    {
        var all = new List<Observation>();
        foreach (var section in sections)
        {
            foreach (var survey in section.Surveys)
            {
                var work = section.FullDepthEvents.FirstOrDefault(e => e.Day > survey.Day && e.Day <= survey.Day.AddMonths(months));
                if (work is not null || StaysQuiet(section, survey, months)) all.Add(new Observation(section, survey, work));
            }
        }

        return all;
    }

    private static bool StaysQuiet(SectionHistory section, SectionSurvey survey, int months)
    {
        var until = survey.Day.AddMonths(months);
        return section.ObservedUntil >= until
            && !section.Events.Any(e => (e.IsFullDepth || e.IsOverlay) && e.Day > survey.Day && e.Day <= until);
    }
}
