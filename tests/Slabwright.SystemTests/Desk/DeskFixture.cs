using Microsoft.Playwright;
using Slabwright.SystemTests.Store;

namespace Slabwright.SystemTests.Desk;

/// <summary>Tests that share one running desk.</summary>
[CollectionDefinition(Name)]
public sealed class DeskCollection : ICollectionFixture<DeskFixture>
{
    public const string Name = "Desk";
}

/// <summary>One running desk with the demo, its plan made and whole, and one browser for all tests that look at pages.</summary>
public sealed class DeskFixture : IAsyncLifetime
{
    private static readonly string[] BrowserPaths =
    [
        "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome",
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        @"C:\Program Files\Google\Chrome\Application\chrome.exe", @"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
    ];

    private readonly TemporaryFolder data = new();
    private DeskProcess? desk;
    private IPlaywright? playwright;
    private IBrowser? browser;
    private string? demo;

    internal DeskProcess Desk => desk!;

    public async ValueTask InitializeAsync()
    {
        desk = await DeskProcess.StartAsync(data.Path, SourceTree.Demo);
        await desk.WholeAsync(await DemoAsync());
        if (BrowserPaths.FirstOrDefault(File.Exists) is not { } path) return;
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = path,
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync",
            ],
        });
    }

    /// <summary>A fresh page; the test is skipped where the machine has no browser.</summary>
    internal async Task<DeskPage> OpenAsync(string address = "/", int width = 1440, int height = 900, bool dark = false)
    {
        Assert.SkipWhen(browser is null, "No Chromium on this machine; install the chromium package to run the page tests.");
        var context = await browser!.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = Desk.Address.ToString(),
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
        });
        context.SetDefaultTimeout(60_000);
        await context.GrantPermissionsAsync(["clipboard-read", "clipboard-write"]);
        var page = new DeskPage(context, await context.NewPageAsync());
        await page.GoToAsync(address);
        return page;
    }

    /// <summary>Address of the demo's first page.</summary>
    internal async Task<string> DemoAsync() => demo ??= await Desk.FirstJobAsync();

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        playwright?.Dispose();
        if (desk is not null) await desk.DisposeAsync();
        data.Dispose();
    }
}
