using Microsoft.Playwright;

namespace Slabwright.SystemTests.Desk;

/// <summary>A page of the desk in the browser, with everything it complained of.</summary>
internal sealed class DeskPage : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly List<string> complaints = [];

    public DeskPage(IBrowserContext context, IPage page)
    {
        (this.context, Page) = (context, page);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning") complaints.Add(message.Text);
        };
        page.PageError += (_, error) => complaints.Add(error);
    }

    public IPage Page { get; }

    /// <summary>Errors and warnings of the console so far, blocked styles and scripts among them.</summary>
    public IReadOnlyList<string> Complaints => complaints;

    public ILocator Find(string selector) => Page.Locator(selector);

    public ILocator Find(string selector, string text) => Page.Locator(selector).Filter(new LocatorFilterOptions { HasText = text }).First;

    /// <summary>Goes to an address and waits until the page answers to clicks.</summary>
    public async Task GoToAsync(string address)
    {
        await Page.GotoAsync(address);
        await Page.WaitForFunctionAsync("() => document.documentElement.dataset.alive === 'yes'");
    }

    /// <summary>Opens a page of the demo and, where it has one, waits for the strip's drawing.</summary>
    public async Task StripAsync() => await Find(".strip-track svg").WaitForAsync();

    public async Task<string[]> ColumnAsync(string table, int column) =>
        [.. (await Find($"table:has(caption:text-is(\"{table}\")) tbody tr > :nth-child({column})").AllInnerTextsAsync()).Select(t => t.Trim())];

    /// <summary>Keeps a picture for the documentation when SLABWRIGHT_SCREENSHOTS names the folder for it.</summary>
    public async Task KeepPictureAsync(string name)
    {
        if (Environment.GetEnvironmentVariable("SLABWRIGHT_SCREENSHOTS") is not { Length: > 0 } folder) return;
        await Page.EvaluateAsync("window.scrollTo(0, 0)");
        await Page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, name + ".png") });
    }

    /// <summary>Keeps a picture of one part of the page, likewise.</summary>
    public async Task KeepPictureAsync(string name, string part)
    {
        if (Environment.GetEnvironmentVariable("SLABWRIGHT_SCREENSHOTS") is not { Length: > 0 } folder) return;
        await Find(part).First.ScreenshotAsync(new LocatorScreenshotOptions { Path = Path.Combine(folder, name + ".png") });
    }

    public async ValueTask DisposeAsync() => await context.DisposeAsync();
}
