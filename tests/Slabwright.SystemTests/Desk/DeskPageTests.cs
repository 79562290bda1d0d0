using System.Globalization;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Slabwright.Core.Handbook;

namespace Slabwright.SystemTests.Desk;

/// <summary>The desk's pages as people meet them: the demo in a real browser.</summary>
[Collection(DeskCollection.Name)]
public sealed class DeskPageTests(DeskFixture fixture)
{
    /// <summary>Every page; {0} stands for the demo's address.</summary>
    public static TheoryData<string, string> Pages => new()
    {
        { "jobs", "/" },
        { "repairs", "{0}" },
        { "treatments", "{0}/treatments" },
        { "quantities", "{0}/quantities" },
        { "joints", "{0}/joints" },
        { "findings", "{0}/findings" },
        { "sheets", "{0}/sheets" },
        { "handbook", "/handbook" },
        { "formula", "/handbook/repair-area" },
    };

    [Fact]
    public async Task The_demo_is_in_the_list_and_opens_with_its_strip_and_all_its_repairs()
    {
        await using var desk = await OpenAsync("/");
        await desk.Find("tbody a").First.ClickAsync();
        await desk.StripAsync();

        var planned = int.Parse(await desk.Find(".tabs a.active .count").InnerTextAsync(), NumberStyles.AllowThousands, CultureInfo.InvariantCulture);
        var marks = await desk.ColumnAsync("Repairs", 1);

        Assert.True(planned > 20, $"The demo should hold many repairs, but the desk shows {planned}.");
        Assert.Equal(planned, marks.Count(m => m.StartsWith('R')));
        Assert.Equal(marks.Length, marks.Distinct().Count());
        Assert.Contains("P50", await desk.Find(".summary").InnerTextAsync());
        Assert.Contains("Silica dust", await desk.Find(".cautions").InnerTextAsync());
    }

    [Fact]
    public async Task The_table_sorts_by_number_both_ways()
    {
        await using var desk = await OpenAsync("{0}");
        var heading = desk.Find("thead th", "Length");
        await heading.Locator("button").ClickAsync();
        await desk.Find("thead th[aria-sort=ascending]").WaitForAsync();
        var rising = await LengthsAsync(desk);
        await heading.Locator("button").ClickAsync();
        await desk.Find("thead th[aria-sort=descending]").WaitForAsync();
        var falling = await LengthsAsync(desk);

        Assert.Equal(rising.Order(), rising);
        Assert.Equal(falling.OrderDescending(), falling);
        Assert.True(rising[0] < rising[^1]);
    }

    [Fact]
    public async Task The_filter_keeps_the_rows_that_hold_every_word()
    {
        await using var desk = await OpenAsync("{0}");
        var all = (await desk.ColumnAsync("Repairs", 1)).Length;
        await desk.Find("input[type=search]").FillAsync("slab replacement");
        await desk.Page.WaitForFunctionAsync("() => / of /.test(document.querySelector('.table-count').textContent)");
        var kinds = await desk.ColumnAsync("Repairs", 5);

        Assert.NotEmpty(kinds);
        Assert.True(kinds.Length < all);
        Assert.All(kinds, kind => Assert.Equal("Slab replacement", kind));

        await desk.Find("input[type=search]").FillAsync("no such words");
        await desk.Find(".nothing").WaitForAsync();
        Assert.Equal("No row holds these words.", await desk.Find(".nothing").InnerTextAsync());
    }

    [Fact]
    public async Task Picking_a_row_lights_the_strip_and_shows_rule_source_and_inputs()
    {
        await using var desk = await OpenAsync("{0}");
        await desk.StripAsync();
        await desk.Find("tbody .pick").Nth(2).ClickAsync();
        var mark = await desk.Find("tbody .pick[aria-pressed=true]").InnerTextAsync();
        await desk.Find($".strip-track .strip-chosen[data-ref='{mark}']").First.WaitForAsync();
        var why = await desk.Find(".why").InnerTextAsync();

        Assert.StartsWith(mark + ": why", why);
        Assert.Contains("Rule", why);
        Assert.Contains("Source", why);
        Assert.True(await desk.Find(".why .reason .input").CountAsync() > 0, "A reason shows the inputs that met it.");
        Assert.True(await desk.Find(".map-work.picked").CountAsync() == 1);
        await desk.KeepPictureAsync("desk-repairs-picked");
    }

