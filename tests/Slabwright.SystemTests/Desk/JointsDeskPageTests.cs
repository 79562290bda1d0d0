using System.Globalization;
using System.Text.RegularExpressions;

namespace Slabwright.SystemTests.Desk;

/// <summary>The joints of the demo in a real browser: alternatives, the joint that answers while an axle moves, and joints as they are built.</summary>
[Collection(DeskCollection.Name)]
public sealed partial class JointsDeskPageTests(DeskFixture fixture)
{
    [Fact]
    public async Task Alternatives_name_their_winner_by_word_and_shape_and_the_reasons_stand_beside()
    {
        await using var desk = await OpenAsync();
        var verdicts = await desk.ColumnAsync("Alternatives", 2);
        var costs = await desk.ColumnAsync("Alternatives", 7);

        Assert.True(verdicts.Length > 10, $"A lane should have many alternatives, but the page lists {verdicts.Length}.");
        Assert.True(verdicts.Count(v => v == "◆ chosen") <= 1);
        Assert.All(verdicts, v => Assert.Contains(v, new[] { "◆ chosen", "✓ passes", "✕ fails" }));
        Assert.Equal(costs.Select(Money).Order(), costs.Select(Money));
        Assert.Contains("Source", await desk.Find(".reasons-beside").InnerTextAsync());
        Assert.True(await desk.Find("svg.joint-chart").CountAsync() == 1);
    }

    [Fact]
    public async Task The_plan_follows_the_pointer_and_every_bar_answers()
    {
        await using var desk = await LiveAsync();
        var before = await ColumnsAsync(desk);
        await desk.KeepPictureAsync("joints", ".live");
        await desk.Page.EvaluateAsync("document.querySelector('.live-plan').scrollIntoView({ block: 'center' })");
        var plan = (await desk.Find(".live-plan").BoundingBoxAsync())!;
        await desk.Page.Mouse.MoveAsync(plan.X + plan.Width * 0.30f, plan.Y + plan.Height * 0.45f);
        await desk.Page.Mouse.DownAsync();
        await desk.Page.Mouse.MoveAsync(plan.X + plan.Width * 0.35f, plan.Y + plan.Height * 0.45f);
        await desk.Page.Mouse.UpAsync();
        await desk.Page.WaitForFunctionAsync("old => document.querySelector('#live-shear-desc').textContent !== old", before);
        var after = await ColumnsAsync(desk);

        Assert.Equal(Values(before).Length, Values(after).Length);
        Assert.True(Values(before).Max(Math.Abs) > Values(after).Max(Math.Abs), "An axle 3 ft before the joint loads the bars less than one at it.");
        Assert.Matches("before the joint", await desk.Find("#live-where").InnerTextAsync());
    }

    [Fact]
    public async Task Arrow_keys_move_the_axle_and_home_brings_it_back()
    {
        await using var desk = await LiveAsync();
        var home = await desk.Find("#live-where").InnerTextAsync();
        var before = await ColumnsAsync(desk);
        await desk.Find(".live-plan").FocusAsync();
        await desk.Page.Keyboard.PressAsync("Shift+ArrowLeft");
        await desk.Page.WaitForFunctionAsync("old => document.querySelector('#live-shear-desc').textContent !== old", before);
        Assert.NotEqual(home, await desk.Find("#live-where").InnerTextAsync());
        await desk.Page.Keyboard.PressAsync("Home");
        await desk.Page.WaitForFunctionAsync("old => document.querySelector('#live-shear-desc').textContent === old", before);

        Assert.Equal(home, await desk.Find("#live-where").InnerTextAsync());
    }

    [Fact]
    public async Task An_answer_says_how_it_ended_and_where_answers_do_not_add_up()
    {
        await using var desk = await LiveAsync();
        Assert.Matches(@"Converged after 1 solution, residual \d.*E-\d+", await desk.Find(".solved").InnerTextAsync());
        await desk.Find(".live-options input[type=checkbox]").ClickAsync();
        await desk.Find(".live .hint", "Answers do not add up here").WaitForAsync();
        var solved = await desk.Find(".solved").InnerTextAsync();
        var share = double.Parse(Contact().Match(solved).Groups[1].Value, CultureInfo.InvariantCulture);

        Assert.Matches(@"(Converged|Not converged).* after \d+ solution", solved);
        Assert.InRange(share, 50, 100);
    }

