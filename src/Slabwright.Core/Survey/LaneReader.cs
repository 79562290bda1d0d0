using Slabwright.Core.Pavement;

namespace Slabwright.Core.Survey;

/// <summary>Finds the lane a row means, by number or word.</summary>
internal static class LaneReader
{
    /// <summary>The lane of a text, or null when the road has no such lane.</summary>
    /// <remarks>Inside and passing mean the leftmost lane, outside and driving the rightmost: common practice for traffic on the right.</remarks>
    public static Lane? Find(Road road, string text)
    {
        var key = Words.Key(text);
        foreach (var prefix in (string[])["lane", "ln", "l"])
        {
            if (key.StartsWith(prefix, StringComparison.Ordinal) && key.Length > prefix.Length && char.IsAsciiDigit(key[prefix.Length]))
            {
                key = key[prefix.Length..];
                break;
            }
        }

        if (int.TryParse(key, System.Globalization.CultureInfo.InvariantCulture, out var number))
        {
            foreach (var lane in road.Lanes)
            {
                if (lane.Number == number) return lane;
            }

            return null;
        }

        return key switch
        {
            "left" or "leftlane" or "l" or "inside" or "insidelane" or "inner" or "innerlane" or "passing" or "passinglane" or "fast" or "fastlane"
                or "median" or "medianlane" => road.Lanes[0],
            "right" or "rightlane" or "r" or "outside" or "outsidelane" or "outer" or "outerlane" or "driving" or "drivinglane" or "slow"
                or "slowlane" or "truck" or "trucklane" => road.Lanes[^1],
            "middle" or "middlelane" or "center" or "centerlane" or "centre" or "centrelane" or "m" or "c" =>
                road.Lanes.Length % 2 == 1 ? road.Lanes[road.Lanes.Length / 2] : null,
            _ => null,
        };
    }
}
