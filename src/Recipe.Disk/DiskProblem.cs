namespace Recipe.Disk;

/// <summary>What the system says when a file cannot be read or written, in words.</summary>
public static class DiskProblem
{
    /// <summary>Whether an exception says that a file cannot be used; anything else is a fault of the program.</summary>
    public static bool IsOne(Exception problem) => problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException;

    /// <summary>The reason of a file error, without the path that the message around it names already.</summary>
    public static string Reason(Exception problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return problem switch
        {
            FileNotFoundException or DirectoryNotFoundException => "there is no such file or folder.",
            UnauthorizedAccessException => "no permission.",
            _ when problem.Message.StartsWith("Too many levels of symbolic links", StringComparison.Ordinal) => "its symbolic links lead round in a circle.",
            _ when problem.Message.StartsWith("No space left on device", StringComparison.Ordinal) => "the disk is full.",
            _ when problem.Message.StartsWith("Disk quota exceeded", StringComparison.Ordinal) => "the quota of the disk is used up.",
            _ when problem.Message.StartsWith("Read-only file system", StringComparison.Ordinal) => "the disk is read-only.",
            _ => problem.Message,
        };
    }
}
