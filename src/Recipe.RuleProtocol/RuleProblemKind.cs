namespace Recipe.RuleProtocol;

/// <summary>What went wrong with the running of rules, not with what they look at.</summary>
public enum RuleProblemKind
{
    /// <summary>There is no rules host beside the program.</summary>
    NotInstalled,

    /// <summary>The rules host could not be started, or said nothing.</summary>
    DidNotStart,

    /// <summary>The rules host is of another version than the program.</summary>
    WrongVersion,

    /// <summary>The rules host ended, or said what it must not say.</summary>
    HostFailed,

    /// <summary>A rule took too long, too many steps, too much memory, or called itself too deeply, and was stopped.</summary>
    RuleStopped,

    /// <summary>A rule threw an exception.</summary>
    RuleFailed,

    /// <summary>Compiling a file took too long and was stopped.</summary>
    CompileStopped,

    /// <summary>A rule reported more than is kept.</summary>
    TooMuch,

    /// <summary>The caller asked to stop.</summary>
    Cancelled,
}
