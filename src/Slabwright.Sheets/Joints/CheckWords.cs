using Slabwright.Core.Joints.Design;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Joints;

/// <summary>Words for limits and how much of them is used.</summary>
public static class CheckWords
{
    /// <summary>Name, value and limit: <c>bearing on the concrete 2,010 psi, at most 3,333 psi</c>.</summary>
    public static string Of(LimitCheck check, JobUnits units)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(units);
        var side = check.Sense == LimitSense.AtMost ? "at most" : "at least";
        return $"{check.Name} {units.PairText(check.Value, check.Units)}, {side} {units.PairText(check.Limit, check.Units)}";
    }

    /// <summary>Share of the limit used, per cent.</summary>
    public static string Use(LimitCheck check) => check.Use > 9.995 ? "over 999 %" : $"{JobUnits.Number(check.Use * 100)} %";
}
