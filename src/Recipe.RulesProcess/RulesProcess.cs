using System.Collections.Immutable;
using System.Text.Json;
using Recipe.RuleApi;
using Recipe.RulesProcess.Protocol;

namespace Recipe.RulesProcess;

/// <summary>
/// Compiles and runs a shop's rules in C# in a process of their own. It is started when it is first needed and then kept. Nothing
/// that a rule or the host does throws here: the answer says in words what happened, and which rule it was; the other rules are
/// run all the same. One caller at a time gets an answer, others wait.
/// </summary>
/// <remarks>
/// Whether a folder's rules may be run at all is for the caller to ask: <see cref="TrustedFolders"/>. What a rule may do is bounded
/// against accidents, not against somebody who means harm.
/// </remarks>
public sealed class RulesProcess(RulesProcessOptions options) : IDisposable
{
    // How many times as long as a rule may run it may take until then.
    private const int Patience = 4;

    private readonly Lock _gate = new();
    private readonly AnswerCache _answers = new(options);
    private HostSession? _session;
    private int _lastId;
    private bool _told;

    /// <summary>Is told of each file before it is compiled, and of null when the answer is there. Nothing is told when all were compiled before.</summary>
    public Action<RuleCompiling?>? Compiling { get; set; }

    /// <summary>How many times a host was started.</summary>
    internal int Starts { get; private set; }

    /// <summary>The last answer of a host as it came.</summary>
    internal HostAnswer? LastAnswer { get; private set; }

    /// <summary>The rules of the files, or why they cannot be used.</summary>
    /// <param name="files">The files; each has a name of its own.</param>
    /// <param name="stop">Ends the wait, and the host with it.</param>
    public RuleSetAnswer Describe(IReadOnlyList<RuleSource> files, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(files);
        var answer = Ask(files, null, stop);
        return new RuleSetAnswer(answer.Rules, answer.Diagnostics, answer.Problems);
    }

    /// <summary>Runs the rules of the files on parts.</summary>
    /// <param name="files">The files; each has a name of its own.</param>
    /// <param name="parts">The facts of each part.</param>
    /// <param name="stop">Ends the wait, and the host with it.</param>
    public RuleRunAnswer Examine(IReadOnlyList<RuleSource> files, IReadOnlyList<FactSheet> parts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(parts);
        return Ask(files, parts, stop);
    }

    /// <summary>Ends the host.</summary>
    public void Dispose()
    {
        lock (_gate)
        {
            End();
        }
    }

    private RuleRunAnswer Ask(IReadOnlyList<RuleSource> files, IReadOnlyList<FactSheet>? parts, CancellationToken stop)
    {
        if (files.Count == 0)
        {
            return new RuleRunAnswer([], [], [], [], []);
        }

        lock (_gate)
        {
            var request = new HostRequest(0, files, parts, [], []);
            var key = _answers.Key(request);
            if (_answers.Find(key) is { } known)
            {
                return known;
            }

            var answer = AskHost(request, stop);
            if (_told)
            {
                _told = false;
                Compiling?.Invoke(null);
            }

            if (answer.Problems.IsEmpty)
            {
                _answers.Keep(key, answer);
            }

            return answer;
        }
    }

    private RuleRunAnswer AskHost(HostRequest request, CancellationToken stop)
    {
        // What had to be stopped from outside is left out of the next attempt.
        var stopped = ImmutableArray.CreateBuilder<RuleProblem>();
        while (true)
        {
            var (answer, problem) = AskOnce(request with { Id = ++_lastId }, stop);
            if (answer is not null)
            {
                return answer with { Problems = [.. stopped, .. answer.Problems] };
            }

            stopped.Add(problem!);
            if (problem is { File: { } file } && stopped.Count <= options.MostRestarts)
            {
                request = problem.Rule is { } rule ? request with { Skip = request.Skip.Add(new SkippedRule(file, rule)) } : request with { SkipFiles = request.SkipFiles.Add(file) };
                continue;
            }

            if (problem!.File is not null)
            {
                stopped.Add(new RuleProblem(RuleProblemKind.HostFailed, null, null, null, $"{stopped.Count} rules or files in a row had to be stopped; the other rules were not run."));
            }

            return new RuleRunAnswer([], [], [], [], stopped.ToImmutable());
        }
    }

