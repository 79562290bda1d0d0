namespace Slabwright.Data.Import;

/// <summary>
/// Characters of a text one by one, every line end as a single line feed, with the line number, and with one remembered place to go back
/// to.
/// </summary>
internal sealed class CharFeed(TextReader text)
{
    private const int Block = 1 << 15;
    private char[] buffer = new char[Block];
    private int next;
    private int filled;
    private int remembered = -1;
    private long rememberedLine;
    private bool ended;

    /// <summary>Line of the next character, from 1.</summary>
    public long Line { get; private set; } = 1;

    /// <summary>The next character without taking it, or −1 at the end.</summary>
    public int Peek()
    {
        if (next == filled && !Fill()) return -1;
        var c = buffer[next];
        return c == '\r' ? '\n' : c;
    }

    /// <summary>Takes the next character, or −1 at the end.</summary>
    public int Next()
    {
        if (next == filled && !Fill()) return -1;
        var c = buffer[next++];
        if (c is not ('\r' or '\n')) return c;
        Line++;
        if (c == '\r' && (next < filled || Fill()) && buffer[next] == '\n') next++;
        return '\n';
    }

    /// <summary>Remembers this place.</summary>
    public void Remember() => (remembered, rememberedLine) = (next, Line);

    /// <summary>Forgets the remembered place.</summary>
    public void Forget() => remembered = -1;

    /// <summary>Goes back to the remembered place and forgets it.</summary>
    public void GoBack() => (next, Line, remembered) = (remembered, rememberedLine, -1);

    /// <summary>Puts characters back that were taken last and are no line ends.</summary>
    public void PutBack(int count) => next -= count;

    /// <summary>Reads another block behind what must be kept: the remembered place, or a few characters that may be put back.</summary>
    private bool Fill()
    {
        if (ended) return false;
        var keep = remembered >= 0 ? remembered : Math.Max(0, next - Block / 2);
        var held = filled - keep;
        if (held + Block > buffer.Length) Array.Resize(ref buffer, Math.Max(buffer.Length * 2, held + Block));
        Array.Copy(buffer, keep, buffer, 0, held);
        (next, filled) = (next - keep, held);
        if (remembered >= 0) remembered = 0;
        var read = text.Read(buffer, filled, buffer.Length - filled);
        filled += read;
        ended = read <= 0;
        return !ended;
    }
}
