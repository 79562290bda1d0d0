using System.Globalization;
using System.Text;

namespace Slabwright.Sheets.Maps;

/// <summary>
/// Writes group codes and values of a DXF file of release 2000 (AC1015). Handles are given out in order, so that the same plan always makes
/// the same file.
/// </summary>
internal sealed class DxfText
{
    private readonly StringBuilder text = new(256 * 1024);
    private int handle = 0x100;

    /// <summary>Next handle, hexadecimal.</summary>
    public string NextHandle() => (handle++).ToString("X", CultureInfo.InvariantCulture);

    /// <summary>Handle that no entity will have.</summary>
    public string HandleSeed => (handle + 0x1000).ToString("X", CultureInfo.InvariantCulture);

    /// <summary>A text value.</summary>
    public DxfText Put(int code, string value)
    {
        text.Append(code.ToString(CultureInfo.InvariantCulture)).Append("\r\n").Append(Escape(value)).Append("\r\n");
        return this;
    }

    /// <summary>A whole number.</summary>
    public DxfText Put(int code, int value) => Put(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>A real number.</summary>
    public DxfText Put(int code, double value) => Put(code, value.ToString("0.0########", CultureInfo.InvariantCulture));

    /// <summary>A point in three consecutive groups: code, code + 10, code + 20.</summary>
    public DxfText Point(int code, MapPoint point) => Put(code, point.X).Put(code + 10, point.Y).Put(code + 20, 0.0);

    /// <summary>Start of an entity on a layer in model space.</summary>
    public DxfText Entity(string type, string layer, string subclass) =>
        Put(0, type).Put(5, NextHandle()).Put(330, "1F").Put(100, "AcDbEntity").Put(8, layer).Put(100, subclass);

    /// <summary>Appends what another writer wrote.</summary>
    public void Append(DxfText other) => text.Append(other.text);

    /// <summary>The bytes; characters beyond ASCII are written as <c>\U+XXXX</c>, which every reader of the format knows.</summary>
    public byte[] ToBytes() => Encoding.ASCII.GetBytes(text.ToString());

    private static string Escape(string value)
    {
        if (value.All(c => c is >= ' ' and <= '~')) return value;
        var escaped = new StringBuilder(value.Length + 16);
        foreach (var c in value)
        {
            if (c is >= ' ' and <= '~') escaped.Append(c);
            else if (c < ' ') escaped.Append(' ');
            else escaped.Append("\\U+").Append(((int)c).ToString("X4", CultureInfo.InvariantCulture));
        }

        return escaped.ToString();
    }
}
