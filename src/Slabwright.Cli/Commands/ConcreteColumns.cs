using System.Collections.Immutable;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Evidence;

namespace Slabwright.Cli.Commands;

/// <summary>Columns of a logger file as typed: <c>Time=Date/Time; T1=mid depth; T2=edge; unit=°F</c>.</summary>
internal static class ConcreteColumns
{
    private static readonly Dictionary<string, SlabPlace> Short = new(StringComparer.OrdinalIgnoreCase)
    {
        ["mid"] = SlabPlace.MidDepth, ["middle"] = SlabPlace.MidDepth, ["top"] = SlabPlace.Surface,
    };

    /// <summary>The mapping: what is typed upon what was found out; null with findings where it cannot be read.</summary>
    public static RememberedColumns? Read(string text, ImmutableArray<string> headers, RememberedColumns? guessed, ImmutableArray<Finding>.Builder findings)
    {
        var (time, date, fahrenheit) = (guessed?.Time, guessed?.Date, guessed?.Fahrenheit);
        var channels = ImmutableArray.CreateBuilder<RememberedChannel>();
        foreach (var item in text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var equals = item.LastIndexOf('=');
            var (left, right) = equals < 1 ? (item, "") : (item[..equals].Trim(), item[(equals + 1)..].Trim());
            switch (left.ToLowerInvariant())
            {
                case "time" when Known(right):
                    (time, date) = (right, guessed?.Time == right ? date : null);
                    break;
                case "date" when Known(right):
                    date = right;
                    break;
                case "unit" when right is "°F" or "F" or "°C" or "C":
                    fahrenheit = right.EndsWith('F');
                    break;
                default:
                    if (Known(left) && PlaceOf(right) is { } place) channels.Add(new(left, place));
                    else findings.Add(Wrong(item, headers));
                    break;
            }
        }

        if (time is null) findings.Add(Wrong(text, headers) with { Sentence = "The column of the times is not named, and was not found." });
        else if (channels.Count == 0 && guessed is null) findings.Add(Wrong(text, headers) with { Sentence = "No column of temperatures is named, and none was found." });
        if (findings.Any(f => f.Code == "CON-146")) return null;
        return new(guessed?.Headers ?? "", time!, date, guessed?.Time == time ? guessed?.TimeForm : null, fahrenheit ?? true, channels.Count > 0 ? channels.ToImmutable() : guessed!.Channels);

        bool Known(string header) => headers.Contains(header);
    }

    private static SlabPlace? PlaceOf(string text) => Short.TryGetValue(text, out var place) ? place : TradeWords.TryRead<SlabPlace>(text, out var member) ? member : null;

    private static Finding Wrong(string item, ImmutableArray<string> headers) => new(
        "CON-146", FindingLevel.Error, "A column is not mapped.", new FindingPlace(Field: "columns"), item,
        $"Write \"Time=HEADER; HEADER=PLACE; unit=°F\" with the headers {string.Join(", ", headers)} and the places {TradeWords.All<SlabPlace>()}.");
}
