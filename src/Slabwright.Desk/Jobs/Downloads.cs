using System.Globalization;
using Slabwright.Sheets.Strip;

namespace Slabwright.Desk.Jobs;

/// <summary>What the browser fetches besides pages: sheets, stretches of the road strip and a sign of life.</summary>
internal static class Downloads
{
    /// <summary>Longest stretch in one drawing, m; keeps one request from drawing a whole network.</summary>
    private const double LongestStretch = 20_000;

    /// <summary>Least height of a lane on the desk, px: room for a repair's mark between two lines of distress letters.</summary>
    private const double LanePx = 46;

    public static void MapDownloads(this WebApplication app)
    {
        app.MapGet("/health", () => Results.Text("ok"));
        app.MapGet("/jobs/{id:guid}/sheets/{file}", SheetAsync);
        app.MapGet("/jobs/{id:guid}/strip/{content}", StripAsync);
    }

    private static async Task<IResult> SheetAsync(Guid id, string file, JobDesk jobs)
    {
        if (await jobs.WholeAsync(id) is not { } job) return Results.NotFound();
        return await job.Sheets.FindAsync(file) is { } found
            ? Results.File(found.Content, found.MediaType, found.Name)
            : Results.NotFound();
    }

    private static async Task<IResult> StripAsync(Guid id, string content, double from, double to, double width, HttpContext http, JobDesk jobs)
    {
        if (await jobs.ShownAsync(id) is not { } job) return Results.NotFound();
        if (!(to > from) || to - from > LongestStretch || !(width is >= 50 and <= 20_000))
            return Results.BadRequest(string.Create(CultureInfo.InvariantCulture,
                $"Give from < to, at most {LongestStretch:0} m apart, and a width from 50 to 20000 px."));
        if (job.Entry.ContentHash.StartsWith(content, StringComparison.Ordinal)) http.Response.Headers.CacheControl = "private, max-age=3600";
        var svg = StripSvg.Render(job.Project, job.Plan, Math.Max(from, 0), Math.Min(to, job.Project.Road.Length), new StripSvgOptions(width) { LeastLanePx = LanePx });
        return Results.Text(svg, "image/svg+xml");
    }
}
