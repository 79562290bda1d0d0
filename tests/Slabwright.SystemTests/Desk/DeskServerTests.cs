using System.IO.Compression;
using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Slabwright.SystemTests.Store;

namespace Slabwright.SystemTests.Desk;

/// <summary>The desk as a server: what it hands out, and whom it refuses.</summary>
[Collection(DeskCollection.Name)]
public sealed partial class DeskServerTests(DeskFixture fixture)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private HttpClient Http => fixture.Desk.Http;

    [Fact]
    public async Task Every_download_is_whole_and_of_its_kind()
    {
        var demo = await fixture.DemoAsync();
        var links = await DownloadsAsync(demo);
        foreach (var ending in new[] { ".pdf", ".xlsx", ".csv", ".geojson", ".gpkg", ".dxf", ".zip" })
            Assert.Contains(links, link => link.EndsWith(ending, StringComparison.Ordinal));

        foreach (var link in links)
        {
            using var answer = await Http.GetAsync(link, Cancel);
            var bytes = await answer.Content.ReadAsByteArrayAsync(Cancel);

            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.True(IsWhole(Path.GetExtension(link), bytes), $"{link} is not what its name says ({bytes.Length} bytes).");
            Assert.NotNull(answer.Content.Headers.ContentDisposition?.FileName);
        }
    }

    [Fact]
    public async Task The_bundle_holds_every_other_download()
    {
        var links = await DownloadsAsync(await fixture.DemoAsync());
        var bundle = Assert.Single(links, link => link.EndsWith("/all-sheets.zip", StringComparison.Ordinal));
        using var archive = new ZipArchive(await Http.GetStreamAsync(bundle, Cancel));

        var names = links.Where(link => link != bundle).Select(link => Uri.UnescapeDataString(link.Split('/')[^1]));
        Assert.Equal(names.Order(StringComparer.Ordinal), archive.Entries.Select(e => e.FullName).Order(StringComparer.Ordinal));
        Assert.All(archive.Entries, entry => Assert.True(entry.Length > 0));
    }

    [Theory]
    [InlineData("/health", HttpStatusCode.OK)]
    [InlineData("/no/such/page", HttpStatusCode.NotFound)]
    [InlineData("/jobs/5f0c7c2a-0000-4000-8000-000000000000", HttpStatusCode.NotFound)]
    [InlineData("/jobs/5f0c7c2a-0000-4000-8000-000000000000/sheets/plan.pdf", HttpStatusCode.NotFound)]
    [InlineData("{0}/sheets/no-such-file.pdf", HttpStatusCode.NotFound)]
    [InlineData("{0}/strip/x?from=100&to=0&width=600", HttpStatusCode.BadRequest)]
    [InlineData("{0}/strip/x?from=0&to=100&width=1e9", HttpStatusCode.BadRequest)]
    [InlineData("{0}/strip/x?from=0&to=100&width=NaN", HttpStatusCode.BadRequest)]
    public async Task Addresses_answer_with_the_right_status(string address, HttpStatusCode status)
    {
        using var answer = await Http.GetAsync(address.Replace("{0}", await fixture.DemoAsync()), Cancel);

        Assert.Equal(status, answer.StatusCode);
    }

    [Fact]
    public async Task The_strip_names_its_repairs_and_carries_no_inline_style()
    {
        var demo = await fixture.DemoAsync();
        var svg = await Http.GetStringAsync($"{demo}/strip/x?from=0&to=2000&width=4000", Cancel);

        Assert.StartsWith("<svg", svg);
        Assert.Matches("data-ref=\"R\\d+\"", svg);
        Assert.DoesNotContain("style=", svg);
    }

    [Fact]
    public async Task Pages_forbid_everything_from_elsewhere_and_inline_scripts()
    {
        using var answer = await Http.GetAsync("/", Cancel);
        var policy = string.Join(' ', answer.Headers.GetValues("Content-Security-Policy"));
        var page = await answer.Content.ReadAsStringAsync(Cancel);

        Assert.Contains("default-src 'self'", policy);
        Assert.DoesNotContain("unsafe", policy);
        Assert.DoesNotMatch("<script(?![^>]*src=)", page);
        Assert.DoesNotMatch("(src|href)=\"https?:", page);
    }

    [Fact]
    public async Task A_page_asked_for_under_another_name_is_refused()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Host = "desk.example";
        using var answer = await Http.SendAsync(request, Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("http://0.0.0.0:0")]
    [InlineData("http://*:7351")]
    [InlineData("http://[::]:7351")]
    [InlineData("http://192.0.2.7:7351")]
    [InlineData("http://127.0.0.1:0;http://desk.example:7351")]
    public async Task The_desk_refuses_to_listen_where_other_machines_can_reach_it(string urls)
    {
        using var data = new TemporaryFolder();
        var (exitCode, output) = await DeskProcess.EndsAsync("--data", data.Path, "--demo", SourceTree.Demo, "--urls", urls);

        Assert.Equal(2, exitCode);
        Assert.Contains("listens on this machine only", output);
    }

    [Fact]
    public async Task An_unknown_option_ends_with_the_list_of_options()
    {
        var (exitCode, output) = await DeskProcess.EndsAsync("--dmo", "x");

        Assert.Equal(2, exitCode);
        Assert.Contains("Unknown option --dmo", output);
        Assert.Contains("--data DIR", output);
    }

    [Theory]
    [InlineData("run")]
    [InlineData("run.cmd")]
    public async Task The_run_commands_give_only_options_the_desk_knows(string script)
    {
        var line = (await File.ReadAllLinesAsync(Path.Combine(SourceTree.Root, script), Cancel)).Single(l => l.Contains("slabwright-desk.dll"));
        var options = line[(line.IndexOf(".dll", StringComparison.Ordinal) + 4)..].Split(' ', StringSplitOptions.RemoveEmptyEntries)[..^1];
        var (exitCode, output) = await DeskProcess.EndsAsync([.. options, "--help"]);

        Assert.Equal(0, exitCode);
        Assert.StartsWith("Usage:", output);
    }

    [Fact]
    public async Task A_second_start_finds_the_job_and_its_plan_in_the_store()
    {
        using var data = new TemporaryFolder();
        string first, second;
        await using (var desk = await DeskProcess.StartAsync(data.Path, SourceTree.SmallDemo))
        {
            await desk.WholeAsync(await desk.FirstJobAsync());
            first = JobLine().Match(await desk.Http.GetStringAsync("/", Cancel)).Value;
        }

        await using (var desk = await DeskProcess.StartAsync(data.Path, SourceTree.SmallDemo))
        {
            await desk.FirstJobAsync();
            second = JobLine().Match(await desk.Http.GetStringAsync("/", Cancel)).Value;
        }

        Assert.Contains("href=\"/jobs/", first);
        Assert.DoesNotContain("not planned", first);
        Assert.Equal(first, second);
    }

    private async Task<List<string>> DownloadsAsync(string demo)
    {
        for (var i = 0; i < 100; i++)
        {
            var page = await Http.GetStringAsync($"{demo}/sheets", Cancel);
            var links = Download().Matches(page).Select(m => WebUtility.HtmlDecode(m.Groups[1].Value)).ToList();
            if (links.Count > 0) return links;
            await Task.Delay(200, Cancel);
        }

        throw new TimeoutException("The sheets were not drawn.");
    }

    private static bool IsWhole(string extension, byte[] bytes) => extension switch
    {
        ".pdf" => Starts(bytes, "%PDF-") && Encoding.Latin1.GetString(bytes[^32..]).Contains("%%EOF"),
        ".xlsx" => Holds(bytes, "xl/workbook.xml"),
        ".zip" => Starts(bytes, "PK"),
        ".gpkg" => Starts(bytes, "SQLite format 3\0"),
        ".dxf" => Encoding.ASCII.GetString(bytes).TrimEnd().EndsWith("EOF", StringComparison.Ordinal),
        ".geojson" => JsonDocument.Parse(bytes).RootElement.GetProperty("type").GetString() == "FeatureCollection",
        ".csv" => Encoding.UTF8.GetString(bytes).Split('\n', StringSplitOptions.RemoveEmptyEntries).Length > 1,
        _ => false,
    };

    private static bool Starts(byte[] bytes, string start) => bytes.AsSpan().StartsWith(Encoding.ASCII.GetBytes(start));

    private static bool Holds(byte[] bytes, string entry)
    {
        using var archive = new ZipArchive(new MemoryStream(bytes));
        return archive.GetEntry(entry) is { Length: > 0 };
    }

    [GeneratedRegex("<a href=\"([^\"]+)\" download=")]
    private static partial Regex Download();

    [GeneratedRegex("<tr><td class=\"wide\"><a href=\"/jobs/([0-9a-f-]{36})\">.*?</td><td.*?</td><td.*?</td>")]
    private static partial Regex JobLine();
}
