using Slabwright.Examples.Ltpp;

// dotnet run --project examples/ltpp               computes the comparison and writes docs/ltpp-comparison.md
// dotnet run --project examples/ltpp trim FOLDER   cuts the full LTPP tables in FOLDER down to data/
if (args is ["trim", var source])
{
    Trimming.Trim(source, ExampleFolder.Data);
    Console.WriteLine($"Wrote the trimmed tables to {ExampleFolder.Data}");
    return 0;
}

if (args.Length > 0)
{
    Console.Error.WriteLine("Usage: dotnet run --project examples/ltpp [trim FOLDER]");
    return 2;
}

File.WriteAllText(ExampleFolder.Report, Report.Write(Comparison.Run(LtppData.Load(ExampleFolder.Data))));
Console.WriteLine($"Wrote {ExampleFolder.Report}");
return 0;
