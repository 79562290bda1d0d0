using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using Slabwright.Core.Handbook;
using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Night;
using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Measures;
using Slabwright.Sheets.Concrete;
using Slabwright.Sheets.Figures;
using Slabwright.Sheets.Joints;
using Slabwright.Sheets.Words;

namespace Slabwright.SystemTests.Sheets;

/// <summary>Figures of a night's concrete: readable at every width, every line named with its unit and clock time, curves where their numbers say.</summary>
public sealed class NightFigureTests
{
    private static readonly JobUnits Us = JobUnits.Of(UnitSystem.UsCustomary);
    private static readonly JobUnits Si = JobUnits.Of(UnitSystem.Si);
    private static readonly MixNight Quick = HandMadeNights.Plan.MixNights[0];
    private static readonly MixNight Slow = HandMadeNights.Plan.MixNights[1];
    private static readonly NightClock Clock = new(Quick.Night, 1);
    private static readonly Lazy<TemperatureHistory> Section = new(() => new WeatherSlabHeat(HandMadeNights.Weather) { RepairLength = 2.4 }.History(Quick.Forecast!.Case.Heat, true));
    private static readonly Lazy<NightForecast> Updated = new(() => NightUpdate.With(Quick.Forecast!.Case, new WeatherSlabHeat(HandMadeNights.Weather), Readings(), []));

    [Theory]
    [InlineData(700, 12)]
    [InlineData(640, 12)]
    [InlineData(420, 11)]
    [InlineData(330, 7)]
    public void EveryFigureIsReadable(double width, double size)
    {
        var options = new PlotOptions { Width = width, TextSize = size };
        foreach (var units in new[] { Us, Si })
        {
            foreach (var figure in All(units, options))
            {
                FigureAsserts.Readable(figure, options.Ruler);
                Assert.True(figure.Width <= width + size, $"“{figure.Title}” is {figure.Width:0} wide, {width} was asked for");
                Assert.All(figure.Shapes.OfType<FigureLine>().SelectMany(l => l.Points), p => Assert.True(double.IsFinite(p.X) && double.IsFinite(p.Y)));
                Assert.True(XDocument.Parse(FigureSvg.Write(figure, "p")).Root!.Elements().Any(e => e.Name.LocalName == "desc" && e.Value.Length > 40), figure.Title);
            }
        }
    }

    [Fact]
    public void TheStrengthPlotNamesCriterionDeadlineAndOpeningInClockTime()
    {
        var words = Words(StrengthPlot.Draw(Quick.Forecast!, Clock, Us, new PlotOptions()));
        Assert.Contains("Strength, compressive, psi", words);
        Assert.Contains("asked for: 2,000 psi", words);
        Assert.Contains("open by 05:00", words);
        Assert.Contains("least age 4 h: 02:00", words);
        Assert.Contains($"opens {ClockText.NextMinute(Quick.OpensAt!.Value).ToString("HH:mm", CultureInfo.InvariantCulture)} (95 % sure)", words);
        Assert.Contains("Clock time, placed at 22:00", words);
        Assert.Contains(words, w => w.StartsWith("Mon 7 Sep", StringComparison.Ordinal));
        Assert.Contains(words, w => w.StartsWith("Tue 8 Sep", StringComparison.Ordinal));
        Assert.Superset(new HashSet<string> { "5 %", "median", "95 %" }, words.ToHashSet());
        Assert.Contains("asked for: 13.8 MPa", Words(StrengthPlot.Draw(Quick.Forecast!, Clock, Si, new PlotOptions())));
    }

    [Fact]
    public void TheMedianRunsThroughTheNumbersOfTheForecast()
    {
        var figure = StrengthPlot.Draw(Quick.Forecast!, Clock, Us, new PlotOptions());
        var median = figure.Shapes.OfType<FigureLine>().Single(l => l.Style == FigureStyle.CurveFirst).Points;
        var level = figure.Shapes.OfType<FigureLine>().First(l => l.Style == FigureStyle.Limit && l.Points[0].Y == l.Points[1].Y).Points[0].Y;
        var perPsi = (median[0].Y - level) / 2000;
        var hours = Quick.Forecast!.Hours;
        for (var i = 0; i < median.Length; i++) Assert.Equal(hours[i].Strength.Middle / 6894.757293168361, (median[0].Y - median[i].Y) / perPsi, 1.0);
        var perHour = (median[2].X - median[0].X) / hours[2].Hours;
        var deadline = figure.Shapes.OfType<FigureLine>().Single(l => l.Style == FigureStyle.Deadline).Points[0].X;
        Assert.Equal(7, (deadline - median[0].X) / perHour, 0.01);
        var opening = figure.Shapes.OfType<FigureCircle>().Single(c => c.Ref == "opening").Centre;
        Assert.Equal(Quick.Forecast!.Earliest!.Value, (opening.X - median[0].X) / perHour, 0.01);
        Assert.Equal(level, opening.Y, 0.01);
    }

