using System.Diagnostics;
using Recipe.Cli.Files;
using Recipe.Cli.Text;
using Recipe.Compiler.Exploring;
using Recipe.Disk;

namespace Recipe.Cli.Commands;

/// <summary>One run of an <c>explore</c>: from nothing, from where it was broken off, or from shards.</summary>
internal sealed class ExploreRun(Terminal terminal, DeclaredStudy study, ExploreWish wish)
{
    private static readonly TimeSpan BetweenCheckpoints = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan BetweenSigns = TimeSpan.FromMilliseconds(250);

    private readonly ShardSet _set = study.Shards(CommandLine.Version);

    public int Run()
    {
        if (wish.Candidate is { } candidate)
        {
            ResultFile.Write(
                terminal, wish.Out, candidate >= 0 && candidate < study.Candidates ? study.Variant(candidate) : throw new CannotRunException($"there is no candidate {candidate}: {study.Name} has those from 0 to {study.Candidates - 1}."));
            return ExitStatus.Clean;
        }

        if (wish.Merge.Length > 0)
        {
            return Report(Merged());
        }

        var plan = wish.Shard ?? ShardPlan.Whole;
        var (from, until) = plan.Range(study.Candidates);
        var (exploration, start) = Start(plan, from);
        if (wish.All)
        {
            using var rows = new GrowingFile(terminal, wish.Out);
            rows.Write(exploration.Head());
            if (Look(exploration, plan, start, until, looked => rows.Write(looked())) < until)
            {
                return Broken("what was written so far is not kept");
            }

            rows.Keep();
            return ExitStatus.Clean;
        }

        var next = Look(exploration, plan, start, until, _ => { });
        if (wish.State is not null)
        {
            Checkpoint(exploration, plan, next);
        }

        if (next < until)
        {
            return Broken(wish.State is null ? "nothing of it is kept; with --state FILE a run can go on" : $"run it again with `--state {wish.State}` to go on from candidate {next} of {until}");
        }

        if (wish.Shard is null)
        {
            return Report(exploration);
        }

        ResultFile.Write(terminal, wish.Out, exploration.Shard(_set, plan, next));
        return ExitStatus.Clean;
    }

    private int Report(Exploration exploration)
    {
        ResultFile.Write(
            terminal, wish.Out, exploration.Write(wish.Format) ?? throw new CannotRunException("there is no picture: it takes two figures that are wanted or limited, and a candidate that keeps every limit."));
        return ExitStatus.Clean;
    }

    private long Look(Exploration exploration, ShardPlan plan, long start, long until, Action<Func<string>> looked)
    {
        using var cancel = new CancellationTokenSource();
        using var signal = terminal.OnInterrupt(cancel.Cancel);
        var progress = new Progress(terminal);
        var (sign, kept) = (Stopwatch.StartNew(), Stopwatch.StartNew());
        var next = exploration.Run(
            start,
            until,
            (now, candidates) =>
            {
                looked(candidates);
                if (sign.Elapsed > BetweenSigns)
                {
                    progress.Say($"{now - plan.Range(study.Candidates).From} of {until - plan.Range(study.Candidates).From} candidates of {study.Name}");
                    sign.Restart();
                }

                if (wish.State is not null && kept.Elapsed > BetweenCheckpoints)
                {
                    Checkpoint(exploration, plan, now);
                    kept.Restart();
                }
            },
            cancel.Token);
        progress.End();
        return next;
    }

    private (Exploration Exploration, long Next) Start(ShardPlan plan, long from)
    {
        if (wish.State is null || !File.Exists(wish.State))
        {
            return (study.Begin(terminal.Today, wish.Threads), from);
        }

        var kept = Read(wish.State);
        if (_set.Refuse(kept) is { } reason || (reason = kept.Plan == plan ? null : $"it is of shard {kept.Plan}, and {plan} is wanted") is not null)
        {
            throw new CannotRunException($"{wish.State} cannot be gone on with: {reason}. Name another file, or take it away.");
        }

        // For the day on which it was begun, so that all candidates are held to the same.
        var exploration = study.Begin(kept.Today, wish.Threads);
        exploration.Add(kept);
        return (exploration, kept.Next);
    }

    private Exploration Merged()
    {
        var shards = wish.Merge.Select(name => (name, Read(name))).ToList();
        if (_set.Refuse(shards) is { } reason)
        {
            throw new CannotRunException($"the shards cannot be put together: {reason}");
        }

        var exploration = study.Begin(shards[0].Item2.Today, wish.Threads);
        foreach (var (_, shard) in shards)
        {
            exploration.Add(shard);
        }

        return exploration;
    }

    private static ShardFile Read(string name) =>
        ShardFile.TryRead(DiskFiles.Read(name), out var shard) ? shard : throw new CannotRunException($"{name} is no shard file of this version of the program.");

    private void Checkpoint(Exploration exploration, ShardPlan plan, long next)
    {
        WholeFile.Write(wish.State!, exploration.Shard(_set, plan, next));
    }

    private int Broken(string what)
    {
        terminal.Out.Flush();
        terminal.Error.WriteLine($"recipe: broken off; {what}.");
        return ExitStatus.CouldNotRun;
    }
}
