using System.Collections.Immutable;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Evidence;

namespace Slabwright.Data.Folder;

/// <summary>Mixes and breaks of their specimens, read from a folder that need not be a project.</summary>
/// <param name="Mixes">The mixes.</param> <param name="Breaks">Their breaks.</param> <param name="Findings">What was wrong.</param>
public sealed record MixFolder(ImmutableArray<ConcreteMix> Mixes, ImmutableArray<StrengthBreak> Breaks, ImmutableArray<Finding> Findings)
{
    /// <summary>Heat measured on them.</summary>
    public ImmutableArray<MeasuredHeat> HeatCurves { get; init; } = [];

    /// <summary>Reads mixes.csv, which must be there, and breaks.csv and heat_curves.csv, in the form of a project folder.</summary>
    /// <param name="folder">The folder.</param>
    public static MixFolder Read(string folder)
    {
        var findings = new List<Finding>();
        if (!File.Exists(Path.Combine(folder, FolderFormat.Mixes.Name)))
        {
            findings.Add(new("ROAD-002", FindingLevel.Error, "The folder has no file of mixes.", new(FolderFormat.Mixes.Name), folder,
                "Name a folder with mixes.csv, and breaks.csv for their specimens; docs/steps/project-folder.md says what stands in them."));
            return new([], [], [.. findings]);
        }

        var (mixes, breaks) = MixReader.Read(folder, null, findings);
        var heats = HeatCurveReader.Heats(folder, mixes, findings);
        return new(mixes, breaks, [.. findings]) { HeatCurves = heats };
    }
}
