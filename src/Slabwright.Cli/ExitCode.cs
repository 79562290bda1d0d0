namespace Slabwright.Cli;

/// <summary>How the command ended; documented in docs/command-line.md for those who call it from scripts.</summary>
internal enum ExitCode
{
    /// <summary>Done; no finding of level error.</summary>
    Done = 0,

    /// <summary>Done, but some rows or demands were set aside: at least one finding of level error.</summary>
    DoneWithErrors = 1,

    /// <summary>The command line itself is wrong.</summary>
    Usage = 2,

    /// <summary>The project or file could not be read at all.</summary>
    InputUnusable = 3,

    /// <summary>The results could not be written.</summary>
    OutputUnwritable = 4,

    /// <summary>Stopped by Ctrl+C.</summary>
    Cancelled = 130,

    /// <summary>A mistake of the program itself.</summary>
    Internal = 70,
}
