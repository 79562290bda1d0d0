using Slabwright.Core.Concrete.Opening;
using Slabwright.Core.Measures;
using Slabwright.Data.Night;

namespace Slabwright.SystemTests.Night;

public class LoggerReaderTests
{
    [Fact]
    public void A_plain_table_with_a_preamble_is_read()
    {
        const string Text = """
            Logger 4711;invented
            Site: Marrowby

            Date/Time;Edge (°C);Mid-depth (°C);Air temp (°C);Battery (V)
            14.09.2026 22:00;24,1;24,3;13,0;3,1
            14.09.2026 22:30;25,0;26,2;12,8;3,1
            14.09.2026 23:00;;28,9;12,7;3,1
            """;
        var read = LoggerReader.Read(Text, "night.csv", [], UnitSystem.Si);
        Assert.Empty(read.Findings);
        Assert.Equal(["Edge (°C)", "Mid-depth (°C)"], read.Probes.Select(p => p.Name));
        Assert.Equal([SlabPlace.Edge, SlabPlace.MidDepth], read.Probes.Select(p => p.Place));
        Assert.Equal(new DateTime(2026, 9, 14, 22, 30, 0), read.Probes[0].Readings[1].At);
        Assert.Equal(25.0, read.Probes[0].Readings[1].Temperature);
        Assert.Null(read.Probes[0].Readings[2].Temperature);
        Assert.Equal(6, read.Probes[1].Readings[1].Row);
    }

    [Fact]
    public void Day_and_clock_may_stand_apart_and_be_twelve_hours()
    {
        const string Text = "Date,Time,Probe 1 surface (F),Probe 2 bottom (F)\n9/14/2026,11:30:00 PM,75.2,77.0\n9/15/2026,12:00:00 AM,77.0,78.8\n";
        var read = LoggerReader.Read(Text, null, [], UnitSystem.UsCustomary);
        Assert.Empty(read.Findings);
        Assert.Equal(24, read.Probes[0].Readings[0].Temperature!.Value, 9);
        Assert.Equal(new DateTime(2026, 9, 15), read.Probes[1].Readings[1].At);
        Assert.Equal("Date", read.Columns!.Date);
    }

    [Fact]
    public void A_mapping_is_known_again_by_its_headers_and_one_made_by_hand_wins()
    {
        const string Text = "stamp,ch1,ch2\n2026-09-14 22:00,75,80\n2026-09-14 22:30,77,82\n";
        var guessed = LoggerReader.Read(Text, "a.csv", [], UnitSystem.UsCustomary);
        Assert.Contains(guessed.Findings, f => f.Code == "CON-082");
        Assert.Contains(guessed.Findings, f => f.Code == "CON-083");
        var hand = guessed.Columns! with { Fahrenheit = false, Channels = [new RememberedChannel("ch2", SlabPlace.Corner)] };
        var mapped = LoggerReader.Read(Text, "a.csv", [], UnitSystem.UsCustomary, hand);
        Assert.Equal(80, mapped.Probes.Single().Readings[0].Temperature);
        var again = LoggerReader.Read(Text, "b.csv", [mapped.Columns!], UnitSystem.UsCustomary);
        Assert.Empty(again.Findings);
        Assert.Equal(SlabPlace.Corner, again.Probes.Single().Place);
    }

    [Fact]
    public void What_cannot_be_read_is_named_and_the_rest_kept()
    {
        const string Text = "time,edge temp °C\n2026-09-14 22:00,24\nmidnight,25\n2026-09-14 23:00,26\n";
        var columns = LoggerReader.Read(Text, "c.csv", [], UnitSystem.Si).Columns!;
        var mapped = LoggerReader.Read(Text, "c.csv", [], UnitSystem.Si, columns with { TimeForm = "yyyy-MM-dd H:mm" });
        Assert.Equal(2, mapped.Probes.Single().Readings.Length);
        Assert.Equal(3, Assert.Single(mapped.Findings, f => f.Code == "CON-084").Place.Row);
        Assert.Contains(LoggerReader.Read("nothing here\nat all\n", "d.csv", [], UnitSystem.Si).Findings, f => f.Code == "CON-080");
        Assert.Contains(LoggerReader.Read("time,battery\n2026-09-14 22:00,3\n2026-09-14 22:30,3\n", "e.csv", [], UnitSystem.Si).Findings, f => f.Code == "CON-085");
    }

    [Fact]
    public void Day_and_month_that_can_be_told_either_way_are_asked_about()
    {
        const string Text = "time,edge temp °C\n04/05/2026 22:00,24\n04/05/2026 22:30,25\n";
        var us = LoggerReader.Read(Text, null, [], UnitSystem.UsCustomary);
        Assert.Contains(us.Findings, f => f.Code == "CON-086");
        Assert.Equal(4, us.Probes[0].Readings[0].At.Month);
        Assert.Equal(5, LoggerReader.Read(Text, null, [], UnitSystem.Si).Probes[0].Readings[0].At.Month);
    }
}
