using Slabwright.Data.Folder;

namespace Slabwright.Examples.Marrowby;

/// <summary>The engineer's own decisions, each with its reason.</summary>
internal static class OverrideTable
{
    private const string Engineer = "I. Verrill, PE";

    public static CsvText Text(IReadOnlyList<SurveyRow> rows)
    {
        var table = new CsvText();
        table.Add("distress", "treatment", "because", "by", "on");
        void Add(string day, string treatment, string because, Func<SurveyRow, bool> which) =>
            table.Add(rows.First(which).Id, treatment, because, Engineer, day);

        Add("2025-06-11", "slab replacement", "Core C03 shows rubble over the whole depth between the two cracks; what would be left is not worth keeping.",
            r => r.Type == "transverse cracking" && r.Lane == 2 && r.From is > 3300 and < 3520);
        Add("2025-06-11", "full-depth repair", "Core C07 found D-cracking in the lower half; a partial-depth repair would sit on rubble.",
            r => r.Type == "spalling of transverse joints" && r.From is > 7400 and < 9600);
        Add("2025-06-11", "partial-depth repair", "Core C10: damage ends at 3 in, sound concrete below.",
            r => r.Type == "spalling of transverse joints" && r.Lane == 1 && r.From is > 16_000 and < 18_500);
        Add("2025-06-18", "leave", "Tight crack, no faulting, unchanged since 2019; watch it.",
            r => r.Type == "transverse cracking" && r.Severity == "low" && r.Lane == 1);
        Add("2025-06-18", "leave", "Shoulder is rebuilt next year under another contract.", r => r.Type == "lane-to-shoulder dropoff");
        Add("2025-07-02", "seal", "Rides well; sealing keeps the water out until the overlay of 2029.",
            r => r.Type == "longitudinal cracking" && r.Severity == "moderate");
        return table;
    }
}
