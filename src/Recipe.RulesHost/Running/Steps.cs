using System.Collections;
using System.Runtime.CompilerServices;

namespace Recipe.RulesHost.Running;

/// <summary>
/// The counter that the host writes into every loop and every body of a rule before it compiles it. The source that an author hands in
/// is compiled without this class, so it cannot be named there.
/// </summary>
public static class Steps
{
    /// <summary>The most steps that a rule may take on one part.</summary>
    public const long Most = 5_000_000;

    /// <summary>The most elements of arrays that a rule may make for one part.</summary>
    public const long MostElements = 2_000_000;

    /// <summary>The most characters of texts that a rule may make for one part.</summary>
    public const long MostCharacters = 10_000_000;

    private static long _steps;
    private static long _elements;
    private static long _characters;

    /// <summary>Counts from zero again.</summary>
    public static void Reset() => (_steps, _elements, _characters) = (0, 0, 0);

    /// <summary>Counts one turn of a loop.</summary>
    /// <exception cref="RuleLimitException">It was one too many.</exception>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Take()
    {
        if (++_steps > Most)
        {
            Spent();
        }
    }

    /// <summary>Counts one call.</summary>
    /// <exception cref="RuleLimitException">It was one too many.</exception>
    /// <exception cref="InsufficientExecutionStackException">Calls are nested too deeply.</exception>
    public static void Enter()
    {
        RuntimeHelpers.EnsureSufficientExecutionStack();
        Take();
    }

    /// <summary>Counts one call, in the middle of an expression.</summary>
    /// <returns>Yes.</returns>
    public static bool Enters()
    {
        Enter();
        return true;
    }

    /// <summary>Counts one value of a query.</summary>
    public static T Through<T>(T value)
    {
        Take();
        return value;
    }

    /// <summary>Counts the elements of a sequence as they are taken.</summary>
    public static IEnumerable<T> Counted<T>(IEnumerable<T> source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return new CountedSequence<T>(source);
    }

    /// <summary>Counts the elements of a new array.</summary>
    /// <exception cref="RuleLimitException">They are too many.</exception>
    public static int Size(long size)
    {
        if (size > 0 && (size > MostElements || (_elements += size) > MostElements))
        {
            throw new RuleLimitException($"made arrays of more than {MostElements:N0} elements");
        }

        return checked((int)size);
    }

    /// <summary>Counts the characters of a new text.</summary>
    /// <exception cref="RuleLimitException">They are too many.</exception>
    public static string? Text(string? text)
    {
        if (text is not null && (_characters += text.Length) > MostCharacters)
        {
            throw new RuleLimitException($"made texts of more than {MostCharacters:N0} characters");
        }

        return text;
    }

    private static void Spent() => throw new RuleLimitException($"took more than {Most:N0} steps");

    private sealed class CountedSequence<T>(IEnumerable<T> source) : IEnumerable<T>
    {
        public IEnumerator<T> GetEnumerator()
        {
            foreach (var item in source)
            {
                Take();
                yield return item;
            }
        }

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
