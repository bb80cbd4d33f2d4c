using Recipe.Planning;

namespace Recipe.Checks;

/// <summary>A check of a build record, beside the records of the same part before and after it.</summary>
public abstract class RecordCheck : ElsewhereCheck
{
    /// <summary>Looks at one record. Says nothing when all is well or when the record is still being written.</summary>
    /// <param name="context">Where to say what is wrong.</param>
    /// <param name="build">The record.</param>
    /// <param name="log">All records of the part in order; the record is one of them.</param>
    internal abstract void Examine(CheckContext context, LoggedBuild build, BuildLog log);
}
