using System.Collections.Immutable;
using System.CommandLine;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;
using Slabwright.Core.Handbook;
using Slabwright.Core.Job;
using Slabwright.Core.Measures;
using Slabwright.Data.Weather;

namespace Slabwright.Cli.Commands;

/// <summary>A project as the options ask about it: nights, mixes, deadline, confidence and weather of their own.</summary>
internal static class ConcreteAsked
{
    /// <summary>The project with what is asked; errors are added to the findings.</summary>
    public static Project Of(Project project, ConcreteOptions options, ParseResult parsed, ImmutableArray<Finding>.Builder findings)
    {
        var concrete = project.Settings.Concrete;
        if (concrete.Mixes.IsEmpty)
            findings.Add(Wrong("CON-140", "The project has no mixes.", "mixes.csv", null, "Add mixes.csv, or ask without a project by --by-hand."));
        if (options.Weather(parsed) is { } path) project = WithWeather(project, path, findings);
        concrete = concrete with { Mixes = Mixes(concrete, options.Text(parsed, "mix"), findings), Nights = Nights(concrete, options, parsed, findings) };
        if (options.Text(parsed, "confidence") is { } text)
        {
            if (MeasureText.Read(text, Units.Percent, out var share) == MeasureReading.Read && share is >= 0.5 and <= 0.999) concrete = concrete with { Confidence = share };
            else findings.Add(Wrong("CON-141", "The confidence is not a share from 50 to 99.9 %.", "confidence", text, "Write e.g. --confidence 95%."));
        }

        return project with { Settings = project.Settings with { Concrete = concrete } };
    }

    private static Project WithWeather(Project project, string path, ImmutableArray<Finding>.Builder findings)
    {
        var read = WeatherFile.Read(path);
        findings.AddRange(read.Findings);
        return read.Series is null ? project : project with { Weather = read.Series };
    }

    private static ImmutableArray<Core.Concrete.Mixes.ConcreteMix> Mixes(ConcreteSettings concrete, string? list, ImmutableArray<Finding>.Builder findings)
    {
        if (list is null) return concrete.Mixes;
        var ids = list.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        foreach (var id in ids.Where(i => concrete.Mixes.All(m => !Same(m.Id, i))))
            findings.Add(Wrong("CON-142", "The project has no mix of this identifier.", "mix", id, "Use one of: " + string.Join(", ", concrete.Mixes.Select(m => m.Id)) + "."));
        return [.. concrete.Mixes.Where(m => ids.Any(i => Same(m.Id, i)))];
    }

    private static ImmutableArray<WorkNight> Nights(ConcreteSettings concrete, ConcreteOptions options, ParseResult parsed, ImmutableArray<Finding>.Builder findings)
    {
        var nights = concrete.Nights;
        if (options.Text(parsed, "night") is { } list)
        {
            var asked = ImmutableArray.CreateBuilder<WorkNight>();
            foreach (var text in list.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            {
                if (!ClockText.TryDay(text, out var day)) findings.Add(Wrong("CON-133", "This is not a night.", "night", text, "Write the day on which it begins, e.g. --night 2026-05-04."));
                else if (nights.FirstOrDefault(n => n.Day == day) is { } planned) asked.Add(planned);
                else if (nights is [var first, ..]) asked.Add(first with { Day = day });
                else asked.Add(new WorkNight(day, new TimeOnly(20, 0), new TimeOnly(5, 0)));
            }

            nights = asked.ToImmutable();
        }

        if (options.Text(parsed, "open-by") is { } by)
        {
            if (ClockText.TryRead(by, out var time)) nights = [.. nights.Select(n => n with { OpenBy = time })];
            else findings.Add(Wrong("CON-132", "open-by is not a clock time.", "open-by", by, "Write it as --open-by 5:00."));
        }

        if (nights.IsEmpty && findings.All(f => f.Level != FindingLevel.Error))
            findings.Add(Wrong("CON-143", "The project has no nights of work.", "concrete", null, "Add nights to the part concrete of project.json, or ask for one by --night."));
        return nights;
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private static Finding Wrong(string code, string sentence, string field, string? value, string mend) => new(code, FindingLevel.Error, sentence, new FindingPlace(Field: field), value, mend);
}
