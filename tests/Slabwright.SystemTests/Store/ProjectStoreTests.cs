using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Slabwright.Core.Evidence;
using Slabwright.Data.Store;
using Slabwright.SystemTests.Sheets;

namespace Slabwright.SystemTests.Store;

/// <summary>The embedded store against a real SQLite file.</summary>
public sealed class ProjectStoreTests : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 4, 1, 12, 0, 0, TimeSpan.Zero);

    private readonly TemporaryFolder data = new();
    private readonly TemporaryFolder folder = new();
    private readonly ServiceProvider services;
    private FolderContent content = new(new HandMadeJob { Repairs = 6 }.Build().Project, []);

    public ProjectStoreTests()
    {
        services = new ServiceCollection()
            .AddSingleton<TimeProvider>(new FixedClock(Noon))
            .AddProjectStore(data.Path, _ => content)
            .BuildServiceProvider();
        folder.Write("project.json", "{ \"name\": \"Old Quarry Road\" }\r\n"u8.ToArray());
        folder.Write("survey.csv", "id,type\rD1,Corner break\r"u8.ToArray());
    }

    private ProjectStore Store => services.GetRequiredService<ProjectStore>();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_folder_comes_out_as_it_went_in_byte_for_byte()
    {
        folder.Write("empty.csv", []);
        folder.Write("rules/own set.json", [0xEF, 0xBB, 0xBF, .. "{}"u8]);
        folder.Write("photos/a/joint 12.bin", [.. Enumerable.Range(0, 70_000).Select(i => (byte)(i * 31))]);
        var id = await ImportAsync();

        using var target = new TemporaryFolder();
        Assert.True(await Store.ExportFolderAsync(id, target.Of("out"), Cancel));

        Assert.Equal(Contents(folder.Path), Contents(target.Of("out")));
        Assert.Equal(5, Contents(folder.Path).Count);
    }

    [Fact]
    public async Task The_project_is_read_from_the_files_in_the_store()
    {
        var id = await ImportAsync();
        folder.Write("project.json", "changed on disk only"u8.ToArray());
        IReadOnlyDictionary<string, string>? seen = null;
        await using var second = new ServiceCollection()
            .AddSingleton<TimeProvider>(new FixedClock(Noon))
            .AddProjectStore(data.Path, copy => { seen = Contents(copy); return content; })
            .BuildServiceProvider();

        var loaded = await second.GetRequiredService<ProjectStore>().LoadAsync(id, Cancel);

        Assert.Same(content.Project, loaded?.Project);
        Assert.Equal("{ \"name\": \"Old Quarry Road\" }\r\n", System.Text.Encoding.UTF8.GetString(Convert.FromHexString(seen!["project.json"])));
        Assert.Null(await Store.LoadAsync(Guid.NewGuid(), Cancel));
    }

    [Fact]
    public async Task Files_of_other_programs_stay_out()
    {
        folder.Write(".git/config", "x"u8.ToArray());
        folder.Write(".swp", "x"u8.ToArray());
        var id = await ImportAsync();

        using var target = new TemporaryFolder();
        await Store.ExportFolderAsync(id, target.Of("out"), Cancel);

        Assert.Equal(["project.json", "survey.csv"], Contents(target.Of("out")).Keys);
    }

    [Fact]
    public async Task The_list_shows_what_was_read_and_when()
    {
        var id = await ImportAsync();

        var entry = Assert.Single(await Store.ListAsync(Cancel));

        Assert.Equal(id, entry.Id);
        Assert.Equal(content.Project!.Name, entry.Name);
        Assert.Equal(content.Project.UnitSystem, entry.Units);
        Assert.Equal(folder.Path, entry.ImportedFrom);
        Assert.Equal(Noon, entry.ImportedAt);
        Assert.Null(entry.Plan);
        Assert.Equal(entry, await Store.FindAsync(id, Cancel));
    }

    [Fact]
    public async Task Reading_a_folder_again_changes_only_what_changed()
    {
        var id = await ImportAsync();
        var again = await Store.ImportFolderAsync(folder.Path, Cancel);
        Assert.Equal((ImportOutcome.Unchanged, id), (again.Outcome, again.Id));

        folder.Write("survey.csv", "id,type\rD1,Blowup\r"u8.ToArray());
        var changed = await Store.ImportFolderAsync(folder.Path, Cancel);

        Assert.Equal((ImportOutcome.Replaced, id), (changed.Outcome, changed.Id));
        using var target = new TemporaryFolder();
        await Store.ExportFolderAsync(id, target.Of("out"), Cancel);
        Assert.Equal(Contents(folder.Path), Contents(target.Of("out")));
    }

    [Fact]
    public async Task A_folder_that_is_no_project_is_refused_with_its_findings_and_leaves_nothing_behind()
    {
        await Store.PrepareAsync(Cancel);
        var finding = new Finding("ROAD-002", FindingLevel.Error, "The folder has no project.json.", new FindingPlace("project.json"));
        content = new FolderContent(null, [finding]);

        var result = await Store.ImportFolderAsync(folder.Path, Cancel);

        Assert.Equal(ImportOutcome.Refused, result.Outcome);
        Assert.Equal([finding], result.Findings);
        Assert.Empty(await Store.ListAsync(Cancel));
    }

    [Fact]
    public async Task A_missing_folder_is_named_in_a_finding()
    {
        await Store.PrepareAsync(Cancel);

        var result = await Store.ImportFolderAsync(folder.Of("nowhere"), Cancel);

        Assert.Equal("STO-001", Assert.Single(result.Findings).Code);
        Assert.Equal(folder.Of("nowhere"), result.Findings[0].Place.File);
    }

    /// <summary>Pairs have fields, and a joint that outlives the years looked at has an endless life.</summary>
    private static readonly JsonSerializerOptions Everything = new() { IncludeFields = true, NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals };

    [Fact]
    public async Task A_plan_is_kept_whole_for_its_content_and_no_other()
    {
        var (project, plan) = new HandMadeJob { Repairs = 12 }.Build();
        var id = await ImportAsync();
        var hash = (await Store.FindAsync(id, Cancel))!.ContentHash;
        await Store.KeepPlanAsync(id, hash, plan, project.Prices.Currency, Cancel);

        var kept = await Store.FindPlanAsync(id, hash, Cancel);

        Assert.Equal(JsonSerializer.Serialize(plan, Everything), JsonSerializer.Serialize(kept, Everything));
        Assert.Null(await Store.FindPlanAsync(id, "other content", Cancel));
        var entry = await Store.FindAsync(id, Cancel);
        Assert.Equal(new PlanInShort(plan.Boundaries.Repairs.Length, plan.Quantities.Schedule.Total, project.Prices.Currency), entry?.Plan);
    }

    [Fact]
    public async Task A_changed_folder_drops_the_plan_of_the_old_content()
    {
        var (project, plan) = new HandMadeJob { Repairs = 12 }.Build();
        var id = await ImportAsync();
        var before = (await Store.FindAsync(id, Cancel))!.ContentHash;
        await Store.KeepPlanAsync(id, before, plan, project.Prices.Currency, Cancel);
        folder.Write("survey.csv", "id,type\rD1,Blowup\r"u8.ToArray());

        await Store.ImportFolderAsync(folder.Path, Cancel);

        Assert.Null((await Store.FindAsync(id, Cancel))!.Plan);
        Assert.Null(await Store.FindPlanAsync(id, before, Cancel));
    }

    [Fact]
    public async Task A_plan_of_another_engine_is_not_used()
    {
        var (project, plan) = new HandMadeJob { Repairs = 3 }.Build();
        var id = await ImportAsync();
        var hash = (await Store.FindAsync(id, Cancel))!.ContentHash;
        await Store.KeepPlanAsync(id, hash, plan, project.Prices.Currency, Cancel);
        Execute("UPDATE \"plan\" SET EngineVersion = 'older'");

        Assert.Null(await Store.FindPlanAsync(id, hash, Cancel));
        Assert.Null((await Store.FindAsync(id, Cancel))!.Plan);
    }

    [Fact]
    public async Task Export_overwrites_nothing_and_stays_inside_its_folder()
    {
        var id = await ImportAsync();
        using var target = new TemporaryFolder();
        target.Write("mine.txt", "mine"u8.ToArray());
        await Assert.ThrowsAsync<IOException>(() => Store.ExportFolderAsync(id, target.Path, Cancel));
        Assert.Equal(["mine.txt"], Contents(target.Path).Keys);

        Execute("UPDATE project_file SET Path = '../outside.csv' WHERE Path = 'survey.csv'");
        await Assert.ThrowsAsync<IOException>(() => Store.ExportFolderAsync(id, target.Of("in"), Cancel));
        Assert.False(File.Exists(target.Of("outside.csv")));
        Assert.False(await Store.ExportFolderAsync(Guid.NewGuid(), target.Of("none"), Cancel));
    }

    [Fact]
    public async Task Two_readers_of_one_folder_make_one_job()
    {
        await Store.PrepareAsync(Cancel);

        var results = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => Store.ImportFolderAsync(folder.Path, Cancel))));

        Assert.Single(results, r => r.Outcome == ImportOutcome.Added);
        Assert.Equal(3, results.Count(r => r.Outcome == ImportOutcome.Unchanged));
        Assert.Single(await Store.ListAsync(Cancel));
    }

    [Fact]
    public async Task The_file_keeps_a_write_ahead_log_and_its_tables_match_the_model()
    {
        await Store.PrepareAsync(Cancel);

        Assert.Equal("wal", Execute("PRAGMA journal_mode"));
        await using var context = await services.GetRequiredService<IDbContextFactory<StoreContext>>().CreateDbContextAsync(Cancel);
        Assert.False(context.Database.HasPendingModelChanges(), "The model has changed: add a migration (docs/steps/desk.md).");
        Assert.Empty(await context.Database.GetPendingMigrationsAsync(Cancel));
    }

    public void Dispose()
    {
        services.Dispose();
        SqliteConnection.ClearAllPools();
        data.Dispose();
        folder.Dispose();
    }

    private async Task<Guid> ImportAsync()
    {
        await Store.PrepareAsync(Cancel);
        var result = await Store.ImportFolderAsync(folder.Path, Cancel);
        Assert.Equal(ImportOutcome.Added, result.Outcome);
        return result.Id!.Value;
    }

    private object? Execute(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={data.Of(StoreSetup.FileName)}");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }

    private static ImmutableSortedDictionary<string, string> Contents(string folder) => Directory
        .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .ToImmutableSortedDictionary(f => Path.GetRelativePath(folder, f).Replace('\\', '/'), f => Convert.ToHexString(File.ReadAllBytes(f)));

    private sealed class FixedClock(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }
}
