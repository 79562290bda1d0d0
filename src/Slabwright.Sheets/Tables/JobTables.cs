using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Job;
using Slabwright.Core.Pavement;
using Slabwright.Core.Quantities;
using Slabwright.Core.Survey;
using Slabwright.Core.Treatments;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.Tables;

/// <summary>The tables of one job: which rows, which fields. Files only differ in how they write them.</summary>
internal sealed class JobTables(Project project, RepairPlan plan)
{
    private readonly JobUnits units = JobUnits.Of(project.UnitSystem);
    private readonly Road road = project.Road;
    private readonly PlannedPieces pieces = new(plan);

    public ImmutableArray<Field<Repair>> Repairs() =>
    [
        Field<Repair>.Text("id", r => r.Id),
        Field<Repair>.Whole("lane", r => r.Lane),
        Field<Repair>.Text("kind", r => SheetWords.Of(r.Kind)),
        Field<Repair>.Text("from_station", r => road.Stationing.Format(r.From)),
        Field<Repair>.Text("to_station", r => road.Stationing.Format(r.To)),
        Field<Repair>.Measure("from", units.Length, 4, r => r.From),
        Field<Repair>.Measure("to", units.Length, 4, r => r.To),
        Field<Repair>.Text("from_found_at", r => CutPlace.OfStart(road, r).Describe(road.LaneByNumber(r.Lane), units)),
        Field<Repair>.Text("to_found_at", r => CutPlace.OfEnd(road, r).Describe(road.LaneByNumber(r.Lane), units)),
        Field<Repair>.Measure("length", units.Length, 4, r => r.Length),
        Field<Repair>.Measure("width", units.Length, 4, r => r.Width),
        Field<Repair>.Measure("thickness", units.Thickness, 2, r => r.Thickness),
        Field<Repair>.Measure("area", units.Area, 3, r => r.Area),
        Field<Repair>.Measure("volume", units.Volume, 3, r => r.Area * r.Thickness),
        Field<Repair>.Text("start_joint", r => SheetWords.Of(r.Start.Design)),
        Field<Repair>.Whole("start_bars", r => r.Start.Bars),
        Field<Repair>.Text("end_joint", r => SheetWords.Of(r.End.Design)),
        Field<Repair>.Whole("end_bars", r => r.End.Bars),
        Field<Repair>.Whole("intermediate_joints", r => r.Intermediate.Length),
        Field<Repair>.Text("intermediate_stations", r => string.Join("; ", r.Intermediate.Select(j => road.Stationing.Format(j.At)))),
        Field<Repair>.Text("left_face", r => FaceWords.Of(r.LeftFace, units)),
        Field<Repair>.Text("right_face", r => FaceWords.Of(r.RightFace, units)),
        Field<Repair>.Whole("lift_pieces", r => pieces.Of(r)),
        Field<Repair>.Measure("heaviest_piece", units.Mass, 2, r => pieces.MassOf(r)),
        Field<Repair>.Whole("group", r => r.Group),
        Field<Repair>.Text("distresses", r => string.Join("; ", r.DistressIds)),
    ];

    public ImmutableArray<Field<SurfaceWork>> SurfaceWorks() =>
    [
        Field<SurfaceWork>.Text("id", w => w.Id),
        Field<SurfaceWork>.Whole("lane", w => w.Lane),
        Field<SurfaceWork>.Text("treatment", w => SheetWords.Of(w.Treatment)),
        Field<SurfaceWork>.Text("from_station", w => road.Stationing.Format(w.From)),
        Field<SurfaceWork>.Text("to_station", w => road.Stationing.Format(w.To)),
        Field<SurfaceWork>.Measure("from", units.Length, 4, w => w.From),
        Field<SurfaceWork>.Measure("to", units.Length, 4, w => w.To),
        Field<SurfaceWork>.Measure("length", units.Length, 3, w => w.Length),
        Field<SurfaceWork>.Measure("area", units.Area, 3, w => w.Area > 0 ? w.Area : null),
        Field<SurfaceWork>.Text("distresses", w => string.Join("; ", w.DistressIds)),
    ];

    public ImmutableArray<Field<TakeOffLine>> TakeOff()
    {
        var items = project.Prices.Items.ToDictionary(i => i.Code, StringComparer.Ordinal);
        return
        [
            Field<TakeOffLine>.Text("item_code", t => t.ItemCode),
            Field<TakeOffLine>.Text("item", t => items.TryGetValue(t.ItemCode, out var item) ? item.Name : null),
            Field<TakeOffLine>.Text("work_id", t => t.WorkId),
            Field<TakeOffLine>.Number("measured", 4, t => t.Measured),
            Field<TakeOffLine>.Text("unit", t => items.TryGetValue(t.ItemCode, out var item) ? item.Unit.Symbol : null),
            Field<TakeOffLine>.Number($"unit_price_{project.Prices.Currency}", 4, t => (double)t.UnitPrice),
            Field<TakeOffLine>.Number($"amount_{project.Prices.Currency}", 2, t => t.Measured * (double)t.UnitPrice),
            Field<TakeOffLine>.Text("working", t => t.Working),
        ];
    }

