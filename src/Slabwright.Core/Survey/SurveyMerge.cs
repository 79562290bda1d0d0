using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Slabwright.Core.Survey;

/// <summary>A row that reads otherwise than before.</summary>
/// <param name="Before">As it was.</param>
/// <param name="After">As it is, under the same identifier.</param>
public sealed record SurveyChange(Distress Before, Distress After);

/// <summary>What reading a corrected file changes.</summary>
/// <param name="Survey">The survey to go on with: the fresh rows, each under the identifier it had before.</param>
/// <param name="Added">Rows that are new.</param>
/// <param name="Changed">Rows that read otherwise.</param>
/// <param name="Removed">Rows that are gone.</param>
/// <param name="Unchanged">Number of rows that read as before.</param>
public sealed record SurveyMergeResult(
    SurveyRecord Survey, ImmutableArray<Distress> Added, ImmutableArray<SurveyChange> Changed, ImmutableArray<Distress> Removed, int Unchanged)
{
    /// <summary>True when nothing was added, changed or removed.</summary>
    public bool IsUnchanged => Added.IsEmpty && Changed.IsEmpty && Removed.IsEmpty;
}

/// <summary>
/// Brings a fresh reading of a survey together with the one before, so that overrides and everything else that names a distress still
/// finds it. A fresh row is the row before that (1) carries the same identifier of the file's own, else (2) says the same, else (3) is the
/// nearest of its type on its slab, else (4) is the nearest of its type in its lane within 3 m, else (5) is the nearest of another type
/// in its lane at the same place. Rows left over are new; rows before left over are gone.
/// </summary>
public static class SurveyMerge
{
    /// <summary>A corrected place may lie this far from the one before, m. Common practice: less than a slab.</summary>
    private const double MoveTolerance = 3;

    /// <summary>Places as near as this are the same place, m.</summary>
    private const double SamePlace = 0.05;

    /// <summary>Applies a fresh reading to the survey before.</summary>
    /// <param name="previous">The survey before.</param>
    /// <param name="fresh">The fresh reading.</param>
    public static SurveyMergeResult Apply(SurveyRecord previous, SurveyRecord fresh)
    {
        ArgumentNullException.ThrowIfNull(previous);
        ArgumentNullException.ThrowIfNull(fresh);
        var (before, after) = (previous.Distresses, fresh.Distresses);
        var matching = new Matching(before, after);
        matching.ById();
        matching.ByContent();
        matching.ByNearest(d => (d.Lane, (int)d.Type, d.Slab), double.PositiveInfinity);
        matching.ByNearest(d => (d.Lane, (int)d.Type, 0), MoveTolerance);
        matching.ByNearest(d => (d.Lane, -1, 0), SamePlace);
        var merged = Named(before, after, matching.Partner);
        var added = ImmutableArray.CreateBuilder<Distress>();
        var changed = ImmutableArray.CreateBuilder<SurveyChange>();
        for (var i = 0; i < merged.Length; i++)
        {
            if (matching.Partner[i] < 0) added.Add(merged[i]);
            else if (!ContentOrder.Same(before[matching.Partner[i]], merged[i])) changed.Add(new(before[matching.Partner[i]], merged[i]));
        }

        var removed = before.Where((_, i) => !matching.Taken[i]).ToImmutableArray();
        var record = fresh with { Distresses = ImmutableCollectionsMarshal.AsImmutableArray(merged) };
        return new SurveyMergeResult(record, added.ToImmutable(), changed.ToImmutable(), removed, merged.Length - added.Count - changed.Count);
    }

    /// <summary>Gives matched rows the identifier they had and new rows one that nothing before or now uses.</summary>
    private static Distress[] Named(ImmutableArray<Distress> before, ImmutableArray<Distress> after, int[] partner)
    {
        var used = before.Select(d => d.Id).ToHashSet(StringComparer.Ordinal);
        var merged = new Distress[after.Length];
        for (var i = 0; i < merged.Length; i++)
        {
            if (partner[i] >= 0) merged[i] = after[i].Id == before[partner[i]].Id ? after[i] : after[i] with { Id = before[partner[i]].Id };
        }

        for (var i = 0; i < merged.Length; i++)
        {
            if (partner[i] >= 0) continue;
            var (id, ordinal) = (after[i].Id, 0);
            while (!used.Add(id)) id = RowIdentity.NaturalId(after[i], ++ordinal);
            merged[i] = id == after[i].Id ? after[i] : after[i] with { Id = id };
        }

        return merged;
    }

