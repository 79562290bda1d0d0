using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slabwright.Core.Evidence;
using Slabwright.Core.Joints.Design;
using Slabwright.Core.Joints.Live;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Sheets.Words;

namespace Slabwright.Desk.Parts.Joints;

/// <summary>A joint filled in by hand.</summary>
public sealed record HandJoint(JointConditions Conditions, BarLayout? Bars);

/// <summary>The inputs of one joint by hand.</summary>
public partial class JointByHand : ComponentBase
{
    private readonly Dictionary<string, string> texts = [];
    private ImmutableArray<Finding> findings = [];
    private (UnitSystem System, JointConditions From, BarLayout? Bars)? filled;
    private string said = "";

    /// <summary>The job.</summary>
    [Parameter, EditorRequired] public JobView View { get; set; } = null!;

    /// <summary>Conditions the form starts with.</summary>
    [Parameter, EditorRequired] public JointConditions From { get; set; } = null!;

    /// <summary>Bars the form starts with.</summary>
    [Parameter] public BarLayout? Bars { get; set; }

    /// <summary>Raised with a joint that has nothing wrong.</summary>
    [Parameter] public EventCallback<HandJoint> OnUse { get; set; }

    private sealed record Field(string Key, string Name, Unit Unit, double Value, int Decimals);

    private bool IsUs => View.Units.System == UnitSystem.UsCustomary;

    private Field[] Fields =>
    [
        new("thickness", "Slab thickness", View.Units.Thickness, From.Thickness, 1),
        new("lane_width", "Lane width", View.Units.Length, From.LaneWidth, 2),
        new("reaction", "Modulus of reaction k", IsUs ? Units.Pci : Units.MegapascalPerMetre, From.Reaction, 1),
        new("modulus", "Modulus of concrete E", View.Units.Stress, From.Modulus, 0),
        new("joint_width", "Joint when open", View.Units.Thickness, From.JointWidth, 3),
        new("diameter", "Bar diameter", View.Units.Thickness, Bars?.Diameter ?? 1.25 * 0.0254, 3),
        new("bars", "Number of bars", Units.One, Bars?.Bars ?? 0, 0),
        new("wheel", "Load of one wheel", View.Units.Force, From.Traffic.Where(a => a.Axles == 1).Select(a => a.Load / 2).DefaultIfEmpty(Units.Kip.ToBase(9)).Max(), 2),
    ];

    private List<Finding> Others => [.. findings.Where(f => !Fields.Any(one => Names(f, one.Key)))];

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (filled == (View.Units.System, From, Bars)) return;
        filled = (View.Units.System, From, Bars);
        findings = [];
        foreach (var field in Fields)
            texts[field.Key] = Math.Round(field.Unit.FromBase(field.Value), field.Decimals).ToString(CultureInfo.InvariantCulture);
    }

    private async Task Use()
    {
        var wrong = ImmutableArray.CreateBuilder<Finding>();
        var values = Fields.ToDictionary(f => f.Key, f => Read(f, wrong));
        findings = wrong.ToImmutable();
        if (findings.IsEmpty)
        {
            var joint = Make(values);
            findings = LiveJoint.Check(joint.Conditions, joint.Bars, new LiveSurroundings());
            if (findings.IsEmpty) await OnUse.InvokeAsync(joint);
        }

        said = findings.IsEmpty ? "Taken." : $"{SheetWords.Count(findings.Length, "value")} to put right.";
    }

    private double Read(Field field, ImmutableArray<Finding>.Builder wrong)
    {
        var text = texts[field.Key].Trim();
        if (!double.TryParse(text, NumberStyles.Float | NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
            wrong.Add(Bad(field, "JNT-085", $"{field.Name} is not a number.", text, "Give a number with a point for decimals, without its unit."));
        else if (field.Key == "bars" && (value < 0 || value != Math.Floor(value) || value > 100))
            wrong.Add(Bad(field, "JNT-086", "The number of bars is not a count.", text, "Give a whole number from 0 to 100; 0 is a joint without bars."));
        return field.Unit.ToBase(value);
    }

    private static Finding Bad(Field field, string code, string sentence, string text, string mend) =>
        new(code, FindingLevel.Error, sentence, new FindingPlace(Field: "joints." + field.Key), text, mend);

    private HandJoint Make(Dictionary<string, double> values)
    {
        var conditions = From with
        {
            Thickness = values["thickness"],
            LaneWidth = values["lane_width"],
            Reaction = values["reaction"],
            Modulus = values["modulus"],
            JointWidth = values["joint_width"],
            Traffic = [new AxleClass(1, 2 * values["wheel"], 1)],
            BuildUp = "by hand",
        };
        var count = (int)values["bars"];
        if (count == 0) return new HandJoint(conditions, null);
        var (first, room) = (BarRow.EdgeDistance, conditions.LaneWidth - 2 * BarRow.EdgeDistance);
        var spacing = count > 1 ? room / (count - 1) : room;
        var length = Bars?.Length ?? 18 * 0.0254;
        return new HandJoint(conditions, new BarLayout
        {
            Kind = BarKind.Dowel,
            Arrangement = BarArrangement.FullWidth,
            Diameter = values["diameter"],
            Length = length,
            Embedment = length / 2,
            Depth = conditions.Thickness / 2,
            Offsets = [.. Enumerable.Range(0, count).Select(n => count > 1 ? first + n * spacing : conditions.LaneWidth / 2)],
            Spacing = spacing,
        });
    }

    private List<Finding> Wrong(string key) => [.. findings.Where(f => Names(f, key))];

    /// <summary>True when a finding is about a field; findings about places of bars belong to their number, those about axles to the wheel.</summary>
    private static bool Names(Finding finding, string key) => finding.Place.Field is { } field && key == field.Replace("joints.", "", StringComparison.Ordinal) switch
    {
        var f when f.StartsWith("offsets", StringComparison.Ordinal) || f == "bars" => "bars",
        "axles" => "wheel",
        "depth" => "diameter",
        "width" => "lane_width",
        var f => f,
    };
}
