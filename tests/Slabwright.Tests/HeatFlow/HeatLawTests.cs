using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Evidence;

namespace Slabwright.Tests.HeatFlow;

/// <summary>Laws that hold whatever the weather and the mix.</summary>
public sealed class HeatLawTests
{
    [Fact]
    public void Heat_is_neither_made_nor_lost()
    {
        var heat = ConcreteHeat.Default with { Ingredients = new(480, 192, 1600) };
        foreach (var column in (SlabColumn[])[Invented.Column, Invented.Column with { Concrete = heat, Covers = CoverSchedule.WithBlanket(3600, 8 * 3600) }])
        {
            var one = column.Run(Invented.Run());
            var two = (Invented.Section with { Column = column, BlanketOverhang = 0.3 }).Run(Invented.Run());
            var formed = (Invented.Section with { Column = column, Ahead = SectionSide.Formed(strip: 7200) }).Run(Invented.Run());
            foreach (var history in (TemperatureHistory[])[one, two, formed])
            {
                Assert.True(history.Balance.Error < 1e-9, $"{history.Balance} leaves {history.Balance.Error}");
                Assert.True(Math.Abs(history.Balance.ThroughSurface) > 1e6, "heat moves, so that the law is not empty");
            }
        }
    }

    /// <summary>What is booked as freed is the heat of the degrees reached.</summary>
    [Fact]
    public void The_heat_freed_is_that_of_the_degree_reached()
    {
        var history = Invented.Column.Run(Invented.Run());
        var least = history.Points.Min(p => p.Degrees[^1]);
        var most = history.Points.Max(p => p.Degrees[^1]);
        Assert.InRange(history.Balance.Freed / (Invented.Mix.HeatPerVolume * 0.23), least - 0.02, most + 0.02);
    }

