using System.Reflection;
using System.Runtime.ExceptionServices;
using Recipe.RuleApi;

namespace Recipe.RulesHost.Running;

/// <summary>Runs code of a rule within its limits, and says in words how it ended.</summary>
internal static class Guarded
{
    private const int LongestReason = 300;

    /// <summary>
    /// Does work that runs code of rules on a thread with a small stack: calls nested without end are met early, for it takes long to come
    /// back from a million of them.
    /// </summary>
    public static void OnSmallStack(Action work)
    {
        ExceptionDispatchInfo? failure = null;
        var thread = new Thread(
            () =>
            {
                try
                {
                    work();
                }
                catch (Exception problem)
                {
                    failure = ExceptionDispatchInfo.Capture(problem);
                }
            },
            maxStackSize: 1 << 20);
        thread.Start();
        thread.Join();
        failure?.Throw();
    }

    /// <summary>Runs it.</summary>
    /// <returns>Null when it ended well; otherwise what happened, to end the sentence "the rule ...".</returns>
    public static (RuleProblemKind Kind, string What)? Run(Action action)
    {
        Steps.Reset();
        try
        {
            action();
            return null;
        }
        catch (Exception failure)
        {
            return Words(failure);
        }
    }

    private static (RuleProblemKind Kind, string What) Words(Exception failure)
    {
        // Sorting, static initialisers and reflection wrap what they met.
        for (var cause = failure; cause is not null; cause = cause.InnerException)
        {
            switch (cause)
            {
                case RuleLimitException limit:
                    return (RuleProblemKind.RuleStopped, $"{limit.Message} and was stopped");
                case InsufficientExecutionStackException:
                    return (RuleProblemKind.RuleStopped, "called itself too deeply and was stopped");
                case OutOfMemoryException:
                    GC.Collect();
                    return (RuleProblemKind.RuleStopped, "used more memory than it may and was stopped");
            }
        }

        var inner = failure;
        while (inner is TargetInvocationException or TypeInitializationException && inner.InnerException is { } next)
        {
            inner = next;
        }

        return (RuleProblemKind.RuleFailed, $"failed with {inner.GetType().Name}: {PlainText.Of(inner.Message, LongestReason).TrimEnd('.')}");
    }
}
