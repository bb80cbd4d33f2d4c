using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Recipe.TestKit;

namespace Recipe.Benchmarks;

/// <summary>
/// How long a save takes to be seen: the published binary serves a preview, a client listens to its events as the page does, a file is saved, and the
/// time is taken until the event comes and until the new pictures are there.
/// </summary>
internal static class PreviewBudget
{
    private const int Saves = 41;

    public static void Measure(string binary, string folder)
    {
        foreach (var (name, changed) in ((string, string)[])[("hatch-lid.recipe", "45 % by weight"), ("shapes/seat-pan.recipe", "52 % by weight")])
        {
            var (toEvent, toView, bytes, memory) = Save(binary, Copy(folder, name), changed);
            Row($"preview of {name}: save to event", toEvent, null, memory);
            Row($"preview of {name}: save to pictures, {bytes / 1000} kB", toView, 150, memory);
        }
    }

    private static (double[] ToEvent, double[] ToView, int Bytes, long Memory) Save(string binary, string path, string changed)
    {
        var start = new ProcessStartInfo(binary) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in (string[])["preview", path, "--no-open"])
        {
            start.ArgumentList.Add(argument);
        }

        // Its place is remembered nowhere but here.
        start.Environment["XDG_RUNTIME_DIR"] = Path.GetDirectoryName(path)!;
        using var process = Process.Start(start)!;
        try
        {
            var line = process.StandardOutput.ReadLine() ?? throw new InvalidOperationException(process.StandardError.ReadToEnd());
            var address = new Uri(line[line.IndexOf("http://", StringComparison.Ordinal)..]);
            using var client = new HttpClient { BaseAddress = address };
            using var stream = new StreamReader(client.GetStreamAsync("events").GetAwaiter().GetResult());
            using var events = new BlockingCollection<long>();
            new Thread(() => Listen(stream, events)) { IsBackground = true }.Start();
            var text = File.ReadAllText(path);
            var (toEvent, toView) = (new List<double>(), new List<double>());
            var bytes = 0;
            events.Take();
            var shown = StampOf(client.GetByteArrayAsync("view").GetAwaiter().GetResult());
            for (var i = 0; i < Saves + 5; i++)
            {
                var share = string.Create(CultureInfo.InvariantCulture, $"{40 + (i % 20) + 0.5} % by weight");

                // What came late of the save before, or of the last commit, is not of this one.
                Thread.Sleep(250);
                while (events.TryTake(out _))
                {
                    shown = StampOf(client.GetByteArrayAsync("view").GetAwaiter().GetResult());
                }

                var began = Stopwatch.GetTimestamp();
                File.WriteAllText(path, text.Replace(changed, share, StringComparison.Ordinal));
                TimeSpan heard;
                while (true)
                {
                    heard = Stopwatch.GetElapsedTime(began, events.Take());
                    var view = client.GetByteArrayAsync("view").GetAwaiter().GetResult();
                    bytes = view.Length;

                    // The comparison with the last commit is a moment of its own; only another text is another stamp.
                    var stamp = StampOf(view);
                    if (stamp != shown)
                    {
                        shown = stamp;
                        break;
                    }
                }

                if (i >= 5)
                {
                    toEvent.Add(heard.TotalMilliseconds);
                    toView.Add(Stopwatch.GetElapsedTime(began).TotalMilliseconds);
                }
            }

            process.Refresh();
            return ([.. toEvent.Order()], [.. toView.Order()], bytes, process.PeakWorkingSet64);
        }
        finally
        {
            process.Kill();
            process.WaitForExit();
        }
    }

    private static string? StampOf(byte[] view)
    {
        using var json = JsonDocument.Parse(view);
        return json.RootElement.GetProperty("stamp").GetString();
    }

    private static void Listen(StreamReader stream, BlockingCollection<long> events)
    {
        try
        {
            while (stream.ReadLine() is { } line)
            {
                if (line.StartsWith("event: changed", StringComparison.Ordinal))
                {
                    events.Add(Stopwatch.GetTimestamp());
                }
            }
        }
        catch (Exception problem) when (problem is IOException or ObjectDisposedException or InvalidOperationException)
        {
            // The preview was ended.
        }
    }

    private static string Copy(string folder, string name)
    {
        var own = Path.Combine(folder, "preview", Path.GetFileNameWithoutExtension(name));
        foreach (var file in (string[])["shop.recipe", "hatch-lid.recipe", "shapes/seat-pan.recipe", "shapes/seat-pan.stl"])
        {
            var path = Path.Combine(own, file);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.Copy(Repository.PathOf($"samples/{file}"), path);
        }

        return Path.Combine(own, name);
    }

    private static void Row(string what, double[] times, int? budgetMs, long memory) => Console.WriteLine(string.Create(
        CultureInfo.InvariantCulture, $"| {what} | {budgetMs} | {times[times.Length / 2]:0.0}, p95 {times[times.Length * 95 / 100]:0.0} | {times.Min():0.0} |  | {memory / 1e6:0} |"));
}
