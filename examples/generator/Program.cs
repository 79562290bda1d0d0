using Slabwright.Examples.Marrowby;
using Slabwright.Examples.Ostrevad;

namespace Slabwright.Examples;

/// <summary>Writes the example projects. Usage: <c>dotnet run --project examples/generator -- examples</c>.</summary>
public static class Program
{
    /// <summary>Writes every example below a folder.</summary>
    public static int Main(string[] args)
    {
        if (args.Length != 1)
        {
            Console.Error.WriteLine("Usage: slabwright-examples FOLDER");
            return 2;
        }

        MarrowbyParkway.Write(Path.Combine(args[0], MarrowbyParkway.FolderName));
        OstrevadBypass.Write(Path.Combine(args[0], OstrevadBypass.FolderName));
        return 0;
    }
}
