using System.CommandLine;
using Slabwright.Cli;
using Slabwright.Cli.Commands;

var root = new RootCommand("Slabwright: from a condition survey of a jointed concrete road to a priced repair plan and its sheets.")
{
    PlanCommand.Build(),
    SurveyCommand.Build(),
    TreatmentsCommand.Build(),
    BoundariesCommand.Build(),
    JointsCommand.Build(),
    ConcreteCommand.Build(),
    QuantitiesCommand.Build(),
    SheetsCommand.Build(),
    RulesCommand.Build(),
    CalcCommand.Build(),
};

var parsed = root.Parse(args);
if (parsed.Errors.Count > 0)
{
    foreach (var error in parsed.Errors) Console.Error.WriteLine(error.Message);
    Console.Error.WriteLine("See: slabwright --help");
    return (int)ExitCode.Usage;
}

try
{
    return await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
}
catch (OperationCanceledException)
{
    Console.Error.WriteLine("Stopped.");
    return (int)ExitCode.Cancelled;
}
catch (OutputException exception)
{
    Console.Error.WriteLine(exception.Message);
    return (int)ExitCode.OutputUnwritable;
}
catch (Exception exception)
{
    Console.Error.WriteLine("Slabwright made a mistake of its own: " + exception);
    return (int)ExitCode.Internal;
}
