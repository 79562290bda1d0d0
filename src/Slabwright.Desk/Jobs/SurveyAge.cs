using System.Globalization;

namespace Slabwright.Desk.Jobs;

/// <summary>How old the survey is; damage grows from that day on.</summary>
public static class SurveyAge
{
    public static string Words(OpenJob job)
    {
        if (job.Project.Survey.NewestDay is not { } day) return "no survey";
        var months = Math.Round((job.Today.DayNumber - day.DayNumber) / 30.4375, MidpointRounding.AwayFromZero);
        var age = string.Create(CultureInfo.InvariantCulture, $"{months:0} {(months == 1 ? "month" : "months")} old");
        return $"{day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}, {(months < 0 ? "in the future" : age)}";
    }
}
