namespace Slabwright.Desk.Start;

/// <summary>What the desk was started with.</summary>
/// <param name="DataFolder">Where the store lies.</param>
/// <param name="DemoFolder">Project folder loaded at the start, or a folder of such folders; null for none.</param>
/// <param name="Urls">Addresses to listen on, separated by semicolons.</param>
public sealed record DeskOptions(string DataFolder, string? DemoFolder, string Urls)
{
    public const string DefaultUrls = "http://127.0.0.1:7350";

    public const string Help = """
        Usage: slabwright-desk [--data DIR] [--demo DIR] [--urls URL]

          --data DIR   where the store lies (default: a folder of your own on this machine)
          --demo DIR   project folder to load at the start, or a folder of such folders
                       (default: the examples beside the program)
          --urls URL   address to listen on, this machine only (default: http://127.0.0.1:7350)
          --help       this text
        """;

    private static readonly string[] Known = ["data", "demo", "urls", "help"];

    /// <summary>The first word that is no option of ours, or null; <c>--name value</c> and <c>--name=value</c> are read.</summary>
    public static string? FirstUnknown(string[] args)
    {
        for (var i = 0; i < args.Length; i++)
        {
            var name = args[i].StartsWith("--", StringComparison.Ordinal) ? args[i][2..].Split('=')[0] : "";
            if (!Known.Contains(name)) return args[i];
            if (name != "help" && !args[i].Contains('=')) i++;
        }

        return null;
    }

    public static DeskOptions From(IConfiguration configuration) => new(
        configuration["data"] is { Length: > 0 } data ? Path.GetFullPath(data) : DefaultDataFolder(),
        configuration["demo"] is { Length: > 0 } demo ? Path.GetFullPath(demo) : FindExamples(AppContext.BaseDirectory),
        configuration["urls"] is { Length: > 0 } urls ? urls : DefaultUrls);

    private static string DefaultDataFolder() => Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create), "Slabwright");

    /// <summary>The folder <c>examples</c> beside the program or in a folder above it.</summary>
    private static string? FindExamples(string start)
    {
        for (var folder = new DirectoryInfo(start); folder is not null; folder = folder.Parent)
        {
            var examples = Path.Combine(folder.FullName, "examples");
            if (Directory.Exists(examples)) return examples;
        }

        return null;
    }
}
