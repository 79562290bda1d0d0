using System.Collections.Immutable;

namespace Slabwright.Core.Pavement;

/// <summary>The lines of a lane while they are gathered, kept in order so that neighbours are found without looking at all.</summary>
internal sealed class JointLines
{
    private readonly SortedSet<TransverseJoint> _lines;

    public JointLines() => _lines = new(ByPlace.Instance);

    public JointLines(JointLines other) => _lines = new(other._lines, ByPlace.Instance);

    /// <summary>Adds a line unless one stands within a distance.</summary>
    public void Add(TransverseJoint line, double same)
    {
        if (!Near(line.At, same).Any()) _lines.Add(line);
    }

    /// <summary>Lines within a distance of a place.</summary>
    public IEnumerable<TransverseJoint> Near(double at, double distance) =>
        _lines.GetViewBetween(new(at - distance, default), new(at + distance, default));

    public ImmutableArray<TransverseJoint> InOrder() => [.. _lines];

    private sealed class ByPlace : IComparer<TransverseJoint>
    {
        public static readonly ByPlace Instance = new();

        public int Compare(TransverseJoint x, TransverseJoint y) => x.At.CompareTo(y.At);
    }
}