    [Fact]
    public async Task A_repair_clicked_on_the_strip_is_picked_in_the_table()
    {
        await using var desk = await OpenAsync("{0}");
        await desk.StripAsync();
        var note = desk.Find(".strip-track .strip-notes text[data-ref^=R]").First;
        var mark = await note.GetAttributeAsync("data-ref");
        await note.ClickAsync();
        await desk.Find("tbody .pick[aria-pressed=true]").WaitForAsync();

        Assert.Equal(mark, await desk.Find("tbody .pick[aria-pressed=true]").InnerTextAsync());
    }

    [Fact]
    public async Task The_strip_moves_and_zooms_from_the_keyboard()
    {
        await using var desk = await OpenAsync("{0}");
        await desk.StripAsync();
        var before = await desk.Find("[data-strip=scale]").InnerTextAsync();
        await desk.Find(".strip-scroll").FocusAsync();
        await desk.Page.Keyboard.PressAsync("+");
        await desk.Page.WaitForFunctionAsync("old => document.querySelector('[data-strip=scale]').textContent !== old", before);
        await desk.Page.Keyboard.PressAsync("End");
        await desk.Page.WaitForFunctionAsync(
            "() => { const s = document.querySelector('.strip-scroll'); return s.scrollLeft + s.clientWidth >= s.scrollWidth - 1; }");

        Assert.NotEqual(before, await desk.Find("[data-strip=scale]").InnerTextAsync());
    }

    [Fact]
    public async Task Units_switch_between_feet_and_metres()
    {
        await using var desk = await OpenAsync("{0}");
        var feet = await LengthsAsync(desk);
        await desk.Find(".switch button:text-is('SI')").ClickAsync();
        await desk.Find("thead th .unit:text-is('m²')").WaitForAsync();
        var metres = await LengthsAsync(desk);

        Assert.Equal(feet.Length, metres.Length);
        Assert.All(feet.Zip(metres), pair => Assert.Equal(pair.First * 0.3048, pair.Second, 0.03));
    }

    [Fact]
    public async Task A_table_copies_to_a_spreadsheet_with_headings_and_units()
    {
        await using var desk = await OpenAsync("{0}");
        await desk.Find(".table-tools button:text-is('Copy')").ClickAsync();
        await desk.Find(".table-copied:not(:empty)").WaitForAsync();
        var lines = (await desk.Page.EvaluateAsync<string>("navigator.clipboard.readText()")).Split('\n');

        Assert.StartsWith("Mark\tLane\tFrom (station)\tTo (station)\tKind\tLength (ft)\t", lines[0]);
        Assert.Equal((await desk.ColumnAsync("Repairs", 1)).Length, lines.Length - 1);
    }

    [Fact]
    public async Task Treatments_show_the_rule_behind_a_distress_and_where_rule_sets_disagree()
    {
        await using var desk = await OpenAsync("{0}/treatments");
        await desk.Find("tbody .pick").First.ClickAsync();
        await desk.Find(".why h3").WaitForAsync();
        var why = await desk.Find(".why").InnerTextAsync();

        Assert.Contains("Rule", why);
        Assert.Contains("Source", why);
        Assert.NotEmpty(await desk.ColumnAsync("Where the rule sets disagree", 1));
    }

    [Fact]
    public async Task The_handbook_works_its_examples_out_to_their_answers()
    {
        var entry = FormulaBook.Find("repair-area")!;
        var example = entry.Examples[0];
        await using var desk = await OpenAsync("/handbook/repair-area");
        await desk.Find(".example button").First.ClickAsync();
        var answer = await desk.Find(".answer .figures dd").First.InnerTextAsync();
        var shown = double.Parse(answer.Split('=')[1].Trim().Split(' ')[0], CultureInfo.InvariantCulture);
        var expected = double.Parse(example.Expected[0].Text.Split(' ')[0], CultureInfo.InvariantCulture);

        Assert.Equal(expected, shown, example.Expected[0].Tolerance);
        Assert.Contains(entry.Source.Tag, await desk.Find(".source").InnerTextAsync());

        await desk.Find("input[type=text]").First.FillAsync("6 apples");
        await desk.Find("button[type=submit]").ClickAsync();
        await desk.Find(".answer .finding").WaitForAsync();
        Assert.Contains("HBK-004", await desk.Find(".answer .finding").InnerTextAsync());
    }