    [Fact]
    public void Without_cement_no_heat_is_freed()
    {
        var history = (Invented.Column with { Hydration = null }).Run(Invented.Run());
        Assert.Equal(0, history.Balance.Freed);
        Assert.All(history.Points, p => Assert.All(p.Degrees, d => Assert.Equal(0, d)));
        Assert.True(Invented.Column.Run(Invented.Run()).Point("middle").Temperatures.Max() > history.Point("middle").Temperatures.Max() + 3);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    public void Warmer_air_never_makes_any_place_cooler(double warmer)
    {
        var before = Invented.Column.SpinUp(Invented.Run());
        var run = Invented.Run() with { Before = before };
        var (cool, warm) = (Invented.Section.Run(run), Invented.Section.Run(run with { Weather = run.Weather.Shifted(warmer) }));
        foreach (var (a, b) in cool.Points.Zip(warm.Points))
        {
            for (var i = 0; i < a.Temperatures.Length; i++) Assert.True(b.Temperatures[i] >= a.Temperatures[i] - 1e-9, $"{a.Name} {i}");
        }

        Assert.True(warm.Point("top").Temperatures[^1] > cool.Point("top").Temperatures[^1] + 0.3 * warmer);
    }

    [Fact]
    public void A_symmetric_section_stays_symmetric()
    {
        var history = Invented.Section.Run(Invented.Run() with { KeepFields = true });
        var rows = history.Depths.Length;
        foreach (var field in history.Fields)
        {
            for (var c = 0; c < history.Along.Length; c++)
            {
                for (var r = 0; r < rows; r++)
                    Assert.Equal(field.Temperatures[c * rows + r], field.Temperatures[(history.Along.Length - 1 - c) * rows + r], 1e-4f);
            }
        }

        Assert.Equal(history.Point("edge").Temperatures[^1], history.Point("edge behind").Temperatures[^1], 1e-9);
    }

    [Fact]
    public void A_blanket_keeps_the_night_warmer()
    {
        var bare = Invented.Column.Run(Invented.Run(hours: 8));
        var covered = (Invented.Column with { Covers = CoverSchedule.WithBlanket(3600, double.PositiveInfinity) }).Run(Invented.Run(hours: 8));
        for (var i = 2; i < bare.Times.Length; i++)
        {
            Assert.True(covered.Point("top").Temperatures[i] > bare.Point("top").Temperatures[i] + 0.5, $"hour {i}");
            Assert.True(covered.Point("middle").Temperatures[i] > bare.Point("middle").Temperatures[i], $"hour {i}");
        }
    }

    [Fact]
    public void The_middle_of_a_long_repair_is_a_column()
    {
        var column = Invented.Column.Run(Invented.Run());
        var section = (Invented.Section with { Length = 6 }).Run(Invented.Run());
        foreach (var name in (string[])["top", "middle", "bottom"])
        {
            for (var i = 0; i < column.Times.Length; i++) Assert.Equal(column.Point(name).Temperatures[i], section.Point(name).Temperatures[i], 0.02);
        }

        Assert.True(section.Point("edge").Temperatures.Max() < section.Point("middle").Temperatures.Max() - 0.5, "old concrete draws heat from the edge");
    }

    [Fact]
    public void An_isolated_face_keeps_the_edge_warmer()
    {
        var side = SectionSide.OldSlab with { FaceResistance = 0.2 };
        var tight = Invented.Section.Run(Invented.Run(hours: 10));
        var isolated = (Invented.Section with { Ahead = side }).Run(Invented.Run(hours: 10));
        Assert.True(isolated.Point("edge").Temperatures[8] > tight.Point("edge").Temperatures[8] + 0.5);
        Assert.Equal(tight.Point("edge behind").Temperatures[8], isolated.Point("edge behind").Temperatures[8], 0.05);
    }

    /// <summary>Shorter steps and finer cells change little: the defaults are fine enough for 0.1 °C.</summary>
    [Fact]
    public void Steps_and_cells_are_fine_enough()
    {
        var run = Invented.Run();
        var usual = Invented.Section.Run(run);
        var steps = Invented.Section.Run(run with { Step = 60 });
        foreach (var (a, b) in usual.Points.Zip(steps.Points))
            Assert.True(a.Temperatures.Zip(b.Temperatures, (x, y) => Math.Abs(x - y)).Max() < 0.05, $"{a.Name} {a.Temperatures.Zip(b.Temperatures, (x, y) => Math.Abs(x - y)).Max()}");
        var fine = (Invented.Section with { Column = Invented.Column with { Cells = new(0.004, 1.2, 2) } }).Run(run);
        foreach (var (a, b) in usual.Points.Zip(fine.Points))
            Assert.True(a.Temperatures.Skip(1).Zip(b.Temperatures.Skip(1), (x, y) => Math.Abs(x - y)).Max() < 0.25, $"{a.Name} {a.Temperatures.Skip(1).Zip(b.Temperatures.Skip(1), (x, y) => Math.Abs(x - y)).Max()}");
    }

    [Fact]
    public void Missing_weather_is_named()
    {
        var early = Invented.Column.Run(Invented.Run() with { Placed = Invented.Start.AddDays(-1) });
        Assert.Equal("CON-111", Assert.Single(early.Findings).Code);
        Assert.Equal(FindingLevel.Error, early.Findings[0].Level);
        Assert.Empty(early.Times);

        var late = Invented.Column.Run(Invented.Run(hours: 24 * 9));
        Assert.Contains(late.Findings, f => f.Code == "CON-112");
        Assert.Equal((Invented.Weather().End - late.Placed).TotalSeconds, late.Times[^1]);

        var bridged = Invented.Weather() with { Gaps = [new(Invented.Start.AddDays(16), 5, "wind")] };
        Assert.Contains(Invented.Column.Run(Invented.Run(bridged)).Findings, f => f.Code == "CON-113" && f.Place.Field == "wind");

        var shortened = Invented.Column.Run(Invented.Run() with { Placed = Invented.Start.AddHours(22) });
        Assert.Contains(shortened.Findings, f => f.Code == "CON-114");
        Assert.DoesNotContain(Invented.Column.Run(Invented.Run()).Findings, f => f.Code == "CON-114");
    }

    [Fact]
    public void The_old_slab_by_hour_follows_the_day()
    {
        var hours = SawingTemperatures.ByHour(Invented.Column, Invented.Weather(), DateOnly.FromDateTime(Invented.Start).AddDays(16));
        Assert.Equal(Enumerable.Range(0, 24), hours.Select(h => h.Hour));
        Assert.InRange(hours.MaxBy(h => h.Temperature)!.Hour, 14, 19);
        Assert.InRange(hours.MinBy(h => h.Temperature)!.Hour, 5, 9);
        var history = SawingTemperatures.OldSlab(Invented.Column, Invented.Weather(), Invented.Start.AddDays(16), 86400);
        Assert.True(history.Plate.MaxBy(p => p.Time is > 11 * 3600 and < 14 * 3600 ? p.TopMinusBottom : -99).TopMinusBottom > 4);
        Assert.True(history.Plate.First(p => p.Time >= 4 * 3600).TopMinusBottom < -1);
    }
}
