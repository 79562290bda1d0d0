using Slabwright.Bench.Boundaries;

switch (args.FirstOrDefault())
{
    case "ratio":
        Ratio.Run(args.Length > 1 ? int.Parse(args[1]) : 60);
        return 0;
    case "network":
        Network.Run(args.Length > 1 ? int.Parse(args[1]) : 10_000);
        return 0;
    case "project":
        FiveMiles.Run();
        return 0;
    default:
        Console.Error.WriteLine("usage: ratio [clusters] | network [lane-miles] | project");
        return 2;
}
