using Recipe.Compiler.Comparing;

namespace Recipe.Preview.Tests;

/// <summary>The page follows the file, whatever happens to it.</summary>
[Collection(BrowserFixture.Name)]
public sealed class FollowTests(BrowserFixture browser)
{
    private const string Title = "\"Kayak hatch lid\"";

    [Fact]
    public async Task A_save_is_shown_and_so_is_a_save_of_a_text_that_it_uses()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        shop.Replace("resin-content      45 % by weight", "resin-content      50 % by weight");
        await look.Says("#figures", "Mass, trimmed13");
        await look.Says("#what-if", "Resin content50 %");
        shop.Replace("units       metric", "units       us", "shop.recipe");
        await look.Says("#figures", "oz");
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task Of_a_hundred_saves_in_a_row_the_last_is_shown()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        var text = shop.Read();
        for (var i = 1; i <= 100; i++)
        {
            // Every other one breaks the text, and in the midst the file is replaced by another one as some editors do.
            var now = text.Replace(Title, $"\"Save number {i}\"", StringComparison.Ordinal);
            if (i % 2 == 1)
            {
                shop.Save(now.Replace("plies {", "plies", StringComparison.Ordinal));
            }
            else if (i % 10 == 0)
            {
                shop.Save(now, "hatch-lid.new");
                File.Move(shop.PathOf("hatch-lid.new"), shop.PathOf("hatch-lid.recipe"), overwrite: true);
            }
            else
            {
                shop.Save(now);
            }
        }

        await look.Says("h1", "Save number 100");
        await look.Says("#findings", "Nothing was found");
        Assert.Equal("", await look.TextOf("#notices"));

        // And it stays: nothing older comes in late.
        await Task.Delay(700);
        Assert.Equal("Save number 100", await look.TextOf("h1"));
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task A_text_that_cannot_be_understood_keeps_the_last_sound_pictures_and_says_so()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        shop.Replace("cure {", "cure");
        await look.Says("#notices", "The pictures are old");
        Assert.True(await look.Page.Locator("#desk.old").CountAsync() == 1);
        Assert.Contains("error", await look.TextOf("#findings h2"), StringComparison.Ordinal);
        Assert.Contains("30\u00A0h", await look.TextOf("#figures"), StringComparison.Ordinal);
        Assert.Equal(1, await look.Page.Locator("#cure figure").CountAsync());
        await look.Page.ReloadAsync();
        await look.Says("#notices", "The pictures are old");
        Assert.Equal(1, await look.Page.Locator("#cure figure").CountAsync());
        shop.Replace("  cure\n", "  cure {\n");
        await look.Says("#findings", "Nothing was found");
        Assert.Equal("", await look.TextOf("#notices"));

