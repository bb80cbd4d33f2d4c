using System.Collections.Concurrent;
using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Recipe.RulesProcess.Protocol;

namespace Recipe.RulesProcess;

/// <summary>One started host: lines out, lines in with a bound on their length and on the wait, and the end of it.</summary>
internal sealed class HostSession : IDisposable
{
    private const int LastWords = 2_000;
    private readonly Process _process;
    private readonly BlockingCollection<byte[]> _lines = new(boundedCapacity: 8);
    private readonly CancellationTokenSource _end = new();
    private readonly StringBuilder _errors = new();
    private readonly Thread _complaints;
    private volatile bool _tooLong;

    private HostSession(Process process, int longestLine)
    {
        _process = process;
        new Thread(() => ReadLines(longestLine)) { IsBackground = true, Name = "rules host" }.Start();
        _complaints = new Thread(ReadErrors) { IsBackground = true, Name = "rules host, errors" };
        _complaints.Start();
    }

    /// <summary>Whether the host has written a line that is too long.</summary>
    public bool SaidTooMuch => _tooLong;

    /// <summary>Starts a host and waits for its greeting.</summary>
    /// <returns>The session, or what went wrong.</returns>
    public static (HostSession? Session, RuleProblem? Problem) Start(RulesProcessOptions options, CancellationToken stop)
    {
        if (!File.Exists(options.HostPath))
        {
            return (null, Problem(RuleProblemKind.NotInstalled, $"There is no rules host at {options.HostPath}, so rules in C# are not run. It comes with the program, in the folder rules-host beside it."));
        }

        HostSession session;
        try
        {
            session = new HostSession(Process.Start(StartInfo(options))!, options.LongestAnswer);
        }
        catch (Exception problem) when (problem is Win32Exception or InvalidOperationException or IOException or PlatformNotSupportedException)
        {
            return (null, Problem(RuleProblemKind.DidNotStart, $"The rules host at {options.HostPath} could not be started: {problem.Message}."));
        }

        var greeting = session.Next(options.StartTime, stop, out var ended);
        var (protocol, _) = greeting is null ? (-1, "") : Greeting(greeting);
        if (protocol == Wire.Version)
        {
            return (session, null);
        }

        var failure = stop.IsCancellationRequested ? Problem(RuleProblemKind.Cancelled, "The run of rules was stopped on request.")
            : protocol >= 0 ? Problem(RuleProblemKind.WrongVersion, $"The rules host at {options.HostPath} is of another version than the program (it speaks protocol {protocol}, not {Wire.Version}). Install both together.")
            : greeting is not null ? Problem(RuleProblemKind.DidNotStart, $"What was started at {options.HostPath} is no rules host: it greets with something else.")
            : ended ? Problem(RuleProblemKind.DidNotStart, $"The rules host at {options.HostPath} ended before it said anything{session.Words()}.")
            : Problem(RuleProblemKind.DidNotStart, $"The rules host at {options.HostPath} said nothing for {Seconds(options.StartTime)} and was stopped.");
        session.Dispose();
        return (null, failure);
    }

    /// <summary>A time in words.</summary>
    public static string Seconds(TimeSpan time) => string.Create(CultureInfo.InvariantCulture, $"{time.TotalSeconds:0.###} s");

