using Slabwright.Sheets.Figures;

namespace Slabwright.SystemTests.Sheets;

/// <summary>What every figure must keep: nothing leaves it, no word lies on another.</summary>
internal static class FigureAsserts
{
    public static void Readable(Figure figure, TextRuler ruler)
    {
        var taken = new List<(FigureText Text, double Left, double Top, double Right, double Bottom)>();
        foreach (var text in figure.Shapes.OfType<FigureText>())
        {
            var (left, top, right, bottom) = FigureTexts.BoxOf(text, ruler);
            Assert.True(left >= -0.01 && top >= -0.01 && right <= figure.Width + 0.01 && bottom <= figure.Height + 0.01, $"“{text.Text}” leaves “{figure.Title}”");
            var other = taken.FirstOrDefault(t => left < t.Right - 0.5 && t.Left < right - 0.5 && top < t.Bottom - 1.2 && t.Top < bottom - 1.2);
            Assert.True(other.Text is null, $"“{text.Text}” lies on “{other.Text?.Text}” in “{figure.Title}”");
            taken.Add((text, left, top, right, bottom));
        }
    }
}