    [Fact]
    public async Task The_handbook_lists_every_formula_and_finds_by_words()
    {
        await using var desk = await OpenAsync("/handbook");
        Assert.Equal(FormulaBook.All.Length, await desk.Find(".formulas li").CountAsync());

        await desk.Find("input[type=search]").FillAsync("dowel bearing");
        await desk.Page.WaitForFunctionAsync("all => document.querySelectorAll('.formulas li').length < all", FormulaBook.All.Length);
        Assert.True(await desk.Find(".formulas li").CountAsync() > 0);
    }

    [Fact]
    public async Task A_folder_that_is_not_there_is_answered_with_its_finding()
    {
        await using var desk = await OpenAsync("/");
        await desk.Find("#folder").FillAsync("/no/such/folder");
        await desk.Find("button[type=submit]").ClickAsync();
        await desk.Find(".finding").WaitForAsync();

        Assert.Contains("STO-001", await desk.Find(".finding").InnerTextAsync());
    }

    [Fact]
    public async Task The_keyboard_reaches_sorting_and_picking_with_visible_focus()
    {
        await using var desk = await OpenAsync("{0}");
        var skip = desk.Find("body a").First;
        await skip.FocusAsync();
        Assert.Equal("Skip to the content", await skip.InnerTextAsync());
        Assert.True((await skip.BoundingBoxAsync())!.Y >= 0, "The skip link comes into view when it has the focus.");
        await desk.Find("thead button").First.FocusAsync();
        await desk.Page.Keyboard.PressAsync("Enter");
        await desk.Find("thead th[aria-sort=ascending]").WaitForAsync();
        await desk.Find("tbody .pick").First.FocusAsync();
        await desk.Page.Keyboard.PressAsync("Enter");
        await desk.Find("tbody .pick[aria-pressed=true]").WaitForAsync();

        Assert.Equal("solid", await desk.Page.EvaluateAsync<string>("getComputedStyle(document.activeElement).outlineStyle"));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_page_is_open_to_everybody_and_quiet(string name, string address)
    {
        foreach (var dark in new[] { false, true })
        {
            await using var desk = await OpenAsync(address, dark: dark);
            if (name == "repairs") await desk.StripAsync();
            if (name == "joints") await desk.Find("[data-live=ms]").WaitForAsync();
            await desk.Find("main section").First.WaitForAsync();
            var result = await desk.Page.RunAxe(new AxeRunOptions
            {
                RunOnly = RunOnlyOptions.Tags("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"),
            });

            Assert.Empty(result.Violations.Select(v => $"{v.Id}: {v.Help} {string.Join(" | ", v.Nodes.Select(n => n.Html))}"));
            Assert.Empty(desk.Complaints);
            await desk.KeepPictureAsync($"desk-{name}{(dark ? "-dark" : "")}");
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task No_page_runs_over_on_a_telephone_or_at_twice_the_size(string name, string address)
    {
        foreach (var width in new[] { 360, 640 })
        {
            await using var desk = await OpenAsync(address, width, 740);
            if (name == "repairs") await desk.StripAsync();
            if (name == "joints") await desk.Find("[data-live=ms]").WaitForAsync();
            var over = await desk.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");

            Assert.True(over <= 0, $"{name} is {over} px too wide on a screen of {width} px.");
        }
    }

    private async Task<DeskPage> OpenAsync(string address, int width = 1440, int height = 900, bool dark = false) =>
        await fixture.OpenAsync(string.Format(CultureInfo.InvariantCulture, address, await fixture.DemoAsync()), width, height, dark);

    private static async Task<double[]> LengthsAsync(DeskPage desk) =>
        [.. (await desk.ColumnAsync("Repairs", 6)).Select(t => double.Parse(t, NumberStyles.Number, CultureInfo.InvariantCulture))];
}
