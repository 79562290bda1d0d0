using System.Text;
using Slabwright.Core.Evidence;
using Slabwright.Core.Survey;
using static Slabwright.SystemTests.Import.ImportScene;

namespace Slabwright.SystemTests.Import;

/// <summary>Whatever the bytes, the import ends with a record: no exception, every distress on the road, every finding with its mend.</summary>
public class ImportFuzzTests
{
    private const string Survey = """"
        id,lane,type,severity,from_station,to_station,offset_from_ft,length_ft,width_in,depth_in,faulting_in,area_ft2,count,cause,across,date,note
        A1,1,transverse cracking,moderate,101+89.1,101+89.1,0,12,0.15,4,0.1,,,load,,2025-04-21,"tight, dry"
        A2,2,corner breaks,H,102+02.0,102+07.0,7,7,1/4",50 %,,8,2,joint,RWP,4/14/2025,
        A3,2,9,,103+30,104+50,0,,,,,1400,,,full,14 Apr 2025,"both ""paths"""
        A4,1,Joint deterioration,L,slab,,1,,,,,,,,,2025-04-14,
        """";

    private static readonly string[] Pieces =
        ["\"", ",", ";", "\t", "\n", "\r", "\0", "-", "1e308", "NaN", "99999999999999999999", "%", "½", "ft", "'", "+", "é", "\uFFFD", "\uD800", "#", "//", "=1/0", "total", "lane", "0x1F", "(", "]", "1/0", "-0", "∞"];

    [Fact]
    public void Mutated_text_never_throws()
    {
        for (var seed = 1; seed <= 1500; seed++)
        {
            var random = new Random(seed);
            var text = new StringBuilder(Survey);
            for (var edits = random.Next(1, 12); edits > 0; edits--)
            {
                var at = random.Next(text.Length);
                if (random.Next(3) == 0) text.Remove(at, Math.Min(random.Next(1, 20), text.Length - at));
                else text.Insert(at, Pieces[random.Next(Pieces.Length)]);
            }

            CheckHolds(Read(text.ToString()), seed);
        }
    }

    [Fact]
    public void Random_bytes_never_throw()
    {
        byte[][] heads = [[], [0xEF, 0xBB, 0xBF], [0xFF, 0xFE], [0xFE, 0xFF], "PK\x03\x04"u8.ToArray(), "SQLite format 3\0"u8.ToArray(), "{"u8.ToArray(), [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1]];
        for (var seed = 1; seed <= 400; seed++)
        {
            var random = new Random(seed);
            var bytes = new byte[random.Next(2000)];
            random.NextBytes(bytes);
            CheckHolds(Read([.. heads[seed % heads.Length], .. bytes], "noise"), seed);
        }
    }

    [Theory]
    [InlineData("survey.xlsx")]
    [InlineData("survey.gpkg")]
    [InlineData("points.geojson")]
    public void Damaged_files_never_throw(string file)
    {
        var whole = File.ReadAllBytes(PathOf(file));
        for (var seed = 1; seed <= 120; seed++)
        {
            var random = new Random(seed);
            var bytes = (byte[])whole.Clone();
            for (var edits = random.Next(1, 40); edits > 0; edits--) bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            CheckHolds(Read(bytes, file), seed);
        }
    }

    private static void CheckHolds(SurveyRecord record, int seed)
    {
        foreach (var d in record.Distresses)
        {
            Assert.True(d.From >= 0 && d.From <= d.To && d.To <= Road.Length, $"seed {seed}: {d}");
            Assert.True(d.Slab >= 1 && d.Slab <= 200 && d.Lane is 1 or 2 && d.Count >= 1, $"seed {seed}: {d}");
            Assert.True(d.Depth is null or (>= 0 and <= 0.26) && d.Width is null or (>= 0 and <= 3.7), $"seed {seed}: {d}");
        }

        Assert.Equal(record.Distresses.Length, record.Distresses.Select(d => d.Id).Distinct().Count());
        Assert.All(record.Findings, f => Assert.False(string.IsNullOrEmpty(f.Mend) || string.IsNullOrEmpty(f.Sentence) || f.Place.File is null));
        Assert.True(record.Distresses.Length > 0 || record.Findings.Any(f => f.Level == FindingLevel.Error), $"seed {seed}: neither distress nor error");
    }
}
