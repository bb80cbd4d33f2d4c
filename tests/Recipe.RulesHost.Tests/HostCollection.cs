using Recipe.RulesHost.Running;
using Recipe.RulesProcess.Protocol;

namespace Recipe.RulesHost.Tests;

/// <summary>Tests that run rules in this process: the counter of steps is one for all.</summary>
[CollectionDefinition("counter")]
public sealed class HostCollection
{
    /// <summary>Compiles and runs a text of rules on the lid, on a thread like the host's.</summary>
    internal static RuleRunAnswer Run(string text, int plies = 3)
    {
        RuleRunAnswer? answer = null;
        Exception? failure = null;
        var thread = new Thread(
            () =>
            {
                try
                {
                    var request = new HostRequest(1, [new RuleSource("one.rule.cs", text)], [Lid.Of(plies)], [], []);
                    var (files, diagnostics, _) = new RuleSet(new RuleCache(null)).Load(request, _ => { });
                    answer = RuleRunner.Run(request, files, _ => { }) with { Diagnostics = diagnostics };
                }
                catch (Exception problem)
                {
                    failure = problem;
                }
            },
            16 << 20);
        thread.Start();
        thread.Join();
        return failure is null ? answer! : throw new InvalidOperationException("The host would have ended.", failure);
    }
}
