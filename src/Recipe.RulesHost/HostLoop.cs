using System.Collections.Concurrent;
using System.Text.Json;
using Recipe.RulesHost.Running;
using Recipe.RulesProcess.Protocol;

namespace Recipe.RulesHost;

/// <summary>Reads requests and answers them, one after the other, until the input ends.</summary>
internal sealed class HostLoop(Stream input, Stream output, string version, string? cacheFolder)
{
    private readonly RuleSet _rules = new(new RuleCache(cacheFolder));

    /// <summary>
    /// Runs until the input ends. The work is done on a thread with a stack of known size; this one only reads, so that the end of the
    /// input ends the process even while a rule runs.
    /// </summary>
    public void Run()
    {
        using var requests = new BlockingCollection<byte[]>(boundedCapacity: 4);
        var work = new Thread(() => Work(requests), maxStackSize: 16 << 20) { IsBackground = true };
        Write(AnswerWire.Greeting(version));
        work.Start();
        foreach (var line in Lines())
        {
            requests.Add(line);
        }
    }

    private void Work(BlockingCollection<byte[]> requests)
    {
        foreach (var line in requests.GetConsumingEnumerable())
        {
            HostRequest request;
            try
            {
                request = RequestWire.Read(line);
            }
            catch (Exception problem) when (problem is JsonException or InvalidOperationException or FormatException)
            {
                // Who writes what is no request is not the program; there is nobody to tell.
                Environment.Exit(2);
                return;
            }

            Write(AnswerWire.Write(Answer(request)));
        }
    }

    private HostAnswer Answer(HostRequest request)
    {
        var (files, diagnostics, compiled) = _rules.Load(request, progress => Write(AnswerWire.Write(progress)));
        var run = RuleRunner.Run(request, files, progress => Write(AnswerWire.Write(progress)));
        return new HostAnswer(
            request.Id,
            run with { Diagnostics = diagnostics },
            compiled,
            [.. AppDomain.CurrentDomain.GetAssemblies().Select(assembly => assembly.GetName().Name ?? "").Order(StringComparer.Ordinal)]);
    }

    private void Write(byte[] line)
    {
        output.Write(line);
        output.Flush();
    }

    private IEnumerable<byte[]> Lines()
    {
        using var line = new MemoryStream();
        var buffer = new byte[64 << 10];
        int read;
        while ((read = input.Read(buffer)) > 0)
        {
            var rest = buffer.AsMemory(0, read);
            int end;
            while ((end = rest.Span.IndexOf((byte)'\n')) >= 0)
            {
                line.Write(rest.Span[..end]);
                yield return line.ToArray();
                line.SetLength(0);
                rest = rest[(end + 1)..];
            }

            line.Write(rest.Span);
            if (line.Length > Wire.LongestRequest)
            {
                yield break;
            }
        }
    }
}
