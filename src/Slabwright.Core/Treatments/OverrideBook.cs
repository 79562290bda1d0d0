using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;

namespace Slabwright.Core.Treatments;

/// <summary>The engineer's overrides that can be used, by distress.</summary>
internal sealed class OverrideBook
{
    private readonly Dictionary<string, TreatmentOverride> _overrides = [];

    /// <summary>Sorts out the overrides: without a reason or a distress they are not used; of two for one distress the last is.</summary>
    public static OverrideBook Open(
        ImmutableArray<TreatmentOverride> overrides, IEnumerable<DistressFacts> facts, ImmutableArray<Finding>.Builder findings)
    {
        var book = new OverrideBook();
        if (overrides.IsDefaultOrEmpty) return book;
        var known = facts.Select(f => f.Distress.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var choice in overrides)
        {
            if (!known.Contains(choice.DistressId))
            {
                findings.Add(Wrong("TRT-024", FindingLevel.Error, choice,
                    "The override names a distress the survey does not have.", "Correct the distress id or delete the override."));
            }
            else if (string.IsNullOrWhiteSpace(choice.Because))
            {
                findings.Add(Wrong("TRT-025", FindingLevel.Error, choice,
                    "The override has no reason and is not used.", "Write the reason: it is printed and kept."));
            }
            else
            {
                if (book._overrides.ContainsKey(choice.DistressId))
                {
                    findings.Add(Wrong("TRT-026", FindingLevel.Warning, choice,
                        "A distress has more than one override; the last is used.", "Keep one of them."));
                }

                book._overrides[choice.DistressId] = choice;
            }
        }

        return book;
    }

    /// <summary>True when the engineer decided this distress.</summary>
    public bool Has(FirstCall call) => _overrides.ContainsKey(call.Facts.Distress.Id);

    /// <summary>What the slab's other distresses have to reckon with: the engineer's choice, else the first call.</summary>
    public Treatment StandingFor(FirstCall call) =>
        _overrides.TryGetValue(call.Facts.Distress.Id, out var choice) ? choice.Treatment : call.Treatment;

    /// <summary>The decision under its override, if it has one.</summary>
    public TreatmentDecision Apply(TreatmentDecision decision)
    {
        if (!_overrides.TryGetValue(decision.DistressId, out var choice)) return decision;
        var inputs = ImmutableArray.Create(new ReasonInput("called by the rules", TradeWords.Of(decision.CalledByRules)));
        if (choice.By.Length > 0) inputs = inputs.Add(new ReasonInput("decided by", choice.By));
        if (choice.On is { } day) inputs = inputs.Add(new ReasonInput("on", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
        var reason = new Reason("override", choice.Because, SourceRef.Project, inputs);
        return decision with { Treatment = choice.Treatment, Override = choice, Reasons = decision.Reasons.Insert(0, reason) };
    }

    private static Finding Wrong(string code, FindingLevel level, TreatmentOverride choice, string sentence, string mend) =>
        new(code, level, sentence, new FindingPlace(), choice.DistressId, mend);
}
