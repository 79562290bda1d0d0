using System.Collections.Immutable;
using Slabwright.Core.Evidence;

namespace Slabwright.Cli.Commands;

/// <summary>Turns findings into an exit code.</summary>
internal static class Endings
{
    /// <summary>Done, or done with errors when a finding of level error is among them.</summary>
    public static ExitCode Of(ImmutableArray<Finding> findings) =>
        findings.Any(f => f.Level == FindingLevel.Error) ? ExitCode.DoneWithErrors : ExitCode.Done;
}
