using Slabwright.Core.Concrete.Heat;
using Slabwright.Core.Concrete.Hydration;
using Slabwright.Core.Concrete.Weather;
using Slabwright.Data.Weather;
using Slabwright.SystemTests.Sheets;

namespace Slabwright.SystemTests.HeatFlow;

/// <summary>Our steps against scipy's stiff integrator on the same cells and physics: within 0.1 °C in every cell and hour.</summary>
public sealed class StiffReferenceTests
{
    internal static HeatRun Run(double hours) => new()
    {
        Weather = Weather.Value, Placed = new DateTime(2026, 4, 14, 22, 0, 0), PlacingTemperature = 24, Duration = hours * 3600,
    };

    internal static SlabColumn Column { get; } = new() { Thickness = 0.23, Hydration = HydrationEstimate.From(new(CementComposition.TypeIii, 0.40), 480) };

    private static readonly Lazy<WeatherSeries> Weather = new(() =>
        WeatherFile.Read(Path.Combine(AppContext.BaseDirectory, "data", "weather", "tmy3_723170_NC.csv"), new() { Site = new(36.1, -79.95, -5, 273) }).Series!);

    private static void Python(string script, string input, string output) => OutsideProgram.Python("scipy", script, input, output);

    [Fact]
    public void A_column_over_two_days()
    {
        using var folder = new ScratchFolder();
        var (ours, theirs) = StiffReference.Compare(Column, null, Run(48), folder.Path, Python);
        Assert.True(ours.Balance.Freed > 1.5e7, $"{ours.Balance.Freed} J/m² freed: the slab heats, so that the comparison means something");
        Assert.True(StiffReference.Greatest(ours, theirs) < 0.1, $"{StiffReference.Greatest(ours, theirs)} K");
    }

    [Fact]
    public void A_column_under_a_blanket_laid_and_taken_off()
    {
        using var folder = new ScratchFolder();
        var column = Column with { Covers = CoverSchedule.WithBlanket(2 * 3600, 7 * 3600) };
        var (ours, theirs) = StiffReference.Compare(column, null, Run(24), folder.Path, Python);
        Assert.True(StiffReference.Greatest(ours, theirs) < 0.1, $"{StiffReference.Greatest(ours, theirs)} K");
    }

    [Fact]
    public void A_section_through_repair_and_old_slabs()
    {
        using var folder = new ScratchFolder();
        var (ours, theirs) = StiffReference.Compare(Column, 1.8, Run(24), folder.Path, Python);
        Assert.True(StiffReference.Greatest(ours, theirs) < 0.1, $"{StiffReference.Greatest(ours, theirs)} K");
    }
}
