using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Survey;

/// <summary>
/// Takes out rows that repeat another, points at near repeats, and gives each row its identifier: the file's own, else
/// <c>L1-S123-TC-2</c> for the second transverse crack by place on slab 123 of lane 1. Row order has no part in it.
/// </summary>
internal static class RowIdentity
{
    /// <summary>Rows of a type nearer than this at both ends are near repeats, m: a foot. Common practice.</summary>
    private const double NearTolerance = 0.3048;

    /// <summary>How many neighbours in order are compared with a row, so that a heap of like rows costs no more than its size.</summary>
    private const int NeighboursCompared = 8;

    /// <summary>The identifier a row gets when its file gives none.</summary>
    public static string NaturalId(Distress d, int ordinal) => string.Create(
        CultureInfo.InvariantCulture, $"L{d.Lane}-S{d.Slab}-{DistressCatalog.Of(d.Type).Mark}-{ordinal}");

    /// <summary>Settles repeats and identifiers.</summary>
    /// <param name="rows">Distresses in file order.</param>
    /// <param name="numbers">Their rows in the file.</param>
    /// <param name="assumed">Whether only their slab was given.</param>
    /// <param name="log">Findings.</param>
    public static ImmutableArray<Distress> Settle(List<Distress> rows, List<long> numbers, List<bool> assumed, FindingLog log)
    {
        var order = new int[rows.Count];
        for (var i = 0; i < order.Length; i++) order[i] = i;
        Array.Sort(order, (a, b) => ContentOrder.Instance.Compare(rows[a], rows[b]) is var c and not 0 ? c : a.CompareTo(b));
        var dropped = FindRepeats(rows, numbers, assumed, order, log);
        NameAll(rows, numbers, order, dropped, log);
        var kept = new Distress[rows.Count - dropped.Count];
        var next = 0;
        for (var i = 0; i < rows.Count; i++)
        {
            if (!dropped.Contains(i)) kept[next++] = rows[i];
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(kept);
    }

    private static HashSet<int> FindRepeats(List<Distress> rows, List<long> numbers, List<bool> assumed, int[] order, FindingLog log)
    {
        var dropped = new HashSet<int>();
        for (var i = 0; i < order.Length; i++)
        {
            var first = rows[order[i]];
            if (dropped.Contains(order[i])) continue;
            for (var j = i + 1; j < order.Length && (j <= i + NeighboursCompared || ContentOrder.Same(first, rows[order[j]])); j++)
            {
                var other = rows[order[j]];
                if (other.Lane != first.Lane || other.Type != first.Type || other.From - first.From > NearTolerance) break;
                var (earlier, later) = numbers[order[i]] < numbers[order[j]] ? (order[i], order[j]) : (order[j], order[i]);
                if (ContentOrder.Same(first, other) && (other.Id.Length == 0 || other.Id == first.Id))
                {
                    if (!dropped.Add(order[j])) continue;
                    log.Add(SurveyFaults.Repeated, $"The row says the same as row {numbers[order[i]]}; it was counted once.", numbers[order[j]],
                        lane: first.Lane, at: first.From);
                }
                else if (IsNear(first, other) && !(assumed[order[i]] && first.Severity != other.Severity))
                {
                    log.Add(SurveyFaults.NearlyRepeated, $"The row is nearly the same as row {numbers[earlier]}; both were used.", numbers[later],
                        lane: first.Lane, at: first.From);
                }
            }
        }

        return dropped;
    }

    private static bool IsNear(Distress a, Distress b)
    {
        if (a.SurveyedOn != b.SurveyedOn || Math.Abs(a.To - b.To) > NearTolerance || Math.Abs(a.From - b.From) > NearTolerance) return false;
        return !(a.OffsetTo < b.OffsetFrom || b.OffsetTo < a.OffsetFrom);
    }

    private static void NameAll(List<Distress> rows, List<long> numbers, int[] order, HashSet<int> dropped, FindingLog log)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < rows.Count; i++)
        {
            if (dropped.Contains(i) || rows[i].Id.Length == 0 || taken.Add(rows[i].Id)) continue;
            log.Add(SurveyFaults.IdTwice, $"The id \"{rows[i].Id}\" occurs twice.", numbers[i], value: rows[i].Id);
            rows[i] = rows[i] with { Id = "" };
        }

        var ordinals = new Dictionary<(int Lane, int Slab, DistressType Type), int>();
        foreach (var i in order)
        {
            if (dropped.Contains(i) || rows[i].Id.Length > 0) continue;
            ref var ordinal = ref CollectionsMarshal.GetValueRefOrAddDefault(ordinals, (rows[i].Lane, rows[i].Slab, rows[i].Type), out _);
            string id;
            do id = NaturalId(rows[i], ++ordinal);
            while (taken.Contains(id));
            rows[i] = rows[i] with { Id = id };
        }
    }
}
