using System.Data;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using ExcelDataReader;
using Slabwright.Sheets;
using Slabwright.Sheets.Workbook;

namespace Slabwright.SystemTests.Sheets;

/// <summary>The workbook judged by another reader, by working its formulas out from the file alone, and by LibreOffice where it is installed.</summary>
public sealed partial class WorkbookReadBackTests
{
    private static readonly SheetOptions Options = new(new DateOnly(2026, 4, 1));

    public static TheoryData<string> Jobs => OddJobs.Names;

    [Theory]
    [MemberData(nameof(Jobs))]
    public void AnotherReaderSeesTheSchedule(string job)
    {
        var (project, plan) = OddJobs.Of(job).Build();
        var sheets = Sheets(WorkbookFile.Write(project, plan, Options).Content);
        Assert.Equal(["Bid", "Take-off", "Repairs", "Surface works", "Joints", "Alternatives", "Seals", "Lift pieces", "Reasons", "Findings"], sheets.Keys);
        var bid = sheets["Bid"].Skip(5).ToList();
        var lines = plan.Quantities.Schedule.Lines;
        for (var i = 0; i < lines.Length; i++)
        {
            Assert.Equal(lines[i].Measured, Convert.ToDouble(bid[i][3], CultureInfo.InvariantCulture), 1e-9);
            Assert.Equal(lines[i].Pay, Convert.ToDouble(bid[i][5], CultureInfo.InvariantCulture), 1e-9);
            Assert.Equal((double)lines[i].Amount, Convert.ToDouble(bid[i][7], CultureInfo.InvariantCulture), 0.001);
        }

        Assert.Equal((double)plan.Quantities.Schedule.Total, Convert.ToDouble(bid[lines.Length][7], CultureInfo.InvariantCulture), 0.001);
        Assert.Equal(plan.Boundaries.Repairs.Length, sheets["Repairs"].Count - 1);
        Assert.Equal(plan.Decisions.Length, sheets["Reasons"].Count - 1);
    }

    /// <summary>Works out the Bid sheet from its formulas' text and the cells they name; the values stored beside the formulas are not used.</summary>
    [Theory]
    [MemberData(nameof(Jobs))]
    public void TheFormulasGiveWhatTheCellsShow(string job)
    {
        var (project, plan) = OddJobs.Of(job).Build();
        var file = WorkbookFile.Write(project, plan, Options).Content;
        var (bid, takeOff) = (FormulaSheet.Read(file, 1), FormulaSheet.Read(file, 2));
        var total = 0.0;
        for (var i = 0; i < plan.Quantities.Schedule.Lines.Length; i++)
        {
            var row = (6 + i).ToString(CultureInfo.InvariantCulture);
            var sum = SumPattern().Match(bid.Formulas["D" + row]);
            Assert.True(sum.Success, bid.Formulas["D" + row]);
            var (first, last) = (int.Parse(sum.Groups[1].Value, CultureInfo.InvariantCulture), int.Parse(sum.Groups[2].Value, CultureInfo.InvariantCulture));
            Assert.Equal("I" + row, sum.Groups[3].Value);
            var measured = Enumerable.Range(first, last - first + 1).Where(r => takeOff.Texts.GetValueOrDefault($"I{r}") == bid.Texts["I" + row]).Sum(r => takeOff.Numbers[$"E{r}"]);
            var step = bid.Numbers["E" + row];
            Assert.Equal($"ROUND(ROUNDUP(ROUND(D{row}/E{row},9),0)*E{row},9)", bid.Formulas["F" + row]);
            var pay = Math.Round(Math.Ceiling(Math.Round(measured / step, 9)) * step, 9);
            Assert.Equal($"ROUND(F{row}*G{row},2)", bid.Formulas["H" + row]);
            var amount = Math.Round(pay * bid.Numbers["G" + row], 2, MidpointRounding.AwayFromZero);
            Assert.Equal(bid.Numbers["D" + row], measured, 1e-6);
            Assert.Equal(bid.Numbers["F" + row], pay, 1e-6);
            Assert.Equal(bid.Numbers["H" + row], amount, 0.006);
            total += amount;
        }

        var lastLine = 5 + plan.Quantities.Schedule.Lines.Length;
        Assert.Equal($"SUM(H6:H{lastLine})", bid.Formulas[$"H{lastLine + 1}"]);
        Assert.Equal(bid.Numbers[$"H{lastLine + 1}"], total, 0.02);
    }

