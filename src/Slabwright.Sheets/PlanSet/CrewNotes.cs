using Slabwright.Core.Joints.Design;
using Slabwright.Sheets.Paper;
using Slabwright.Sheets.Words;

namespace Slabwright.Sheets.PlanSet;

/// <summary>Notes for the crew as a table.</summary>
internal static class CrewNotes
{
    public static PaperTable Table(PaperFonts fonts, string title, IEnumerable<CrewNote> notes, float width)
    {
        PaperColumn[] columns = [new(title, 90), new("What to do or keep", 320), new("Source", 110)];
        return new PaperTable(fonts, columns, notes.Select(n => new PaperRow([SheetWords.Capital(n.Name), n.Text, n.Source.ToString()])), width, 7.8f);
    }
}