    [Fact]
    public void WhatWasNeverTestedWearsAnotherPattern()
    {
        var tested = StrengthPlot.Draw(Quick.Forecast!, Clock, Us, new PlotOptions());
        Assert.Equal(2, tested.Shapes.Count(s => s.Ref is "band" or "band-untested"));
        Assert.Contains("90 of 100 nights, before the youngest specimens: curve extended", Words(tested));
        var estimated = StrengthPlot.Draw(Slow.Forecast!, Clock, Us, new PlotOptions());
        Assert.DoesNotContain(estimated.Shapes, s => s.Ref == "band");
        Assert.Contains("90 of 100 nights, estimated from what is in the mix", Words(estimated));
        Assert.NotEqual(FigureInk.Of(FigureStyle.ChanceBand).Hatch, FigureInk.Of(FigureStyle.ChanceBandUntested).Hatch);
    }

    [Fact]
    public void TheForecastBeforeTheReadingsStaysInSight()
    {
        var figure = StrengthPlot.Draw(Updated.Value.Posterior, Clock, Us, new PlotOptions(), Updated.Value.Prior);
        Assert.Equal(4, figure.Shapes.OfType<FigureLine>().Count(l => l.Style == FigureStyle.CurveBefore));
        Assert.Contains("forecast before the readings (5 %, median, 95 %)", Words(figure));
        Assert.Contains("before the readings", Words(ChancePlot.Draw(Updated.Value.Posterior, Clock, Us, new PlotOptions(), Updated.Value.Prior)));
    }

    [Fact]
    public void TheChanceAtTheDeadlineIsWritten()
    {
        var words = Words(ChancePlot.Draw(Slow.Forecast!, Clock, Us, new PlotOptions()));
        Assert.Contains("Chance to be open, %", words);
        Assert.Contains("asked for: 95 %", words);
        Assert.Contains($"{ChanceWords.Of(Slow.ChanceByDeadline!.Value)} at the deadline", words);
    }

    [Theory]
    [InlineData(0, "under 0.1 %")]
    [InlineData(0.0042, "0.4 %")]
    [InlineData(0.77, "77 %")]
    [InlineData(0.995, "99.5 %")]
    [InlineData(1, "over 99.9 %")]
    public void ChancesNeverSoundCertain(double chance, string words) => Assert.Equal(words, ChanceWords.Of(chance));

    [Fact]
    public void TemperaturesNameEveryPlaceAndReadingWithoutColourAlone()
    {
        var figure = TemperaturePlot.Draw(Section.Value, Clock, Us, new PlotOptions(), HandMadeNights.Weather, Readings());
        var words = Words(figure);
        foreach (var name in new[] { "surface", "mid-depth", "bottom", "edge", "top corner", "bottom corner", "air" }) Assert.Equal(2, words.Count(w => w == name));
        Assert.Contains("Temperature, °F", words);
        Assert.Contains("read: A", words);
        var curves = figure.Shapes.OfType<FigureLine>().Select(l => l.Style).Where(s => s is >= FigureStyle.CurveFirst and <= FigureStyle.CurveSixth).Distinct().ToList();
        Assert.Equal(6, curves.Count);
        Assert.Equal(6, curves.Select(c => string.Join(' ', FigureInk.Of(c).Dash.IsDefault ? [] : FigureInk.Of(c).Dash)).Distinct().Count());
    }

    [Fact]
    public void MapsOfOneHistoryShareTheirBandsAndKey()
    {
        var maps = new[] { 0, 10, 20 }.Select(i => SectionMap.Draw(Section.Value, i, Clock, Si, new PlotOptions())).ToList();
        var keys = maps.Select(m => string.Join(' ', Words(m).Skip(Words(m).IndexOf("°C")).Where(w => w.All(c => char.IsDigit(c) || c is '.' or '−')))).ToList();
        Assert.Single(keys.Distinct());
        foreach (var name in new[] { "repair", "old slab", "slab", "base", "soil" }) Assert.Contains(name, Words(maps[0]));
        Assert.Contains("Tue 8 Sep 03:00, 5.0 h after placing", Words(maps[1]));
        Assert.Contains(Words(maps[1]), w => w.StartsWith("Depth, mm (×", StringComparison.Ordinal));
        Assert.Throws<ArgumentException>(() => SectionMap.Draw(Section.Value with { Fields = [] }, 0, Clock, Si, new PlotOptions()));
        Assert.Throws<ArgumentOutOfRangeException>(() => SectionMap.Draw(Section.Value, 999, Clock, Si, new PlotOptions()));
    }

