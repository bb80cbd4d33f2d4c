using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Recipe.Preview.Tests;

/// <summary>The page for who cannot see it, cannot use a mouse, or sits in the dark: the rules of axe-core (WCAG 2.2 A and AA, and best practice), and a walk by the keyboard.</summary>
[Collection(BrowserFixture.Name)]
public sealed class AccessTests(BrowserFixture browser)
{
    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 390)]
    public async Task No_rule_of_axe_is_broken(ColorScheme scheme, int width)
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server, width, 900, scheme);
        await Obeys(look, "the desk");

        await look.Move("resin-content", 30);
        await look.Says("#what-if", "The text would change so");
        await Obeys(look, "a trial");
        await look.Page.ClickAsync("#what-if >> text=Put back");

        shop.Replace("resin     slow-laminating-epoxy", "resin     no-such-resin");
        await look.Says("#findings", "no-such-resin");
        await Obeys(look, "findings");
        shop.Replace("resin     no-such-resin", "resin     slow-laminating-epoxy");
        await look.Says("#findings", "Nothing was found");

        await look.Page.ClickAsync("#bench-button");
        await look.Page.WaitForSelectorAsync("#station h2");
        await look.Page.ClickAsync("text=Pot 1 mixed now");
        await Obeys(look, "a station");
        await look.Page.SelectOptionAsync("#bench .walk select", "Readings: the whole record");
        await look.Page.WaitForSelectorAsync("#bench textarea");
        await Obeys(look, "the record");
    }

    private static async Task Obeys(Look look, string what)
    {
        var result = await look.Page.RunAxe(new AxeRunOptions { ResultTypes = [ResultType.Violations] });
        Assert.True(
            result.Violations.Length == 0,
            $"{what}: {string.Join("\n", result.Violations.Select(broken => $"{broken.Id}: {broken.Help}\n  {string.Join("\n  ", broken.Nodes.Take(4).Select(node => node.Html))}"))}");
        Assert.True(result.Passes.Length > 20, $"{what}: only {result.Passes.Length} rules had something to look at.");
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task The_keyboard_reaches_everything_in_the_order_of_the_page_and_shows_where_it_is()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        var page = look.Page;
        var walked = new List<string>();
        for (var i = 0; i < 60; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            var at = await page.EvaluateAsync<string>("document.activeElement.id || document.activeElement.textContent.trim() || document.activeElement.tagName");
            if (walked.Contains(at) && at == walked[0])
            {
                break;
            }

            walked.Add(at);
            Assert.True(
                await page.EvaluateAsync<bool>("document.activeElement === document.body || getComputedStyle(document.activeElement).outlineStyle !== 'none'"),
                $"nobody sees that {at} has the focus");
        }

        Assert.Equal(["Skip to the pictures", "part", "bench-button", "print-button", "The stack", "The clock"], walked.Take(6));
        Assert.Contains("lever-resin-content", walked);
        Assert.Contains("Enlarge", walked);

        // A lever by the arrows, and the trial is put back by its button.
        await page.FocusAsync("#lever-laminators");
        await page.Keyboard.PressAsync("ArrowRight");
        await look.Says("#what-if", "+    laminators         2");
        await page.FocusAsync("#what-if >> text=Put back");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForFunctionAsync("() => !document.querySelector('#what-if .diff')");

        // To a panel and to the pictures.
        await page.FocusAsync("nav >> text=The cure");
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal("cure", await page.EvaluateAsync<string>("document.activeElement.id"));

        // Through the stations of the bench; the heading has the focus, so that it is read out.
        await page.FocusAsync("#bench-button");
        await page.Keyboard.PressAsync("Space");
        await page.WaitForSelectorAsync("#station h2");
        await page.FocusAsync("text=Next station");
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal("Mould", await page.EvaluateAsync<string>("document.activeElement.textContent"));
    }

    [Fact]
    public async Task A_redrawing_is_said_and_leaves_the_focus_where_it_is()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        await look.Page.FocusAsync("#lever-room");
        shop.Replace("resin-content      45 % by weight", "resin-content      50 % by weight");
        await look.Says("#said", "Mass, trimmed 126\u00A0g, now 13");
        Assert.Equal("polite", await look.Page.GetAttributeAsync("#said", "aria-live"));
        Assert.Equal("lever-room", await look.Page.EvaluateAsync<string>("document.activeElement.id"));
        Assert.Contains("changed", await look.TextOf("#stack h2"), StringComparison.Ordinal);
    }
}
