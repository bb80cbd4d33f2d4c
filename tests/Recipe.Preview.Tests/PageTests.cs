using Microsoft.Playwright;

namespace Recipe.Preview.Tests;

/// <summary>What the page shows, in a browser.</summary>
[Collection(BrowserFixture.Name)]
public sealed class PageTests(BrowserFixture browser)
{
    [Fact]
    public async Task First_paint_shows_every_panel_and_asks_nobody_but_us()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        var page = look.Page;

        Assert.Equal("Kayak hatch lid", await look.TextOf("h1"));
        Assert.Equal(
            ["stack", "clock", "bag", "cure", "pieces", "assumed", "findings", "changes", "what-if"],
            await page.EvaluateAsync<string[]>("[...document.querySelectorAll('#desk .panel')].map(panel => panel.id)"));

        // The drawings are those of the papers, and each is as large as it should be: its letters can be read.
        Assert.Equal(
            ["stack-section", "work-clock", "bag-section", "bag-plan", "cure-chart"],
            await page.EvaluateAsync<string[]>("[...document.querySelectorAll('#desk figure')].map(one => one.dataset.name).filter(name => !name.startsWith('nest-'))"));
        Assert.Equal(5, await page.Locator("#pieces figure").CountAsync());
        Assert.True(await page.EvaluateAsync<bool>("[...document.querySelectorAll('#desk figure svg')].every(svg => svg.getBoundingClientRect().width > 300 && svg.querySelector('title'))"));

        Assert.Contains("126\u00A0g", await look.TextOf("#figures"), StringComparison.Ordinal);
        Assert.Equal("live", await look.TextOf("#link"));
        Assert.Contains("Nothing was found", await look.TextOf("#findings"), StringComparison.Ordinal);

        Assert.Empty(look.Faults);
        Assert.DoesNotContain("[object", await look.TextOf("body"), StringComparison.Ordinal);
        Assert.NotEmpty(look.Asked);
        Assert.All(look.Asked, asked => Assert.StartsWith(server.Address.AbsoluteUri, asked, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_shape_has_its_panel_and_another_part_is_shown_when_it_is_chosen()
    {
        using var shop = new Shop();
        using var server = shop.Serve("shapes/seat-pan.recipe");
        await using var look = await browser.Open(server);
        Assert.Contains("Greatest shear", await look.TextOf("#shape"), StringComparison.Ordinal);
        Assert.True(await look.Page.Locator("#shape figure svg polygon").CountAsync() > 100);
        Assert.Equal(0, await look.Page.Locator("#bag").CountAsync());
        Assert.True(await look.Page.Locator("#part-label").IsHiddenAsync());

        using var lids = shop.Serve();
        await using var other = await browser.Open(lids);
        await other.Page.SelectOptionAsync("#part", "hatch-lid-no-veil");
        await other.Says("h1", "Kayak hatch lid, no veil");
        Assert.DoesNotContain("veil", await other.TextOf("#stack"), StringComparison.Ordinal);
        await other.Page.ReloadAsync();
        await other.Says("h1", "Kayak hatch lid, no veil");
        Assert.Empty(look.Faults);
        Assert.Empty(other.Faults);
    }

    [Fact]
    public async Task On_a_phone_nothing_runs_out_of_the_page()
    {
        using var shop = new Shop();
        foreach (var name in (string[])["hatch-lid.recipe", "shapes/seat-pan.recipe"])
        {
            using var server = shop.Serve(name);
            await using var look = await browser.Open(server, width: 390, height: 844);
            Assert.Empty(await look.Page.EvaluateAsync<string[]>(Wide));
            await look.Page.ClickAsync("#bench-button");
            await look.Page.WaitForSelectorAsync("#station h2");
            var stations = await look.Page.Locator("#bench .walk select option").CountAsync();
            for (var i = 0; i < stations; i++)
            {
                Assert.Empty(await look.Page.EvaluateAsync<string[]>(Wide));
                if (i + 1 < stations)
                {
                    await look.Page.ClickAsync("text=Next station");
                }
            }
        }
    }

    // What stands outside the page and cannot be scrolled in a box of its own.
    private const string Wide = """
        [...document.querySelectorAll('body *')].filter(one => {
          const box = one.getBoundingClientRect();
          return box.width > 0 && box.right > document.documentElement.clientWidth + 1 && !one.closest('.scroll, .diff, .unseen, svg *');
        }).map(one => `${one.tagName}.${one.className} ${one.textContent.slice(0, 40)}`)
        .concat(document.documentElement.scrollWidth > document.documentElement.clientWidth ? ['the page scrolls sideways'] : [])
        """;

    [Fact]
    public async Task On_paper_the_tools_are_gone_and_the_drawings_are_there()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        await look.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        Assert.False(await look.Page.IsVisibleAsync("#bench-button"));
        Assert.False(await look.Page.IsVisibleAsync("#what-if"));
        Assert.True(await look.Page.IsVisibleAsync("#stack svg"));
        Assert.True((await look.Page.PdfAsync(new PagePdfOptions { Format = "A4" })).Length > 20_000);
    }

    [Fact]
    public async Task What_an_author_writes_is_text_and_never_markup()
    {
        using var shop = new Shop();
        const string evil = "<img src=x onerror=document.body.dataset.caught=1><b>";
        shop.Replace("\"Kayak hatch lid\"", $"\"{evil}\"");
        shop.Replace("\"0 degrees runs along the hinge line\"", $"\"{evil}\"");
        shop.Replace("\"on the flange, opposite the port\"", $"\"{evil}\"");
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        Assert.Equal(evil, await look.TextOf("h1"));
        Assert.Equal(0, await look.Page.Locator("img").CountAsync());
        await look.Page.ClickAsync("#bench-button");
        await look.Page.WaitForSelectorAsync("#station h2");
        Assert.Null(await look.Page.GetAttributeAsync("body", "data-caught"));
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task A_drawing_can_be_looked_at_in_full_size()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server, width: 390, height: 844);
        var svg = look.Page.Locator("#clock figure svg");
        var small = (await svg.BoundingBoxAsync())!.Width;
        await look.Page.ClickAsync("#clock figcaption button");
        Assert.True((await svg.BoundingBoxAsync())!.Width > 2 * small);
        Assert.Equal("0", await look.Page.GetAttributeAsync("#clock .scroll", "tabindex"));
    }
}
