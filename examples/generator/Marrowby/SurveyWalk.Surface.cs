using Slabwright.Core.Pavement;

namespace Slabwright.Examples.Marrowby;

/// <content>Wear of the surface, of patches and along the edges.</content>
internal sealed partial class SurveyWalk
{
    private void Surface()
    {
        foreach (var (type, lane, from, to, area, note) in new[]
        {
            ("map cracking", 1, 1_240.0, 1_268.0, 290.0, "Hairlines, surface only"),
            ("map cracking", 1, 10_660.0, 10_712.0, 480.0, "Finished too wet, it looks"),
            ("map cracking", 2, 18_102.0, 18_136.0, 350.0, ""),
            ("map cracking", 2, 25_204.0, 25_232.0, 300.0, ""),
            ("scaling", 1, 2_015.0, 2_029.0, 110.0, "Shallow, from the salt years"),
            ("scaling", 2, 15_322.0, 15_338.0, 140.0, ""),
            ("scaling", 1, 19_804.0, 19_817.0, 95.0, ""),
            ("scaling", 2, 21_270.0, 21_282.0, 120.0, "Before the bridge, salt drips here"),
            ("scaling", 1, 22_046.0, 22_058.0, 90.0, ""),
            ("polished aggregate", 2, 430.0, 1_150.0, 5_800.0, "Shiny in both wheel paths along the entrance"),
            ("polished aggregate", 2, 20_400.0, 21_000.0, 4_900.0, "Shiny in the wheel paths"),
            ("polished aggregate", 3, 16_300.0, 16_900.0, 4_200.0, "Braking stretch"),
        }) Add(new() { Lane = lane, Type = type, From = from, To = to, OffsetFrom = 0, OffsetTo = 12, Area = area, Note = note });

        foreach (var at in new[] { 4_410.0, 13_150, 17_902, 24_912 })
            Add(new() { Lane = _dice.Whole(1, 2), Type = "popouts", From = at, To = at + _dice.Whole(20, 60), Count = 1, Note = _dice.One("Chert", "Peas to walnuts", "") });

        foreach (var (at, severity, lane) in new[] { (18_410.0, "moderate", 1), (18_450, "high", 2), (18_470, "moderate", 2), (18_530, "low", 1), (18_550, "high", 2), (18_612, "moderate", 2) })
        {
            Add(new()
            {
                Lane = lane, Type = "reactive aggregate distress", Severity = severity, From = at, To = at + _dice.Whole(6, 14), OffsetFrom = 0, OffsetTo = 12,
                Area = _dice.Whole(60, 150), Cause = "reactive aggregate", Depth = severity == "high" ? 10 : null,
                Note = _dice.One("White gel in the cracks", "Different quarry in this day's pour?", "Pattern closes up towards the joint"),
            });
        }

        Patches();
    }

    /// <summary>Earlier repairs that give way, and asphalt patches.</summary>
    private void Patches()
    {
        foreach (var lane in road.Lanes)
        {
            foreach (var repair in lane.EarlierRepairs.Where((_, i) => i % 3 != 1))
            {
                var atStart = _dice.Chance(0.5);
                var edge = Ft(atStart ? repair.From : repair.To);
                Add(new()
                {
                    Lane = lane.Number, Type = "patch/patch deterioration", Severity = _dice.One("moderate", "moderate", "high"),
                    From = edge - (atStart ? 1.2 : 0.3), To = edge + (atStart ? 0.3 : 1.2), OffsetFrom = 0, OffsetTo = 12, Area = _dice.Whole(10, 20), BesideRepair = true,
                    Depth = _dice.Chance(0.5) ? 9 : null, Cause = _dice.One("load", "joint"),
                    Note = _dice.One("Old slab breaking up beside the repair", "Repair sunk, joint spalled", "Edge of the repair rocks"),
                });
            }
        }

        foreach (var (lane, at, severity) in new[] { (2, 5_610.0, "low"), (2, 11_215, "moderate"), (1, 17_044, "low"), (2, 19_120, "high"), (2, 22_708, "moderate") })
        {
            Add(new()
            {
                Lane = lane, Type = "patch/patch deterioration", Severity = severity, From = at, To = at + Rule(2, 5, 0.5), OffsetFrom = 6, OffsetTo = 12, Area = _dice.Whole(12, 28),
                Note = "Asphalt patch",
            });
        }
    }

    private void Edges()
    {
        foreach (var (lane, from, to) in new[] { (2, 1_910.0, 1_934.0), (2, 6_702, 6_722), (1, 9_812, 9_830), (2, 12_880, 12_908), (1, 15_104, 15_120), (2, 16_662, 16_680), (1, 22_366, 22_378), (2, 24_962, 24_984) })
        {
            Add(new()
            {
                Lane = lane, Type = "spalling of longitudinal joints", Severity = _dice.One("low", "moderate", "high"), From = from, To = to,
                OffsetFrom = lane == 1 ? 11.4 : 0, OffsetTo = lane == 1 ? 12 : 0.6, Length = to - from, Width = Rule(2, 7, 0.5), Depth = Rule(1, 3, 0.5), Note = _dice.One("Snowplough", "", ""),
            });
        }

        foreach (var (lane, from, to) in new[] { (1, 3_900.0, 4_020.0), (2, 7_120, 7_300), (1, 13_480, 13_700), (2, 23_010, 23_120) })
            Add(new() { Lane = lane, Type = "longitudinal joint seal damage", From = from, To = to, OffsetFrom = lane == 1 ? 12 : 0, OffsetTo = lane == 1 ? 12 : 0, Length = to - from, Note = "Seal gone" });

        foreach (var (from, to, drop) in new[] { (2_300.0, 2_700.0, 1.0), (6_100, 6_380, 1.5), (13_900, 14_300, 0.75), (19_560, 19_900, 1.25) })
            Add(new() { Lane = 2, Type = "lane-to-shoulder dropoff", From = from, To = to, OffsetFrom = 12, OffsetTo = 12, Length = to - from, Depth = drop, Note = "Measured a foot out from the edge" });

        foreach (var (lane, from, to, width) in new[] { (2, 4_800.0, 5_050.0, 0.4), (2, 9_700, 9_990, 0.6), (1, 12_000, 12_180, 0.25), (2, 25_300, 25_520, 0.5) })
            Add(new() { Lane = lane, Type = "lane-to-shoulder separation", From = from, To = to, OffsetFrom = lane == 1 ? 0 : 12, OffsetTo = lane == 1 ? 0 : 12, Length = to - from, Width = width });

        foreach (var (from, to) in new[] { (3_120.0, 3_175.0), (3_410, 3_490), (12_060, 12_140), (12_420, 12_470), (20_700, 20_760), (8_210, 8_240) })
        {
            Add(new()
            {
                Lane = 2, Type = "water bleeding and pumping", From = from, To = to, OffsetFrom = 10.5, OffsetTo = 12, Length = to - from, Count = 1, Cause = "load",
                Note = _dice.One("Grey fan on the shoulder", "Wet three days after rain", "Shoulder joint stained"),
            });
        }
    }
}
