namespace Recipe.Preview.Tests;

/// <summary>Bench mode: a station at a time, timers for pots, readings that become a draft of a build record.</summary>
[Collection(BrowserFixture.Name)]
public sealed class BenchTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_build_is_walked_through_and_its_readings_become_a_record()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        var page = look.Page;
        await page.ClickAsync("#bench-button");
        await page.WaitForSelectorAsync("#station h2");
        Assert.Equal("Start", await look.TextOf("#station h2"));
        Assert.Contains("no 3", await look.TextOf("#bench"), StringComparison.Ordinal);
        Assert.False(await page.IsVisibleAsync("#desk"));

        // What belongs to a station is asked for there.
        await page.FillAsync("[aria-label^='room']", "19 degC");
        await page.FillAsync("[aria-label='by']", "K \"the quick\"");
        await page.ClickAsync("text=Next station");
        Assert.Equal("Mould", await look.TextOf("#station h2"));
        Assert.Equal(2, await page.Locator("[aria-label^='signed H1']").CountAsync());
        await page.CheckAsync("#station input[type=checkbox] >> nth=0");
        await page.ClickAsync("text=Next station");
        await page.FillAsync("[aria-label^='pot 1 resin (']", "77.0 g");

        // Mixed now: the time goes into the record, the pot gets a shape, a word and a clock that runs.
        await page.ClickAsync("text=Pot 1 mixed now");
        await look.Says(".pot.fresh-pot .word", "use it");
        Assert.Matches("^[0-9]{2}:[0-9]{2}$", await page.InputValueAsync("[aria-label^='pot 1 resin, hardener, mixed-at']"));
        await page.WaitForFunctionAsync("() => document.querySelector('.pot.fresh-pot .left').textContent !== '88:00'");

        // Nothing is lost when the page is loaded anew.
        await page.ReloadAsync();
        await page.WaitForSelectorAsync("body[data-stamp]");
        await page.ClickAsync("#bench-button");
        await page.WaitForSelectorAsync("#station h2");
        Assert.Equal("Cut, mix, lay up", await look.TextOf("#station h2"));
        Assert.Equal("77.0 g", await page.InputValueAsync("[aria-label^='pot 1 resin (']"));
        Assert.Equal(1, await page.Locator(".pot.fresh-pot").CountAsync());
        await page.ClickAsync("#bench .walk >> text=Back");
        Assert.True(await page.IsCheckedAsync("#station input[type=checkbox] >> nth=0"));

        await page.SelectOptionAsync("#bench .walk select", "Readings: the whole record");
        await page.WaitForFunctionAsync("() => document.querySelector('#bench textarea').value.includes('build hatch-lid no 3 on 2026-06-01')");
        var text = await page.InputValueAsync("#bench textarea");
        Assert.Contains("19 degC", text, StringComparison.Ordinal);
        Assert.Contains("\"K \\\"the quick\\\"\"", text, StringComparison.Ordinal);
        Assert.Contains("resin 77.0 g hardener __", text, StringComparison.Ordinal);
        Assert.Contains("use \"hatch-lid.recipe\"", text, StringComparison.Ordinal);

        await page.ClickAsync("#bench button:text-is('Copy')");
        await look.Says("#bench [role=status]", "Copied");
        Assert.Equal(text, await page.EvaluateAsync<string>("navigator.clipboard.readText()"));
        var download = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("#bench button:text-is('Download')"));
        Assert.Equal("hatch-lid-003.recipe", download.SuggestedFilename);
        Assert.Equal(text, await File.ReadAllTextAsync((await download.PathAsync())!));

        // Written only when asked, never over a file, and then it is a record that the compiler takes.
        Assert.False(File.Exists(shop.PathOf("hatch-lid-003.recipe")));
        await page.ClickAsync("text=Write it beside the recipe");
        await look.Says("#bench [role=status]", "Written");
        Assert.Equal(text, shop.Read("hatch-lid-003.recipe"));
        await page.ClickAsync("text=Write it beside the recipe");
        await look.Says("#bench [role=status]", "is there already");
        Assert.True(new Compiler.Workspace(new PlainFiles(), Shop.Today).TryCompile(shop.PathOf("hatch-lid-003.recipe"), out var record));
        Assert.Empty(record.NotUnderstood);
    }

    /// <summary>The readings of one part are never kept as those of another that is chosen in the middle of a build.</summary>
    [Fact]
    public async Task Each_part_has_a_build_of_its_own()
    {
        using var shop = new Shop();
        shop.Save(shop.Read() + "\nvariant hatch-lid-b of hatch-lid {\n  title \"Second lid\"\n}\n");
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        var page = look.Page;
        await page.ClickAsync("#bench-button");
        await page.WaitForSelectorAsync("#station h2");
        await page.FillAsync("[aria-label='by']", "first");
        await page.SelectOptionAsync("#part", "hatch-lid-b");
        await look.Says("#bench strong", "Second lid");
        Assert.Equal("", await page.InputValueAsync("[aria-label='by']"));
        await page.FillAsync("[aria-label='by']", "second");
        await page.SelectOptionAsync("#part", "hatch-lid");
        await look.Says("#bench strong", "Kayak hatch lid");
        Assert.Equal("first", await page.InputValueAsync("[aria-label='by']"));
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task A_pot_says_when_it_is_late_and_when_it_is_dead_by_colour_shape_and_word()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        var page = look.Page;
        await page.Clock.InstallAsync();
        await page.ClickAsync("#bench-button");
        await page.WaitForSelectorAsync("#station h2");
        var seen = new List<(string Word, string Shape, string Border)> { await Pot() };
        await page.ClickAsync("text=Pot 1 mixed now");
        seen.Add(await Pot());
        var life = int.Parse((await look.TextOf(".pot:nth-child(2) .left")).Split(':')[0], System.Globalization.CultureInfo.InvariantCulture);
        await page.Clock.FastForwardAsync((life - 5) * 60_000L);
        await look.Says(".pot:nth-child(2) .word", "HURRY");
        seen.Add(await Pot());
        await page.Clock.FastForwardAsync(6 * 60_000);
        await look.Says(".pot:nth-child(2) .word", "DEAD");
        Assert.StartsWith("-", await look.TextOf(".pot:nth-child(2) .left"), StringComparison.Ordinal);
        seen.Add(await Pot());
        await page.ClickAsync(".pot:nth-child(2) >> text=Used up");
        await look.Says(".pot:nth-child(2) .word", "used up");
        Assert.Equal(4, seen.Select(state => state.Word).Distinct().Count());
        Assert.Equal(4, seen.Select(state => state.Shape).Distinct().Count());
        Assert.Equal(4, seen.Select(state => state.Border).Distinct().Count());
        Assert.Empty(look.Faults);

        async Task<(string, string, string)> Pot() => (
            await look.TextOf(".pot:nth-child(2) .word"),
            await page.GetAttributeAsync(".pot:nth-child(2) path", "d") ?? "",
            await page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.pot:nth-child(2)')).border"));
    }
}
