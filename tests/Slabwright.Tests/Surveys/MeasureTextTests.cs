using Slabwright.Core.Measures;
using Slabwright.Core.Survey;

namespace Slabwright.Tests.Surveys;

public class MeasureTextTests
{
    [Theory]
    [InlineData("3", 3, "")]
    [InlineData("3 in", 3, "in")]
    [InlineData("3in.", 3, "in")]
    [InlineData("0.25\"", 0.25, "in")]
    [InlineData("1/4 in", 0.25, "in")]
    [InlineData("1 1/4\"", 1.25, "in")]
    [InlineData("2-1/2 in", 2.5, "in")]
    [InlineData("½ in", 0.5, "in")]
    [InlineData("1½\"", 1.5, "in")]
    [InlineData("2' 6\"", 2.5, "ft")]
    [InlineData("2'6\"", 2.5, "ft")]
    [InlineData("2 ft 6 in", 2.5, "ft")]
    [InlineData("2′ 6″", 2.5, "ft")]
    [InlineData("12'", 12, "ft")]
    [InlineData("6mm", 6, "mm")]
    [InlineData("1.2 m", 1.2, "m")]
    [InlineData("40 %", 40, "%")]
    [InlineData("18 sq ft", 18, "ft2")]
    [InlineData("2 yd²", 2, "yd2")]
    [InlineData("-3 mm", -3, "mm")]
    [InlineData("−3 mm", -3, "mm")]
    [InlineData("1e3", 1000, "")]
    [InlineData("1,234", 1234, "")]
    [InlineData("1,234.5 ft", 1234.5, "ft")]
    [InlineData("1.234,5 m", 1234.5, "m")]
    [InlineData("1 234,5", 1234.5, "")]
    [InlineData("1\u00a0234.5", 1234.5, "")]
    [InlineData("1'234.5 m", 1234.5, "m")]
    [InlineData("3,5", 3.5, "")]
    [InlineData("0,125", 0.125, "")]
    [InlineData("1,234,567", 1234567, "")]
    [InlineData("5'", 5, "ft")]
    public void Reads_what_people_write(string text, double value, string unit)
    {
        Assert.Equal(MeasureEnding.Read, MeasureText.Read(text, DecimalMark.Unknown, out var read, out var found));
        Assert.Equal(value, read, 1e-12);
        Assert.Equal(unit, found?.Symbol ?? "");
    }

    [Theory]
    [InlineData("1,234", 1.234)]
    [InlineData("1.234", 1234)]
    [InlineData("1.5", 1.5)]
    [InlineData("0.125", 0.125)]
    public void Follows_a_decimal_comma_told_by_the_file(string text, double value)
    {
        Assert.Equal(MeasureEnding.Read, MeasureText.Read(text, DecimalMark.Comma, out var read, out _));
        Assert.Equal(value, read, 1e-12);
    }

    [Theory]
    [InlineData("abc")]
    [InlineData("3-6")]
    [InlineData("<3")]
    [InlineData("1/0")]
    [InlineData("1,23,456.7.8")]
    [InlineData("1,2345,678")]
    [InlineData("")]
    [InlineData("--5")]
    [InlineData("10 1")]
    public void Refuses_what_is_no_number(string text) =>
        Assert.Equal(MeasureEnding.NotANumber, MeasureText.Read(text, DecimalMark.Unknown, out _, out _));

    [Theory]
    [InlineData("3 furlongs")]
    [InlineData("3 in in")]
    [InlineData("2' 14\"")]
    [InlineData("2 m 6 in")]
    public void Refuses_units_it_does_not_know(string text) =>
        Assert.Equal(MeasureEnding.UnitUnknown, MeasureText.Read(text, DecimalMark.Unknown, out _, out _));
}

public class DayTextTests
{
    [Theory]
    [InlineData("2026-03-01")]
    [InlineData("2026/03/01")]
    [InlineData("2026.3.1")]
    [InlineData("20260301")]
    [InlineData("3/1/2026")]
    [InlineData("03/01/26")]
    [InlineData("01.03.2026")]
    [InlineData("1 Mar 2026")]
    [InlineData("1-Mar-2026")]
    [InlineData("March 1, 2026")]
    [InlineData("Mar 1 2026")]
    [InlineData("2026-03-01T22:15:00Z")]
    [InlineData("2026-03-01 22:15")]
    [InlineData("3/1/2026 10:15 PM")]
    [InlineData("46082")]
    public void Reads_the_first_of_March(string text)
    {
        Assert.True(DayText.TryRead(new RawCell(text), UnitSystem.UsCustomary, out var day, out _));
        Assert.Equal(new DateOnly(2026, 3, 1), day);
    }

    [Fact]
    public void Spreadsheet_serials_count_from_the_end_of_1899()
    {
        // ECMA-376 part 1, 18.17.4.1: in the 1900 date base 1 January 2000 is 36526.
        Assert.True(DayText.TryRead(new RawCell("36526", 36526), UnitSystem.Si, out var day, out _));
        Assert.Equal(new DateOnly(2000, 1, 1), day);
    }

    [Fact]
    public void Day_or_month_first_follows_the_unit_system_and_says_so_when_it_matters()
    {
        Assert.True(DayText.TryRead(new RawCell("03/04/2026"), UnitSystem.UsCustomary, out var us, out var usAssumed));
        Assert.True(DayText.TryRead(new RawCell("03/04/2026"), UnitSystem.Si, out var si, out var siAssumed));
        Assert.True(DayText.TryRead(new RawCell("13/04/2026"), UnitSystem.UsCustomary, out var plain, out var plainAssumed));
        Assert.Equal((new DateOnly(2026, 3, 4), true), (us, usAssumed));
        Assert.Equal((new DateOnly(2026, 4, 3), true), (si, siAssumed));
        Assert.Equal((new DateOnly(2026, 4, 13), false), (plain, plainAssumed));
    }

    [Theory]
    [InlineData("2024")]
    [InlineData("31/31/2026")]
    [InlineData("2026-02-30")]
    [InlineData("yesterday")]
    [InlineData("1/2")]
    [InlineData("12345-1-1")]
    public void Refuses_what_is_no_day(string text) => Assert.False(DayText.TryRead(new RawCell(text), UnitSystem.Si, out _, out _));
}