    private sealed class Matching
    {
        private readonly ImmutableArray<Distress> before;
        private readonly ImmutableArray<Distress> after;

        public Matching(ImmutableArray<Distress> before, ImmutableArray<Distress> after)
        {
            (this.before, this.after) = (before, after);
            Taken = new bool[before.Length];
            Partner = new int[after.Length];
            Array.Fill(Partner, -1);
        }

        /// <summary>For each fresh row its row before, or −1.</summary>
        public int[] Partner { get; }

        /// <summary>For each row before whether a fresh row is it.</summary>
        public bool[] Taken { get; }

        /// <summary>By the file's own identifiers; those made from the place are left to the other ways.</summary>
        public void ById()
        {
            var index = new Dictionary<string, int>(StringComparer.Ordinal);
            for (var i = 0; i < before.Length; i++)
            {
                if (!IsNatural(before[i])) index.TryAdd(before[i].Id, i);
            }

            for (var i = 0; i < after.Length; i++)
            {
                if (!IsNatural(after[i]) && index.TryGetValue(after[i].Id, out var match)) Match(i, match);
            }
        }

        /// <summary>By saying the same.</summary>
        public void ByContent()
        {
            var old = Left(Taken, before);
            var fresh = Left([.. Partner.Select(p => p >= 0)], after);
            var (i, j) = (0, 0);
            while (i < old.Length && j < fresh.Length)
            {
                var order = ContentOrder.Instance.Compare(before[old[i]], after[fresh[j]]);
                if (order == 0) Match(fresh[j++], old[i++]);
                else if (order < 0) i++;
                else j++;
            }
        }

        /// <summary>By the nearest within each group, nearest pairs first.</summary>
        public void ByNearest(Func<Distress, (int, int, int)> group, double tolerance)
        {
            var groups = new Dictionary<(int, int, int), List<int>>();
            for (var i = 0; i < before.Length; i++)
            {
                if (Taken[i]) continue;
                ref var list = ref CollectionsMarshal.GetValueRefOrAddDefault(groups, group(before[i]), out _);
                (list ??= []).Add(i);
            }

            foreach (var list in groups.Values) list.Sort((a, b) => before[a].Middle.CompareTo(before[b].Middle));
            var pairs = new List<(double Distance, int Fresh, int Old)>();
            for (var i = 0; i < after.Length; i++)
            {
                if (Partner[i] < 0 && groups.TryGetValue(group(after[i]), out var list)) AddPairs(pairs, i, list, tolerance);
            }

            pairs.Sort();
            foreach (var (_, fresh, old) in pairs)
            {
                if (Partner[fresh] < 0 && !Taken[old]) Match(fresh, old);
            }
        }

        /// <summary>Pairs of a fresh row with the few rows before on either side of it.</summary>
        private void AddPairs(List<(double Distance, int Fresh, int Old)> pairs, int fresh, List<int> sorted, double tolerance)
        {
            const int reach = 4;
            var middle = after[fresh].Middle;
            var low = sorted.FindIndexSorted(i => before[i].Middle >= middle);
            for (var k = Math.Max(0, low - reach); k < Math.Min(sorted.Count, low + reach); k++)
            {
                var distance = Math.Abs(before[sorted[k]].Middle - middle);
                if (distance <= tolerance) pairs.Add((distance, fresh, sorted[k]));
            }
        }

        private static int[] Left(bool[] taken, ImmutableArray<Distress> rows)
        {
            var left = Enumerable.Range(0, rows.Length).Where(i => !taken[i]).ToArray();
            Array.Sort(left, (a, b) => ContentOrder.Instance.Compare(rows[a], rows[b]) is var c and not 0 ? c : a.CompareTo(b));
            return left;
        }

        private void Match(int fresh, int old)
        {
            if (Partner[fresh] >= 0 || Taken[old]) return;
            (Partner[fresh], Taken[old]) = (old, true);
        }

        private static bool IsNatural(Distress d)
        {
            var stem = RowIdentity.NaturalId(d, 0)[..^1];
            return d.Id.StartsWith(stem, StringComparison.Ordinal) && d.Id.AsSpan(stem.Length).ContainsOnlyDigits();
        }
    }
}
