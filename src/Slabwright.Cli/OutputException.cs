namespace Slabwright.Cli;

/// <summary>The results could not be written; the message says where and why.</summary>
internal sealed class OutputException(string message, Exception inner) : Exception(message, inner);
