using System.Text;
using Slabwright.Core.Survey;
using Slabwright.Data.Import;

namespace Slabwright.SystemTests.Import;

/// <summary>Tests that weigh the memory of the whole process run alone: what other tests hold would count.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class AloneCollection
{
    /// <summary>Name of the collection.</summary>
    public const string Name = "alone in the process";
}

/// <summary>A million rows are read as a stream: what is held goes with what is kept.</summary>
[Collection(AloneCollection.Name)]
public class MillionRowTests
{
    private const int Rows = 1_000_000;

    // Pinned with a margin: a distress, its identifier and its origin take about 500 bytes.
    private const int MostBytesPerRow = 800;

    [Fact]
    public void A_million_rows_are_read_in_memory_in_proportion()
    {
        var road = ImportScene.RoadOf(3_000_000);
        using var stream = new GeneratedSurvey(Rows);
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var progress = new Last();
        var record = SurveyImporter.Import(stream, "network.csv", road, ImportScene.Options, TestContext.Current.CancellationToken, progress);
        var held = GC.GetTotalMemory(forceFullCollection: true) - before;
        Assert.Equal(Rows, record.Distresses.Length);
        Assert.Empty(record.Findings);
        Assert.Equal(Rows, progress.Value);
        Assert.Equal(Rows, record.Distresses.Select(d => d.Id).Distinct().Count());
        Assert.True(held < (long)MostBytesPerRow * Rows, $"{held / Rows} bytes a row are held, more than {MostBytesPerRow}.");
        GC.KeepAlive(road);
    }

    private sealed class Last : IProgress<long>
    {
        public long Value { get; private set; }

        public void Report(long value) => Value = value;
    }

    /// <summary>A seekable stream of a survey that is never held in whole.</summary>
    private sealed class GeneratedSurvey(int rows) : Stream
    {
        private static readonly string[] Types = ["TC", "Longitudinal cracking", "Corner breaks", "7", "Joint deterioration"];
        private byte[] line = [];
        private int used;
        private int next = -1;

        public override bool CanRead => true;

        public override bool CanSeek => true;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => next < 0 ? 0 : 1;
            set => Seek(value, SeekOrigin.Begin);
        }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var read = 0;
            while (read < count)
            {
                if (used == line.Length && !Line()) break;
                var part = Math.Min(count - read, line.Length - used);
                line.AsSpan(used, part).CopyTo(buffer.AsSpan(offset + read));
                (used, read) = (used + part, read + part);
            }

            return read;
        }

        public override long Seek(long offset, SeekOrigin origin)
        {
            Assert.Equal((0L, SeekOrigin.Begin), (offset, origin));
            (line, used, next) = ([], 0, -1);
            return 0;
        }

        public override void Flush()
        {
        }

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        private bool Line()
        {
            if (next >= rows) return false;
            var text = next < 0 ? "lane,type,severity,from_ft,extent_ft,width_in,depth_in,date\n" : Row(next);
            (line, used) = (Encoding.ASCII.GetBytes(text), 0);
            next++;
            return true;
        }

        private static string Row(int i) => string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"{1 + i % 2},{Types[i % 5]},{"LMH"[i / 5 % 3]},{i * 2.9:0.0},{i % 4},0.{1 + i % 8},{1 + i % 9},2026-03-{1 + i % 28:00}\n");
    }
}
