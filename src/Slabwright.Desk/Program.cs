using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HostFiltering;
using Slabwright.Data.Store;
using Slabwright.Desk.Jobs;
using Slabwright.Desk.Layout;
using Slabwright.Desk.Start;

if (DeskOptions.FirstUnknown(args) is { } unknown)
{
    Console.Error.WriteLine($"Unknown option {unknown}.\n{DeskOptions.Help}");
    return 2;
}

if (args.Any(a => a == "--help"))
{
    Console.WriteLine(DeskOptions.Help);
    return 0;
}

var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
var options = DeskOptions.From(builder.Configuration);
if (Loopback.Refusal(options.Urls, builder.Configuration.GetSection("Kestrel:Endpoints")) is { } refusal)
{
    Console.Error.WriteLine(refusal);
    return 2;
}

builder.Logging.SetMinimumLevel(LogLevel.Warning).AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
builder.WebHost.UseStaticWebAssets();
builder.WebHost.UseUrls(options.Urls);
builder.Services.Configure<HostFilteringOptions>(o => o.AllowedHosts = ["localhost", "127.0.0.1", "[::1]"]);
builder.Services.AddSingleton(options);
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddProjectStore(options.DataFolder, Engineering.ReadFolder);
builder.Services.AddSingleton<JobDesk>();
builder.Services.AddSingleton<StoreStart>();
builder.Services.AddHostedService(services => services.GetRequiredService<StoreStart>());
builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
builder.Services.AddScoped<UnitChoice>();
builder.Services.AddRazorComponents().AddInteractiveServerComponents();

var app = builder.Build();
app.UseHostFiltering();
app.UseExceptionHandler("/trouble", createScopeForErrors: true);
app.UseSafetyHeaders();
app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
app.UseAntiforgery();
app.MapStaticAssets();
app.MapDownloads();
app.MapRazorComponents<App>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null);

try
{
    await app.StartAsync();
}
catch (IOException trouble)
{
    Console.Error.WriteLine($"The desk cannot listen on {options.Urls}: {trouble.Message} Choose another address with --urls.");
    return 1;
}

Console.WriteLine($"Slabwright desk: {string.Join(' ', app.Urls)}");
Console.WriteLine($"Store: {options.DataFolder}. Stop with Ctrl+C.");
await app.WaitForShutdownAsync();
return 0;
