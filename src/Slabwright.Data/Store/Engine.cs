using Slabwright.Core.Job;

namespace Slabwright.Data.Store;

/// <summary>Names the engine a stored plan was computed with.</summary>
public static class Engine
{
    /// <summary>
    /// Version and the build marks of the engineering and of the readers; builds are deterministic, so the marks change exactly when
    /// the code does.
    /// </summary>
    public static string Version { get; } = $"{typeof(Project).Assembly.GetName().Version?.ToString(3)} {Mark(typeof(Project))}-{Mark(typeof(Engine))}";

    private static string Mark(Type type) => type.Module.ModuleVersionId.ToString("N")[..8];
}