    public ImmutableArray<Field<BidLine>> Bid() =>
    [
        Field<BidLine>.Text("item_code", b => b.Item.Code),
        Field<BidLine>.Text("item", b => b.Name),
        Field<BidLine>.Text("unit", b => b.Item.Unit.Symbol),
        Field<BidLine>.Number("measured", 4, b => b.Measured),
        Field<BidLine>.Number("pay_quantity", 4, b => b.Pay),
        Field<BidLine>.Number($"unit_price_{project.Prices.Currency}", 4, b => (double)b.UnitPrice),
        Field<BidLine>.Number($"amount_{project.Prices.Currency}", 2, b => (double)b.Amount),
    ];

    public ImmutableArray<Field<TreatmentDecision>> Decisions()
    {
        var distresses = DistressesById();
        return
        [
            Field<TreatmentDecision>.Text("distress", d => d.DistressId),
            Field<TreatmentDecision>.Whole("lane", d => Of(d)?.Lane),
            Field<TreatmentDecision>.Text("from_station", d => Of(d) is { } x ? road.Stationing.Format(x.From) : null),
            Field<TreatmentDecision>.Text("to_station", d => Of(d) is { } x ? road.Stationing.Format(x.To) : null),
            Field<TreatmentDecision>.Text("type", d => Of(d) is { } x ? SheetWords.Of(x.Type) : null),
            Field<TreatmentDecision>.Text("severity", d => Of(d) is { } x ? SheetWords.Of(x.Severity) : null),
            Field<TreatmentDecision>.Text("treatment", d => SheetWords.Of(d.Treatment)),
            Field<TreatmentDecision>.Text("called_by_rules", d => SheetWords.Of(d.CalledByRules)),
            Field<TreatmentDecision>.Text("rule_set", d => d.RuleSet),
            Field<TreatmentDecision>.Text("override_because", d => d.Override?.Because),
            Field<TreatmentDecision>.Text("override_by", d => d.Override?.By),
            Field<TreatmentDecision>.Text("override_on", d => d.Override?.On?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)),
            Field<TreatmentDecision>.Text("rule", d => First(d)?.Rule),
            Field<TreatmentDecision>.Text("reason", d => First(d)?.Sentence),
            Field<TreatmentDecision>.Text("source", d => First(d)?.Source.ToString()),
            Field<TreatmentDecision>.Text("inputs", d => First(d) is { } r ? string.Join("; ", r.Inputs.Select(i => $"{i.Name} {i.Value}")) : null),
        ];

        Distress? Of(TreatmentDecision d) => distresses.GetValueOrDefault(d.DistressId);
        static Reason? First(TreatmentDecision d) => d.Reasons.IsEmpty ? null : d.Reasons[0];
    }

    public ImmutableArray<Field<Finding>> Findings() =>
    [
        Field<Finding>.Text("code", f => f.Code),
        Field<Finding>.Text("level", f => SheetWords.Of(f.Level)),
        Field<Finding>.Text("finding", f => f.Sentence),
        Field<Finding>.Text("file", f => f.Place.File),
        Field<Finding>.Whole("row", f => f.Place.Row),
        Field<Finding>.Text("field", f => f.Place.Field),
        Field<Finding>.Whole("lane", f => f.Place.Lane),
        Field<Finding>.Text("station", f => f.Place.At is { } at ? road.Stationing.Format(at) : null),
        Field<Finding>.Text("value", f => f.Value),
        Field<Finding>.Text("limit", f => f.Limit),
        Field<Finding>.Text("mend", f => f.Mend),
        Field<Finding>.Text("source", f => f.Source),
    ];

    public ImmutableArray<Field<Distress>> Distresses()
    {
        var decisions = plan.Decisions.ToDictionary(d => d.DistressId, d => d.Treatment, StringComparer.Ordinal);
        return
        [
            Field<Distress>.Text("id", d => d.Id),
            Field<Distress>.Whole("lane", d => d.Lane),
            Field<Distress>.Whole("slab", d => d.Slab),
            Field<Distress>.Text("type", d => SheetWords.Of(d.Type)),
            Field<Distress>.Text("severity", d => SheetWords.Of(d.Severity)),
            Field<Distress>.Text("from_station", d => road.Stationing.Format(d.From)),
            Field<Distress>.Text("to_station", d => road.Stationing.Format(d.To)),
            Field<Distress>.Text("treatment", d => decisions.TryGetValue(d.Id, out var t) ? SheetWords.Of(t) : null),
            Field<Distress>.Text("surveyed_on", d => d.SurveyedOn.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)),
            Field<Distress>.Text("note", d => d.Note),
        ];
    }

    private Dictionary<string, Distress> DistressesById()
    {
        var byId = new Dictionary<string, Distress>(StringComparer.Ordinal);
        foreach (var distress in project.Survey.Distresses) byId[distress.Id] = distress;
        return byId;
    }
}
