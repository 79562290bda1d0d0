using System.Collections;
using System.Reflection;

namespace Slabwright.SystemTests.Folder;

/// <summary>Compares two records member by member, lists element by element, numbers to the last bit.</summary>
internal static class DeepComparison
{
    /// <summary>Paths of the members that differ.</summary>
    public static List<string> Differences(object? a, object? b, string path, Func<string, bool> passOver)
    {
        var found = new List<string>();
        Compare(a, b, path, passOver, found);
        return found;
    }

    private static void Compare(object? a, object? b, string path, Func<string, bool> passOver, List<string> found)
    {
        if (found.Count > 20 || passOver(path)) return;
        if (a is null || b is null || a.GetType() != b.GetType())
        {
            if (a is not null || b is not null) found.Add($"{path}: {a ?? "null"} / {b ?? "null"}");
        }
        else if (a is string || a.GetType().IsPrimitive || a.GetType().IsEnum || a is decimal or DateOnly or DateTime or TimeOnly)
        {
            if (!a.Equals(b)) found.Add($"{path}: {a:R} / {b:R}");
        }
        else if (a is IEnumerable list)
        {
            var (left, right) = (list.Cast<object?>().ToList(), ((IEnumerable)b).Cast<object?>().ToList());
            if (left.Count != right.Count) found.Add($"{path}: {left.Count} / {right.Count} items");
            for (var i = 0; i < Math.Min(left.Count, right.Count); i++) Compare(left[i], right[i], $"{path}[{i}]", passOver, found);
        }
        else
        {
            foreach (var property in a.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
                Compare(property.GetValue(a), property.GetValue(b), $"{path}.{property.Name}", passOver, found);
        }
    }
}
