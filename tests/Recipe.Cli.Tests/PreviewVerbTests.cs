using System.Text.Json;

namespace Recipe.Cli.Tests;

public sealed class PreviewVerbTests
{
    [Fact]
    public async Task A_preview_is_served_compares_with_the_last_commit_and_ends_when_it_is_broken_off()
    {
        using var repo = Repo.OfHatchLid();
        repo.Change("hatch-lid.recipe", "resin-content      45 % by weight", "resin-content      50 % by weight");
        await using var run = new Run(repo.Bench.PathOf("hatch-lid.recipe"), "--no-open");
        var address = await run.Address();
        using var client = new HttpClient { BaseAddress = address };

        // Settings are looked for as far up as the disk goes; what lies above the repository is no question for git.
        JsonElement changes;
        do
        {
            using var view = JsonDocument.Parse(await client.GetStringAsync(new Uri("view", UriKind.Relative)));
            changes = view.RootElement.GetProperty("picture").GetProperty("changes").Clone();
        }
        while (changes.TryGetProperty("refusal", out var refusal) && refusal.GetString()!.Contains("is being read", StringComparison.Ordinal));

        Assert.Equal("the last commit", changes.GetProperty("against").GetString());
        Assert.Contains("resin-content", changes.ToString(), StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Clean, await run.End());
    }

    [Fact]
    public async Task The_port_can_be_chosen_and_is_the_same_next_time_without_choosing()
    {
        using var bench = new Bench();
        bench.Write("lid.recipe", TestKit.Repository.Read("samples/hatch-lid.recipe"));
        Uri first;
        await using (var run = new Run(bench.PathOf("lid.recipe"), "--no-open"))
        {
            first = await run.Address();
        }

        await using var again = new Run(bench.PathOf("lid.recipe"), "--no-open");
        Assert.Equal(first, await again.Address());
        var taken = Bench.Run("preview", bench.PathOf("lid.recipe"), "--no-open", "--port", first.Port.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(ExitStatus.CouldNotRun, taken.Status);
        Assert.Contains("is taken", taken.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-such.recipe", "there is no such file")]
    [InlineData(".", "is a folder")]
    public void What_is_no_recipe_is_not_previewed(string path, string why)
    {
        using var bench = new Bench();
        var run = Bench.Run("preview", Path.Combine(bench.Folder, path), "--no-open");
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Contains(why, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_browser_that_cannot_be_opened_is_no_reason_to_stop()
    {
        // Nothing takes an address of no scheme that anybody serves.
        Assert.False(Files.Browser.TryOpen(new Uri("recipe-nobody-serves-this://x")));
    }

    /// <summary>The verb on a thread of its own, until it is broken off as Ctrl-C does it.</summary>
    private sealed class Run : IAsyncDisposable
    {
        private readonly TaskCompletionSource<Action> _stop = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private readonly StringWriter _output = new() { NewLine = "\n" };
        private readonly Task<int> _run;

        static Run() => Environment.SetEnvironmentVariable("XDG_RUNTIME_DIR", Directory.CreateTempSubdirectory("recipe-seats-").FullName);

        public Run(params string[] arguments)
        {
            using var error = new StringWriter();
            var terminal = new Terminal(TextWriter.Synchronized(_output), error, () => Stream.Null)
            {
                Today = new DateOnly(2026, 6, 1),
                OnInterrupt = stop =>
                {
                    _stop.SetResult(stop);
                    return Stream.Null;
                },
            };
            _run = Task.Run(() => CommandLine.Run(["preview", .. arguments], terminal));
        }

        public async Task<Uri> Address()
        {
            await Task.WhenAny(_stop.Task, _run);
            var said = _output.ToString();
            return new Uri(said[said.IndexOf("http://", StringComparison.Ordinal)..said.IndexOf('\n', StringComparison.Ordinal)]);
        }

        public async Task<int> End()
        {
            (await _stop.Task)();
            return await _run;
        }

        public async ValueTask DisposeAsync()
        {
            if (!_run.IsCompleted)
            {
                await End();
            }

            await _output.DisposeAsync();
        }
    }
}