    private (RuleRunAnswer? Answer, RuleProblem? Problem) AskOnce(HostRequest request, CancellationToken stop)
    {
        var line = RequestWire.Write(request);
        if (_session is null || !_session.Send(line, options.StartTime, stop))
        {
            // A host that was kept may have ended since.
            End();
            Starts++;
            (_session, var problem) = HostSession.Start(options, stop);
            if (_session is null)
            {
                return (null, problem);
            }

            if (!_session.Send(line, options.StartTime, stop))
            {
                return (null, Fail(null, RuleProblemKind.HostFailed, $"did not take the question{_session.Words()}"));
            }
        }

        return Listen(request, stop);
    }

    private (RuleRunAnswer? Answer, RuleProblem? Problem) Listen(HostRequest request, CancellationToken stop)
    {
        HostProgress? at = null;
        var (begun, patience) = (TimeSpan.Zero, 0);
        for (var lines = 0; lines < options.MostProgress; lines++)
        {
            var wait = at is null ? options.StartTime : at.Rule is null ? options.CompileTime : options.RuleTime;
            var line = _session!.Next(wait, stop, out var ended);
            if (stop.IsCancellationRequested)
            {
                End();
                return (null, new RuleProblem(RuleProblemKind.Cancelled, null, null, null, "The run of rules was stopped on request."));
            }

            // On a machine that is busy with other things a rule has not run for as long as it took.
            if (line is null && !ended && patience-- > 0 && _session.ProcessorTime() - begun < wait)
            {
                continue;
            }

            if (line is null)
            {
                return (null, ended ? Ended(at) : TooSlow(at, wait));
            }

            try
            {
                var (progress, answer) = AnswerWire.Read(line);
                if (progress is not null && progress.Id == request.Id && IsOf(request, progress))
                {
                    at = progress;
                    Tell(request, progress);
                    (begun, patience) = at.Rule is null ? (TimeSpan.Zero, 0) : (_session.ProcessorTime(), Patience);
                    continue;
                }

                if (answer is not null && answer.Id == request.Id && AnswerCheck.Fits(request, answer.Run))
                {
                    LastAnswer = answer;
                    return (answer.Run, null);
                }
            }
            catch (Exception problem) when (problem is JsonException or InvalidOperationException or FormatException)
            {
                // Said below.
            }

            return (null, Fail(null, RuleProblemKind.HostFailed, "said something that is no answer"));
        }

        return (null, Fail(null, RuleProblemKind.HostFailed, "goes on saying what it does and comes to no end"));
    }

    private void Tell(HostRequest request, HostProgress progress)
    {
        if (Compiling is not null && progress.Rule is null)
        {
            var number = request.Files.TakeWhile(file => file.Name != progress.File).Count() + 1;
            _told = true;
            Compiling(new RuleCompiling(progress.File, number, request.Files.Count));
        }
    }

    private static bool IsOf(HostRequest request, HostProgress progress) =>
        request.Files.Any(file => file.Name == progress.File) && (progress.Part is not { } part || (part >= 0 && part < (request.Parts?.Count ?? 0)));

    private RuleProblem TooSlow(HostProgress? at, TimeSpan wait)
    {
        End();
        var time = HostSession.Seconds(wait);
        return at switch
        {
            null => Fail(at, RuleProblemKind.HostFailed, $"did not answer for {time} and was stopped"),
            { Rule: { } rule } => new RuleProblem(RuleProblemKind.RuleStopped, at.File, rule, at.Part, $"rule {rule} ran longer than {time} and was stopped."),
            _ => new RuleProblem(RuleProblemKind.CompileStopped, at.File, null, null, $"compiling {at.File} took longer than {time} and was stopped."),
        };
    }

    private RuleProblem Ended(HostProgress? at)
    {
        var how = _session!.SaidTooMuch ? $"wrote more than {options.LongestAnswer:N0} bytes in a line and was stopped" : "ended";
        return at switch
        {
            null => Fail(at, RuleProblemKind.HostFailed, how + _session.Words()),
            { Rule: { } rule } => Fail(at, RuleProblemKind.RuleStopped, $"rule {rule} ran when the rules host {how}{_session.Words()}."),
            _ => Fail(at, RuleProblemKind.CompileStopped, $"{at.File} was compiled when the rules host {how}{_session.Words()}."),
        };
    }

    private RuleProblem Fail(HostProgress? at, RuleProblemKind kind, string what)
    {
        End();
        return at is null ? new RuleProblem(kind, null, null, null, $"The rules host {what}.") : new RuleProblem(kind, at.File, at.Rule, at.Part, what);
    }

    private void End()
    {
        _session?.Dispose();
        _session = null;
    }
}
