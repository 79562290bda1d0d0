using System.Buffers;
using System.Text;

namespace Slabwright.Data.Import;

/// <summary>How to decode a text file.</summary>
/// <param name="Encoding">Encoding.</param>
/// <param name="Doubtful">True when some bytes do not fit and are shown as replacement characters.</param>
internal readonly record struct Decoding(Encoding Encoding, bool Doubtful);

/// <summary>
/// Tells a text's encoding: by its byte order mark; else UTF-16 by the zero bytes of Latin letters; else UTF-8 where all bytes fit; else
/// Windows-1252, which holds Latin-1. A text that is UTF-8 but for a few bytes is read as that, with those bytes replaced.
/// </summary>
internal static class TextDecoding
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Tells the encoding of a stream, which is left at its start.</summary>
    public static Decoding Tell(Stream stream)
    {
        stream.Position = 0;
        var head = new byte[1 << 16];
        var length = stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        var bytes = head.AsSpan(0, length);
        stream.Position = 0;
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF])) return new(Utf8, !IsUtf8(stream));
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE])) return new(Encoding.Unicode, false);
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF])) return new(Encoding.BigEndianUnicode, false);
        if (Utf16(bytes) is { } wide) return new(wide, false);
        if (IsUtf8(stream)) return new(Utf8, false);
        return IsMostlyUtf8(bytes) ? new(Utf8, true) : new(CodePagesEncodingProvider.Instance.GetEncoding(1252)!, false);
    }

    /// <summary>UTF-16 without a mark: nearly every other byte of Latin text is zero.</summary>
    private static UnicodeEncoding? Utf16(ReadOnlySpan<byte> bytes)
    {
        var sample = bytes[..Math.Min(bytes.Length & ~1, 4096)];
        var (even, odd) = (0, 0);
        for (var i = 0; i + 1 < sample.Length; i += 2)
        {
            if (sample[i] == 0) even++;
            if (sample[i + 1] == 0) odd++;
        }

        var pairs = sample.Length / 2;
        if (pairs < 4) return null;
        if (odd > 0.7 * pairs && even < 0.1 * pairs) return new UnicodeEncoding(bigEndian: false, byteOrderMark: false);
        return even > 0.7 * pairs && odd < 0.1 * pairs ? new UnicodeEncoding(bigEndian: true, byteOrderMark: false) : null;
    }

    /// <summary>Reads the whole stream to see whether its bytes are UTF-8; leaves it at its start.</summary>
    private static bool IsUtf8(Stream stream)
    {
        var decoder = StrictUtf8.GetDecoder();
        var bytes = ArrayPool<byte>.Shared.Rent(1 << 16);
        var chars = ArrayPool<char>.Shared.Rent(StrictUtf8.GetMaxCharCount(bytes.Length));
        try
        {
            for (var read = stream.Read(bytes); read > 0; read = stream.Read(bytes)) decoder.GetChars(bytes, 0, read, chars, 0, flush: false);
            decoder.GetChars(bytes, 0, 0, chars, 0, flush: true);
            return true;
        }
        catch (DecoderFallbackException)
        {
            return false;
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(bytes);
            ArrayPool<char>.Shared.Return(chars);
            stream.Position = 0;
        }
    }

    private static bool IsMostlyUtf8(ReadOnlySpan<byte> bytes)
    {
        var (good, bad) = (0, 0);
        while (!bytes.IsEmpty)
        {
            var status = Rune.DecodeFromUtf8(bytes, out _, out var used);
            if (status == OperationStatus.Done && used > 1) good++;
            else if (status == OperationStatus.InvalidData) bad++;
            bytes = bytes[used..];
        }

        return good > 4 * bad;
    }
}
