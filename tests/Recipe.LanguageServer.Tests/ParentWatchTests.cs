using System.Diagnostics;

namespace Recipe.LanguageServer.Tests;

public sealed class ParentWatchTests
{
    private static readonly TimeSpan Often = TimeSpan.FromMilliseconds(20);

    [Fact]
    public void It_says_once_that_the_client_is_gone()
    {
        using var client = Process.Start(new ProcessStartInfo("sleep", "600"))!;
        using var gone = new ManualResetEventSlim();
        var told = 0;
        using var watch = ParentWatch.Begin(client.Id, Often, () =>
        {
            told++;
            gone.Set();
        });
        Assert.NotNull(watch);
        Assert.False(gone.Wait(200), "The client lives.");
        client.Kill();
        client.WaitForExit();
        Assert.True(gone.Wait(TimeSpan.FromSeconds(30)), "Nothing was said.");
        Thread.Sleep(100);
        Assert.Equal(1, told);
    }

    [Fact]
    public void A_client_that_cannot_be_seen_is_not_watched()
    {
        using var client = Process.Start(new ProcessStartInfo("sleep", "0"))!;
        client.WaitForExit();
        Assert.Null(ParentWatch.Begin(client.Id, Often, () => { }));
    }
}