    [Fact]
    public void LibreOfficeCalculatesTheSameAmountsFromTheFormulasAlone()
    {
        using var folder = new ScratchFolder();
        var (project, plan) = OddJobs.Of("usual").Build();
        var path = folder.Save(WorkbookFile.Write(project, plan, Options));
        Assert.True(ForgetResults(path) > 3 * plan.Quantities.Schedule.Lines.Length);
        OutsideProgram.Run(
            "soffice", "--headless", "-env:UserInstallation=" + new Uri(Path.Combine(folder.Path, "profile")).AbsoluteUri,
            "--convert-to", "csv", "--outdir", folder.Path, path);
        var rows = File.ReadAllLines(Path.ChangeExtension(path, "csv"), Encoding.Latin1).Select(Numbers).Where(n => n.Length > 0).ToArray();
        var lines = plan.Quantities.Schedule.Lines;
        var first = Array.FindIndex(rows, r => r.Contains((double)lines[0].Amount) && r.Contains((double)lines[0].UnitPrice));
        Assert.True(first >= 0, "The first bid line was not found.");
        for (var n = 0; n < lines.Length; n++)
        {
            Assert.Equal((double)lines[n].Amount, rows[first + n][^1], 0.005);
            Assert.Equal(lines[n].Pay, rows[first + n][^3], 1e-6);
        }

        Assert.Equal((double)plan.Quantities.Schedule.Total, rows[first + lines.Length][^1], 0.005);
    }

    /// <summary>Takes the stored results of all formulas out of a workbook, so that the next program has to work them out; returns how many.</summary>
    private static int ForgetResults(string path)
    {
        var forgotten = 0;
        using var zip = System.IO.Compression.ZipFile.Open(path, System.IO.Compression.ZipArchiveMode.Update);
        foreach (var sheet in zip.Entries.Where(e => e.FullName.StartsWith("xl/worksheets/", StringComparison.Ordinal)).ToArray())
        {
            string text;
            using (var reader = new StreamReader(sheet.Open())) text = reader.ReadToEnd();
            text = FormulaResult().Replace(text, m =>
            {
                forgotten++;
                return m.Groups[1].Value;
            });
            using var writer = new StreamWriter(sheet.Open());
            writer.BaseStream.SetLength(0);
            writer.Write(text);
        }

        return forgotten;
    }

    /// <summary>The cells of a line that are numbers, in order; a code such as an item number at the start counts as one too.</summary>
    private static double[] Numbers(string line) =>
    [
        .. line.Split(',').Select(cell => double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : double.NaN)
            .Where(number => !double.IsNaN(number)),
    ];

    [GeneratedRegex("(<f>[^<]*</f>)<v>[^<]*</v>")]
    private static partial Regex FormulaResult();

    [GeneratedRegex(@"^SUMIFS\('Take-off'!\$E\$(\d+):\$E\$(\d+),'Take-off'!\$I\$\1:\$I\$\2,(I\d+)\)$")]
    private static partial Regex SumPattern();

    private static Dictionary<string, List<object?[]>> Sheets(byte[] file)
    {
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        using var reader = ExcelReaderFactory.CreateReader(new MemoryStream(file));
        var sheets = new Dictionary<string, List<object?[]>>();
        do
        {
            var rows = new List<object?[]>();
            while (reader.Read()) rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetValue)]);
            sheets[reader.Name] = rows;
        }
        while (reader.NextResult());
        return sheets;
    }

    /// <summary>Cells of one sheet straight from the file's XML.</summary>
    private sealed record FormulaSheet(Dictionary<string, string> Formulas, Dictionary<string, double> Numbers, Dictionary<string, string> Texts)
    {
        public static FormulaSheet Read(byte[] file, int number)
        {
            using var zip = new ZipArchive(new MemoryStream(file));
            using var stream = zip.GetEntry($"xl/worksheets/sheet{number}.xml")!.Open();
            var sheet = new FormulaSheet([], [], []);
            var (row, column) = (0, 0);
            foreach (var element in XDocument.Load(stream).Descendants().Where(e => e.Name.LocalName is "row" or "c"))
            {
                if (element.Name.LocalName == "row")
                {
                    (row, column) = (element.Attribute("r") is { } r ? (int)r : row + 1, 0);
                    continue;
                }

                var name = (string?)element.Attribute("r") ?? $"{(char)('A' + column)}{row}";
                column++;
                if (Child(element, "f") is { } formula) sheet.Formulas[name] = formula;
                if (element.Attribute("t") is { Value: "inlineStr" or "str" }) sheet.Texts[name] = Child(element, "t") ?? Child(element, "v") ?? "";
                else if (Child(element, "v") is { } value) sheet.Numbers[name] = double.Parse(value, CultureInfo.InvariantCulture);
            }

            return sheet;
        }

        private static string? Child(XElement cell, string name) => cell.Descendants().FirstOrDefault(e => e.Name.LocalName == name)?.Value;
    }
}
