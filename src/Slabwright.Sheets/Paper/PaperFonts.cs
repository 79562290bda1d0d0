using SkiaSharp;

namespace Slabwright.Sheets.Paper;

/// <summary>Weights the sheets are set in.</summary>
internal enum Face
{
    /// <summary>Reading weight.</summary>
    Text,

    /// <summary>Headings, numbers of repairs, totals.</summary>
    Bold,
}

/// <summary>
/// The typefaces that travel with the program, and for characters they lack a face of the machine. Measuring is cached by size.
/// </summary>
internal sealed class PaperFonts : IDisposable
{
    private static readonly Lazy<SKTypeface> TextFace = new(() => Load("IBMPlexSansCondensed-Text.ttf"));
    private static readonly Lazy<SKTypeface> BoldFace = new(() => Load("IBMPlexSansCondensed-SemiBold.ttf"));

    private readonly Dictionary<(Face Face, float Size), SKFont> fonts = [];
    private readonly Dictionary<(string Family, float Size), SKFont> others = [];

    /// <summary>Font of a face.</summary>
    public SKFont Of(Face face, float size)
    {
        if (fonts.TryGetValue((face, size), out var font)) return font;
        font = Make(face == Face.Bold ? BoldFace.Value : TextFace.Value, size);
        fonts[(face, size)] = font;
        return font;
    }

    /// <summary>Font that can write a text: ours, or the machine's where ours lacks a character.</summary>
    public SKFont For(string text, Face face, float size)
    {
        var font = Of(face, size);
        if (IsPlain(text) || font.ContainsGlyphs(text)) return font;
        foreach (var rune in text.EnumerateRunes())
        {
            if (font.ContainsGlyph(rune.Value)) continue;
            using var match = SKFontManager.Default.MatchCharacter(rune.Value);
            if (match is null) continue;
            if (!others.TryGetValue((match.FamilyName, size), out var other)) others[(match.FamilyName, size)] = other = Make(SKFontManager.Default.MatchFamily(match.FamilyName), size);
            return other;
        }

        return font;
    }

    /// <summary>Width of a text, pt.</summary>
    public float Measure(string text, Face face, float size) => text.Length == 0 ? 0 : For(text, face, size).MeasureText(text);

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var font in fonts.Values) font.Dispose();
        foreach (var font in others.Values) font.Dispose();
    }

    private static bool IsPlain(string text)
    {
        foreach (var c in text)
        {
            if (c is < ' ' or > '~') return false;
        }

        return true;
    }

    private static SKFont Make(SKTypeface face, float size) => new(face, size) { Subpixel = true, LinearMetrics = true, Hinting = SKFontHinting.None };

    private static SKTypeface Load(string name)
    {
        using var stream = typeof(PaperFonts).Assembly.GetManifestResourceStream("Fonts/" + name)
            ?? throw new InvalidOperationException($"The font {name} is missing from the program.");
        using var data = SKData.Create(stream);
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException($"The font {name} could not be read.");
    }
}
