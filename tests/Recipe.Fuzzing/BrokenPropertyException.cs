namespace Recipe.Fuzzing;

/// <summary>What must be true of every input is not true of this one.</summary>
public sealed class BrokenPropertyException(string message) : Exception(message)
{
    /// <summary>Holds a property.</summary>
    public static void ThrowUnless(bool holds, string what)
    {
        if (!holds)
        {
            throw new BrokenPropertyException(what);
        }
    }
}
