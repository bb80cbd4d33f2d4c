using Recipe.Text;

namespace Recipe.Checks;

/// <summary>What keeps a file of rules in C# from being run.</summary>
public enum CodedRuleTrouble
{
    /// <summary>The user has not agreed to run what stands in its folder.</summary>
    NotTrusted,

    /// <summary>It does not compile, or does what a rule may not do.</summary>
    Faulty,

    /// <summary>It could not be run, or was stopped.</summary>
    NotRun,
}

/// <summary>Something that keeps rules in C# from being run.</summary>
/// <param name="Trouble">What.</param>
/// <param name="Where">Where the file is named.</param>
/// <param name="Said">What there is to say, in one sentence without a full stop.</param>
public sealed record CodedRuleNote(CodedRuleTrouble Trouble, SourceSpan Where, string Said)
{
    /// <summary>The place in the file, or null.</summary>
    public SourceSpan? At { get; init; }
}