    /// <summary>The hottest band lies between the cuts of the repair, and the description names the hottest cell of the field.</summary>
    [Fact]
    public void TheMapShowsTheFieldItWasGiven()
    {
        var (history, field) = (Section.Value, Section.Value.Fields[14]);
        var figure = SectionMap.Draw(history, 14, Clock, Si, new PlotOptions());
        var hottest = figure.Shapes.OfType<FigureArea>().Where(a => a.Style is >= FigureStyle.Band1 and <= FigureStyle.Band10 && a.Rings[0].Length > 4).Max(a => a.Style);
        var ring = figure.Shapes.OfType<FigureArea>().Last(a => a.Style == hottest && a.Rings[0].Length > 4).Rings[0];
        var (left, right) = (ring.Min(p => p.X), ring.Max(p => p.X));
        var cuts = figure.Shapes.OfType<FigureLine>().Where(l => l.Style == FigureStyle.BoundaryCut).Select(l => l.Points[0].X).Order().ToArray();
        Assert.Equal(2, cuts.Length);
        Assert.InRange(left, cuts[0], (cuts[0] + cuts[1]) / 2);
        Assert.InRange(right, (cuts[0] + cuts[1]) / 2, cuts[1]);
        Assert.Contains(field.Temperatures.Max().ToString("0", CultureInfo.InvariantCulture), figure.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void TheComparisonRingsTheCheapestMixThatOpens()
    {
        var night = HandMadeNights.Plan.MixNights.Where(m => m.Night == Quick.Night).ToList();
        Assert.True(MixChoice.Opens(Quick, 0.95));
        Assert.False(MixChoice.Opens(Slow, 0.95));
        Assert.Same(Quick, MixChoice.Cheapest(night, 0.95));
        var figure = MixComparisonPlot.Draw(night, 0.95, Us, "USD", new PlotOptions());
        var words = Words(figure);
        Assert.Contains("Concrete, USD / yd³", words);
        Assert.Contains("cheapest that opens by the deadline with 95 %", words);
        var ring = Assert.Single(figure.Shapes.OfType<FigureCircle>(), c => c.Ref == "cheapest");
        Assert.Equal(ring.Centre, figure.Shapes.OfType<FigureCircle>().Single(c => c.Ref == "mix-QUICK").Centre);
        Assert.Equal(FigureStyle.PointFails, figure.Shapes.Single(s => s.Ref == "mix-SLOW").Style);
        Assert.Contains(words, w => w.StartsWith("No price: Tarn Unpriced", StringComparison.Ordinal));
        Assert.Contains(words, w => w.StartsWith("No forecast: Tarn Special", StringComparison.Ordinal));
    }

    [Fact]
    public void NamesAboveAPlotKeepApartAndOffEachOthersLines()
    {
        NightMark[] marks = [new(100, "open by 05:00", FigureStyle.Deadline, 80), new(112, "opens 05:20", FigureStyle.CurveSecond, 90), new(125, "least age", FigureStyle.Limit, 70)];
        var laid = NightMarks.Lay(marks, 240);
        Assert.Equal(3, laid.Count);
        foreach (var a in laid)
        {
            foreach (var b in laid.Where(o => o != a))
            {
                if (a.Row == b.Row) Assert.True(a.Left + a.Mark.Wide <= b.Left || b.Left + b.Mark.Wide <= a.Left);
                else if (b.Row > a.Row) Assert.False(b.Mark.X > a.Left && b.Mark.X < a.Left + a.Mark.Wide, $"the line of “{b.Mark.Name}” runs through “{a.Mark.Name}”");
            }
        }
    }

    private static IEnumerable<Figure> All(JobUnits units, PlotOptions options)
    {
        foreach (var night in HandMadeNights.Plan.MixNights.Where(m => m.Forecast is not null))
        {
            yield return StrengthPlot.Draw(night.Forecast!, new NightClock(night.Night, 1), units, options);
            yield return ChancePlot.Draw(night.Forecast!, new NightClock(night.Night, 1), units, options);
        }

        yield return StrengthPlot.Draw(Updated.Value.Posterior, Clock, units, options, Updated.Value.Prior);
        yield return TemperaturePlot.Draw(Section.Value, Clock, units, options, HandMadeNights.Weather, Readings());
        yield return SectionMap.Draw(Section.Value, 0, Clock, units, options);
        yield return SectionMap.Draw(Section.Value, 14, Clock, units, options);
        yield return MixComparisonPlot.Draw([.. HandMadeNights.Plan.MixNights.Where(m => m.Night == Quick.Night)], 0.95, units, "USD", options);
        yield return MixComparisonPlot.Draw([.. HandMadeNights.Plan.MixNights], 0.95, units, "USD", options);
    }

    private static CheckedReadings Readings()
    {
        var top = Section.Value.Point("top").Temperatures;
        return ReadingCheck.Of(new NightReadings
        {
            Repair = "R001", Mix = "QUICK", PlacedAt = Quick.Night.Placed,
            Probes = [new Probe("A", SlabPlace.Surface, [.. Enumerable.Range(0, 9).Select(k => new ProbeReading(Quick.Night.Placed.AddMinutes(30 * k), top[k] - 2))])],
        });
    }

    private static List<string> Words(Figure figure) => [.. figure.Shapes.OfType<FigureText>().Select(t => t.Text)];
}
