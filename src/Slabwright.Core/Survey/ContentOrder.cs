namespace Slabwright.Core.Survey;

/// <summary>Orders distresses by what they say, apart from identifier and origin, so that file order does not matter.</summary>
internal sealed class ContentOrder : IComparer<Distress>
{
    /// <summary>The order.</summary>
    public static ContentOrder Instance { get; } = new();

    /// <inheritdoc/>
    public int Compare(Distress? x, Distress? y)
    {
        if (x is null || y is null) return (x is null ? 0 : 1) - (y is null ? 0 : 1);
        var c = x.Lane.CompareTo(y.Lane);
        if (c == 0) c = x.Type.CompareTo(y.Type);
        if (c == 0) c = x.From.CompareTo(y.From);
        if (c == 0) c = x.To.CompareTo(y.To);
        if (c == 0) c = x.Slab.CompareTo(y.Slab);
        if (c == 0) c = x.Severity.CompareTo(y.Severity);
        if (c == 0) c = x.SurveyedOn.CompareTo(y.SurveyedOn);
        if (c == 0) c = x.Count.CompareTo(y.Count);
        if (c == 0) c = Nullable.Compare(x.OffsetFrom, y.OffsetFrom);
        if (c == 0) c = Nullable.Compare(x.OffsetTo, y.OffsetTo);
        if (c == 0) c = Sizes(x, y);
        if (c == 0) c = x.Cause.CompareTo(y.Cause);
        if (c == 0) c = x.BesideEarlierRepair.CompareTo(y.BesideEarlierRepair);
        if (c == 0) c = x.ThroughOverlay.CompareTo(y.ThroughOverlay);
        return c == 0 ? string.CompareOrdinal(x.Note, y.Note) : c;
    }

    /// <summary>True when two rows say the same, whatever they are called and wherever they come from.</summary>
    public static bool Same(Distress x, Distress y) => Instance.Compare(x, y) == 0;

    private static int Sizes(Distress x, Distress y)
    {
        var c = Nullable.Compare(x.Depth, y.Depth);
        if (c == 0) c = Nullable.Compare(x.Width, y.Width);
        if (c == 0) c = Nullable.Compare(x.Length, y.Length);
        if (c == 0) c = Nullable.Compare(x.Area, y.Area);
        if (c == 0) c = Nullable.Compare(x.Faulting, y.Faulting);
        return c == 0 ? Nullable.Compare(x.WideningBelow, y.WideningBelow) : c;
    }
}