        // An error of the checks is no reason to hide what was planned.
        shop.Replace("hold           20 degC for 12 h under vacuum", "hold           20 degC for 12 h under vacuum\n    hold           95 degC for 1 h under vacuum");
        await look.Says("#findings", "■ error");
        await look.Says("#figures", "95\u00A0°C");
        Assert.Equal("", await look.TextOf("#notices"));
    }

    [Fact]
    public async Task A_file_and_a_folder_may_go_and_come_back()
    {
        using var shop = new Shop();
        using var server = shop.Serve();
        await using var look = await browser.Open(server);
        var text = shop.Read();
        File.Delete(shop.PathOf("hatch-lid.recipe"));
        await look.Says("#notices", "is not there");
        Assert.Equal(1, await look.Page.Locator("#stack figure").CountAsync());
        shop.Save(text.Replace(Title, "\"Back again\"", StringComparison.Ordinal));
        await look.Says("h1", "Back again");
        Assert.Equal("", await look.TextOf("#notices"));

        var shops = File.ReadAllText(shop.PathOf("shop.recipe"));
        Directory.Delete(shop.Folder, recursive: true);
        await look.Says("#notices", "is not there");
        Directory.CreateDirectory(shop.Folder);
        shop.Save(shops, "shop.recipe");
        shop.Save(text.Replace(Title, "\"In a new folder\"", StringComparison.Ordinal));
        await look.Says("h1", "In a new folder");
        await look.Says("#findings", "Nothing was found");
    }

    [Fact]
    public async Task What_a_link_points_to_is_followed()
    {
        using var shop = new Shop();
        File.CreateSymbolicLink(shop.PathOf("linked.recipe"), shop.PathOf("hatch-lid.recipe"));
        using var server = shop.Serve("linked.recipe");
        await using var look = await browser.Open(server);
        shop.Replace(Title, "\"Behind a link\"");
        await look.Says("h1", "Behind a link");
    }

    [Fact]
    public async Task A_preview_that_ends_is_missed_and_one_that_is_started_again_is_found()
    {
        using var shop = new Shop();
        var server = shop.Serve(remember: true);
        await using var look = await browser.Open(server);
        var address = server.Address;
        server.Dispose();
        await look.Says("#link", "no answer");
        await look.Says("#notices", "has ended");

        // Somebody else on the port is not believed, and is not told the token.
        using (var stranger = new System.Net.HttpListener())
        {
            stranger.Prefixes.Add($"http://127.0.0.1:{address.Port}/");
            stranger.Start();
            for (var i = 0; i < 2; i++)
            {
                var asked = await stranger.GetContextAsync();
                Assert.Equal("/hello", asked.Request.Url!.AbsolutePath);
                Assert.DoesNotContain(address.AbsolutePath.Trim('/'), string.Join(' ', asked.Request.RawUrl, asked.Request.Headers["Referer"]), StringComparison.Ordinal);
                var lie = System.Text.Encoding.ASCII.GetBytes(new string('0', 64));
                asked.Response.OutputStream.Write(lie);
                asked.Response.Close();
            }

            Assert.Equal("no answer", await look.TextOf("#link"));
        }

        shop.Replace(Title, "\"While nobody looked\"");
        using var again = shop.Serve(remember: true);
        Assert.Equal(address, again.Address);
        await look.Says("#link", "live");
        await look.Says("h1", "While nobody looked");
        Assert.Equal("", await look.TextOf("#notices"));
    }

    [Fact]
    public async Task The_last_commit_is_compared_as_soon_as_it_is_known()
    {
        using var shop = new Shop();
        Directory.CreateDirectory(shop.PathOf(".git/logs"));
        File.WriteAllText(shop.PathOf(".git/HEAD"), "ref: refs/heads/main\n");
        var committed = shop.Read();
        shop.Replace("resin-content      45 % by weight", "resin-content      50 % by weight");
        OpenedRevision LastCommit(string folder) => new(new Compiler.TextOverlay(new PlainFiles(), shop.PathOf("hatch-lid.recipe"), committed), null);
        using var server = shop.Serve(lastCommit: LastCommit);
        await using var look = await browser.Open(server);
        await look.Says("#changes", "Difference");
        Assert.Contains("resin-content", await look.TextOf("#changes"), StringComparison.Ordinal);
        Assert.Contains("was 126\u00A0g", await look.TextOf("#figures"), StringComparison.Ordinal);

        // A commit: the log of HEAD grows, and what is compared is read anew.
        committed = shop.Read();
        File.WriteAllText(shop.PathOf(".git/logs/HEAD"), "0 1 somebody\n");
        await look.Says("#changes", "Nothing is different from the last commit");
        Assert.DoesNotContain("was", await look.TextOf("#figures"), StringComparison.Ordinal);

        // A text that cannot be understood is not the same as the last commit.
        shop.Replace("cure {", "cure");
        await look.Says("#changes", "The text as it stands cannot be understood and is not compared");
        Assert.DoesNotContain("Nothing is different", await look.TextOf("#changes"), StringComparison.Ordinal);
        shop.Replace("  cure\n", "  cure {\n");
        await look.Says("#changes", "Nothing is different from the last commit");
    }

    [Fact]
    public async Task Without_a_repository_nothing_is_compared_and_the_page_says_why()
    {
        using var shop = new Shop();
        using var server = shop.Serve(lastCommit: _ => throw new InvalidOperationException("never asked"));
        await using var look = await browser.Open(server);
        await look.Says("#changes", "in no git repository");
        Assert.Empty(look.Faults);
    }

    [Fact]
    public async Task A_file_without_a_part_and_one_that_cannot_be_read_say_so()
    {
        using var shop = new Shop();
        using var server = shop.Serve("shop.recipe");
        await using var look = await browser.Open(server);
        await look.Says("#notices", "There is no part in this file");

        using var huge = PreviewServer.Start(new PreviewWish(shop.PathOf("hatch-lid.recipe"), "hatch-lid.recipe", new HugeFiles(), () => Shop.Today));
        await using var other = await browser.Open(huge);
        await other.Says("#notices", "hatch-lid.recipe cannot be read: it has 70 MB");
    }

    private sealed class HugeFiles : PlainFiles
    {
        public override bool TryRead(string name, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out string? text) =>
            name.EndsWith("hatch-lid.recipe", StringComparison.Ordinal) ? throw new IOException("it has 70 MB") : base.TryRead(name, out text);
    }
}