    [Fact]
    public async Task Input_that_no_joint_can_have_is_named_beside_its_field_and_good_input_is_taken()
    {
        await using var desk = await LiveAsync();
        await desk.Find(".by-hand summary").ClickAsync();
        await desk.Find("#hand-thickness").FillAsync("ten");
        await desk.Find(".by-hand button[type=submit]").ClickAsync();
        await desk.Find("#hand-thickness-wrong").WaitForAsync();
        Assert.Contains("JNT-085", await desk.Find("#hand-thickness-wrong").InnerTextAsync());

        await desk.Find("#hand-thickness").FillAsync("10");
        await desk.Find("#hand-reaction").FillAsync("-5");
        await desk.Find(".by-hand button[type=submit]").ClickAsync();
        await desk.Find("#hand-reaction-wrong").WaitForAsync();
        Assert.Contains("JNT-010", await desk.Find("#hand-reaction-wrong").InnerTextAsync());
        Assert.Equal("false", await desk.Find("#hand-thickness").GetAttributeAsync("aria-invalid"));

        await desk.Find("#hand-reaction").FillAsync("150");
        await desk.Find("#hand-bars").FillAsync("5");
        await desk.Find(".by-hand button[type=submit]").ClickAsync();
        await desk.Page.WaitForFunctionAsync("() => (document.querySelector('#live-shear-desc')?.textContent.match(/bar \\d+ /g) ?? []).length === 5");
        Assert.Contains("By hand: 5 dowels", await desk.Find(".live > .place").InnerTextAsync());
    }

    [Fact]
    public async Task A_joint_picked_shows_its_drilling_its_seal_and_the_lifting_in_the_units_chosen()
    {
        await using var desk = await OpenAsync();
        await desk.Find("table:has(caption:text-is('Joints')) tbody .pick").First.ClickAsync();
        await desk.Find(".joint-detail svg[aria-labelledby^=picked-joint]").WaitForAsync();
        var text = await desk.Find(".joint-detail").InnerTextAsync();

        Assert.Contains("Installation and checks, in order", text);
        Assert.Contains("Tolerances", text);
        Assert.Contains("Lifting out", text);
        Assert.Contains("Pressure when sawing", text);
        Assert.Contains(" kip", text);
        await desk.KeepPictureAsync("joints-built", ".joint-detail");
        await desk.Find(".switch button:text-is('SI')").ClickAsync();
        await desk.Find(".joint-detail", " kN").WaitForAsync();
        Assert.DoesNotContain(" kip", await desk.Find(".joint-detail p").First.InnerTextAsync());
    }

    [Fact]
    public async Task Each_move_is_answered_and_says_how_long_the_answer_took()
    {
        await using var desk = await LiveAsync();
        await desk.Find(".live-plan").FocusAsync();
        var times = new List<double>();
        for (var n = 0; n < 12; n++)
        {
            var before = await ColumnsAsync(desk);
            await desk.Page.Keyboard.PressAsync(n % 2 == 0 ? "ArrowLeft" : "ArrowUp");
            await desk.Page.WaitForFunctionAsync("old => document.querySelector('#live-shear-desc').textContent !== old", before);
            times.Add(double.Parse(await desk.Find("[data-live=ms]").InnerTextAsync(), CultureInfo.InvariantCulture));
        }

        Assert.All(times, t => Assert.True(t > 0));
    }

    [Fact]
    public async Task A_temperature_difference_no_slab_has_is_named_and_the_last_one_kept()
    {
        await using var desk = await LiveAsync();
        await desk.Find(".live input[type=checkbox]").CheckAsync();
        await desk.Find(".live input.short:not([disabled])").FillAsync("95");
        await desk.Page.Keyboard.PressAsync("Tab");
        await desk.Find(".live [role=alert]", "from −60 to 60").WaitForAsync();
        Assert.Equal("0", await desk.Find(".live input.short").InputValueAsync());
    }

    private async Task<DeskPage> OpenAsync() => await fixture.OpenAsync(await fixture.DemoAsync() + "/joints");

    private async Task<DeskPage> LiveAsync()
    {
        var desk = await OpenAsync();
        await desk.Find("[data-live=ms]").WaitForAsync();
        return desk;
    }

    private static Task<string> ColumnsAsync(DeskPage desk) => desk.Find("#live-shear-desc").TextContentAsync()!;

    private static double[] Values(string description) =>
        [.. Bar().Matches(description).Select(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))];

    private static decimal Money(string text) => decimal.Parse(text, NumberStyles.Number, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"bar \d+ (-?\d+(?:\.\d+)?(?:E[+-]\d+)?)")]
    private static partial Regex Bar();

    [GeneratedRegex(@"old slab ([\d.]+) %")]
    private static partial Regex Contact();
}