    /// <summary>Sends a line.</summary>
    /// <returns>Whether the host took it in time.</returns>
    public bool Send(byte[] line, TimeSpan wait, CancellationToken stop)
    {
        // A host that does not read lets the writer wait for ever; ending the host then ends the writer. On a thread of its own: the wait must
        // not be for a free one of the pool.
        var sent = Task.Factory.StartNew(() => Write(line), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        try
        {
            return sent.Wait((int)Math.Min(wait.TotalMilliseconds, int.MaxValue), stop) && sent.Result;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    /// <summary>The next line, or null when there was none in time or the host ended.</summary>
    public byte[]? Next(TimeSpan wait, CancellationToken stop, out bool ended)
    {
        try
        {
            if (_lines.TryTake(out var line, (int)Math.Min(wait.TotalMilliseconds, int.MaxValue), stop))
            {
                ended = false;
                return line;
            }

            ended = _lines.IsCompleted;
            return null;
        }
        catch (OperationCanceledException)
        {
            ended = false;
            return null;
        }
    }

    /// <summary>The time that the host has spent computing; the longest there is when that cannot be known.</summary>
    public TimeSpan ProcessorTime()
    {
        try
        {
            _process.Refresh();
            return _process.TotalProcessorTime;
        }
        catch (Exception problem) when (problem is InvalidOperationException or Win32Exception or NotSupportedException)
        {
            return TimeSpan.MaxValue;
        }
    }

    /// <summary>What the host said last where programs complain, to end a sentence.</summary>
    public string Words()
    {
        // The end of its output comes a moment before the end of its complaints, and they are read by another thread. Neither is waited for long: a child of
        // the host may keep its end of the pipe open.
        _process.WaitForExit(500);
        _complaints.Join(500);
        lock (_errors)
        {
            var text = _errors.ToString().ReplaceLineEndings("\n").Split('\n').FirstOrDefault(line => line.Trim().Length > 0)?.Trim();
            return text is null ? "" : $" ({(text.Length > 200 ? text[..200] + "…" : text)})";
        }
    }

    public void Dispose()
    {
        _end.Cancel();
        try
        {
            _process.Kill(entireProcessTree: true);
            _process.WaitForExit(5_000);
        }
        catch (Exception problem) when (problem is InvalidOperationException or Win32Exception or NotSupportedException or AggregateException)
        {
            // It had ended already.
        }

        _process.Dispose();
    }

    private static ProcessStartInfo StartInfo(RulesProcessOptions options)
    {
        var isLibrary = options.HostPath.EndsWith(".dll", StringComparison.OrdinalIgnoreCase);
        var start = new ProcessStartInfo(isLibrary ? "dotnet" : options.HostPath)
        {
            UseShellExecute = false,
            CreateNoWindow = true,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        foreach (var argument in (IEnumerable<string>)[.. isLibrary ? [options.HostPath] : Array.Empty<string>(), .. options.HostArguments, .. options.CacheFolder is { } cache ? ["--cache", cache] : Array.Empty<string>()])
        {
            start.ArgumentList.Add(argument);
        }

        start.Environment["DOTNET_GCHeapHardLimit"] = "0x" + options.MemoryCap.ToString("x", CultureInfo.InvariantCulture);
        start.Environment["DOTNET_gcServer"] = "0";
        start.Environment["DOTNET_TieredPGO"] = "0";
        start.Environment["DOTNET_DbgEnableMiniDump"] = "0";
        start.Environment["DOTNET_SYSTEM_GLOBALIZATION_INVARIANT"] = "1";
        return start;
    }

    private static (int Protocol, string Host) Greeting(byte[] line)
    {
        try
        {
            return AnswerWire.ReadGreeting(line);
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException)
        {
            return (-1, "");
        }
    }

    private static RuleProblem Problem(RuleProblemKind kind, string message) => new(kind, null, null, null, message);

    private bool Write(byte[] line)
    {
        try
        {
            var input = _process.StandardInput.BaseStream;
            input.Write(line);
            input.Flush();
            return true;
        }
        catch (Exception problem) when (problem is IOException or ObjectDisposedException or InvalidOperationException)
        {
            return false;
        }
    }

    private void ReadLines(int longest)
    {
        try
        {
            var output = _process.StandardOutput.BaseStream;
            using var line = new MemoryStream();
            var buffer = new byte[64 << 10];
            int read;
            while ((read = output.Read(buffer)) > 0)
            {
                var rest = buffer.AsMemory(0, read);
                int at;
                while ((at = rest.Span.IndexOf((byte)'\n')) >= 0)
                {
                    line.Write(rest.Span[..at]);
                    _lines.Add(line.ToArray(), _end.Token);
                    line.SetLength(0);
                    rest = rest[(at + 1)..];
                }

                line.Write(rest.Span);
                if (line.Length > longest)
                {
                    _tooLong = true;
                    return;
                }
            }
        }
        catch (Exception problem) when (problem is IOException or ObjectDisposedException or InvalidOperationException or OperationCanceledException)
        {
            // The host ended, or was ended.
        }
        finally
        {
            _lines.CompleteAdding();
        }
    }

    private void ReadErrors()
    {
        try
        {
            var buffer = new char[1024];
            int read;
            while ((read = _process.StandardError.Read(buffer)) > 0)
            {
                lock (_errors)
                {
                    _errors.Append(buffer, 0, Math.Min(read, LastWords - _errors.Length));
                }
            }
        }
        catch (Exception problem) when (problem is IOException or ObjectDisposedException or InvalidOperationException)
        {
            // The host ended, or was ended.
        }
    }
}
