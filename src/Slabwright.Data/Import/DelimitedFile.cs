using Slabwright.Core.Survey;

namespace Slabwright.Data.Import;

/// <summary>Delimited text: tells encoding and delimiter, then streams the rows.</summary>
internal static class DelimitedFile
{
    private const int SampleLength = 1 << 16;
    private static readonly char[] Delimiters = [',', ';', '\t', '|'];

    /// <summary>Opens a text.</summary>
    public static OpenedTable Open(Stream stream, ReadRequest request)
    {
        var decoding = TextDecoding.Tell(stream);
        if (decoding.Doubtful) request.Log.Add(SurveyFaults.TextDoubtful);
        var sample = new char[SampleLength];
        using (var head = new StreamReader(stream, decoding.Encoding, true, SampleLength, leaveOpen: true))
        {
            sample = sample[..head.ReadBlock(sample)];
        }

        stream.Position = 0;
        var (delimiter, stated) = Delimiter(new string(sample), request);
        var text = new StreamReader(stream, decoding.Encoding, true, SampleLength, leaveOpen: true);
        var rows = new DelimitedReader(text, delimiter).Rows();
        var mark = delimiter == ';' ? DecimalMark.Comma : DecimalMark.Unknown;
        var source = new RawSource(request.Log.File, Broken.Guard(stated ? rows.Skip(1) : rows, request.Log), "", mark);
        return new OpenedTable(source, text.Dispose);
    }

    /// <summary>The delimiter with which the text's first rows look most like a survey; a first line <c>sep=;</c> states it.</summary>
    private static (char Delimiter, bool Stated) Delimiter(string sample, ReadRequest request)
    {
        if (sample.StartsWith("sep=", StringComparison.OrdinalIgnoreCase) && sample.Length > 5 && sample[5] is '\r' or '\n') return (sample[4], true);
        var (best, most) = (',', -1);
        foreach (var delimiter in Delimiters)
        {
            var rows = new DelimitedReader(new StringReader(sample), delimiter).Rows().Take(HeaderFinder.RowsSearched).ToList();
            var header = HeaderFinder.Find(rows, request.Cores, request.Options);
            var score = header < 0 ? 0 : 1000 * HeaderFinder.Score(rows[header], request.Cores, request.Options) + rows[header].Cells.Length;
            if (score > most) (best, most) = (delimiter, score);
        }

        return (best, false);
    }
}
