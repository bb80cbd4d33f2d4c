using System.Text;

namespace Recipe.Preview.Tests;

/// <summary>Levers on the numbers that a recipe declares.</summary>
[Collection(BrowserFixture.Name)]
public sealed class WhatIfTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_trial_shows_what_it_does_and_the_lines_and_leaves_the_file_alone()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        var before = shop.Read();
        await look.Move("resin-content", 50);
        await look.Says("#what-if .diff", "-    resin-content      45 % by weight");
        Assert.Contains("+    resin-content      50 % by weight", await look.TextOf("#what-if .diff"), StringComparison.Ordinal);
        await look.Says("#figures", "was 126\u00A0g");
        Assert.Contains("Nothing is written", await look.TextOf("#notices"), StringComparison.Ordinal);
        Assert.Equal(before, shop.Read());

        // What the trial would earn is said before it is written.
        await look.Move("resin-content", 26);
        await look.Says("#what-if", "It would earn");

        await look.Page.ClickAsync("#what-if >> text=Put back");
        await look.Page.WaitForFunctionAsync("() => !document.querySelector('#what-if .diff') && !document.querySelector('#figures').textContent.includes('was')");
        Assert.Equal("", await look.TextOf("#notices"));
        Assert.Equal(before, shop.Read());
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task A_trial_is_written_when_somebody_says_so_and_the_rest_of_the_file_stays_as_it_is()
    {
        using var shop = new Shop();
        var before = shop.Read().ReplaceLineEndings("\r\n");
        shop.Save(before);
        Shop.SetMode(shop.PathOf("hatch-lid.recipe"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        await look.Move("ply-2", 3);
        await look.Move("room", 18.5);
        await look.Says("#what-if .diff", "x3");
        await look.Says("#what-if .diff", "18.5 degC");
        await look.Page.ClickAsync("#what-if button.main");
        await look.Page.WaitForFunctionAsync("() => !document.querySelector('#what-if .diff')");

        // The page puts the trial away when it is written; it has read the file again when the lever says so.
        await look.Says("#what-if", "Repeats of body3");
        Assert.Equal(
            before.Replace("room               20 degC", "room               18.5 degC", StringComparison.Ordinal)
                .Replace("body   glass-twill-280   +/-45   overlap lap", "body   glass-twill-280   +/-45   overlap lap  x3", StringComparison.Ordinal),
            shop.Read());
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead, Shop.ModeOf(shop.PathOf("hatch-lid.recipe")));
        Assert.DoesNotContain(Directory.GetFiles(shop.Folder), file => file.EndsWith(".tmp", StringComparison.Ordinal));
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task A_link_stays_a_link_and_the_file_behind_it_is_written()
    {
        using var shop = new Shop();
        File.CreateSymbolicLink(shop.PathOf("linked.recipe"), shop.PathOf("hatch-lid.recipe"));
        using var server = shop.Serve("linked.recipe");
        await using var look = await browser.Open(server);
        await look.Move("laminators", 2);
        await look.Says("#what-if .diff", "laminators");
        await look.Page.ClickAsync("#what-if button.main");
        await look.Says("#what-if", "Laminators2");
        Assert.NotNull(new FileInfo(shop.PathOf("linked.recipe")).LinkTarget);
        Assert.Contains("laminators         2", shop.Read(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_changed_meanwhile_is_not_written()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        await look.Move("laminators", 2);
        await look.Says("#what-if .diff", "laminators");

        // The page does not hear of it before the button is pressed: it asks to write against a text that is no more.
        await look.Page.RouteAsync("**/apply", async route =>
        {
            shop.Replace("\"Kayak hatch lid\"", "\"Somebody else was quicker\"");
            await route.ContinueAsync();
        });
        await look.Page.ClickAsync("#what-if button.main");
        await look.Says("#what-if .notice", "has changed meanwhile; nothing was written");

        // What was not written is still tried.
        Assert.Equal("2", await look.Page.InputValueAsync("#lever-laminators"));
        await look.Says("#what-if .diff", "laminators");
        Assert.Contains("Nothing is written", await look.TextOf("#notices"), StringComparison.Ordinal);

        // It is still said when the page has drawn the text that was in the way, until the next lever is moved.
        await look.Says("body", "Somebody else was quicker");
        await look.Says("#what-if .notice", "has changed meanwhile; nothing was written");
        await look.Move("laminators", 2);
        await look.Says("#what-if .diff", "laminators");
        Assert.DoesNotContain("nothing was written", await look.TextOf("#what-if"), StringComparison.Ordinal);
        Assert.Contains("laminators         1", shop.Read(), StringComparison.Ordinal);
        Assert.Contains("Somebody else was quicker", shop.Read(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_trial_is_there_until_it_is_written_and_is_written_once()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        await look.Move("laminators", 2);
        await look.Says("#what-if .diff", "laminators");
        var (asked, answer) = (0, new TaskCompletionSource());
        await look.Page.RouteAsync("**/apply", async route =>
        {
            asked++;
            await answer.Task;
            await route.ContinueAsync();
        });
        await look.Page.ClickAsync("#what-if button.main");
        await look.Page.ClickAsync("#what-if button.main");
        Assert.Contains("laminators", await look.TextOf("#what-if .diff"), StringComparison.Ordinal);
        Assert.Contains("Nothing is written", await look.TextOf("#notices"), StringComparison.Ordinal);
        answer.SetResult();
        await look.Says("#what-if", "Laminators2");
        await look.Page.WaitForFunctionAsync("() => !document.querySelector('#what-if .diff')");
        Assert.Equal("", await look.TextOf("#notices"));
        Assert.Equal(1, asked);
        Assert.Contains("laminators         2", shop.Read(), StringComparison.Ordinal);
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task A_text_that_is_not_utf8_is_said_and_not_written()
    {
        using var shop = new Shop();
        var latin = Encoding.Latin1.GetBytes(shop.Read().Replace("Kayak hatch lid", "Kajakluke für vorn", StringComparison.Ordinal));
        File.WriteAllBytes(shop.PathOf("hatch-lid.recipe"), latin);
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        await look.Says("#findings", "the file is not UTF-8");
        Assert.Equal(0, await look.Page.Locator("[id^='lever-']").CountAsync());
        Assert.Equal(latin, File.ReadAllBytes(shop.PathOf("hatch-lid.recipe")));
    }
}
