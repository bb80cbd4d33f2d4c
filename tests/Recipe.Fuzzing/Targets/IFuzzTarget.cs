namespace Recipe.Fuzzing.Targets;

/// <summary>A way into the product that takes bytes, and what must be true of it whatever they are.</summary>
internal interface IFuzzTarget
{
    /// <summary>Name on the command line, and of its folder of kept inputs.</summary>
    string Name { get; }

    /// <summary>Inputs to begin with; small ones find more.</summary>
    IEnumerable<(string Name, byte[] Bytes)> Seeds();

    /// <summary>Words that the fuzzer may put in as a whole.</summary>
    IEnumerable<string> Words => [];

    /// <summary>Takes the bytes in.</summary>
    /// <exception cref="Exception">A property is broken, or the product threw where it never may.</exception>
    void Run(byte[] bytes);
}
