namespace Recipe.RuleProtocol;

/// <summary>Why a file of rules cannot be used: it does not compile, or does what a rule may not do. None of its rules is run.</summary>
/// <param name="File">The file.</param>
/// <param name="Start">The offset in the file, in UTF-16 units.</param>
/// <param name="End">The offset behind it.</param>
/// <param name="Code">The code: <c>CS</c> and digits for what the compiler found, <c>RULE</c> and digits for what a rule may not do.</param>
/// <param name="Message">What is wrong, and what to write instead.</param>
public sealed record RuleDiagnostic(string File, int Start, int End, string Code, string Message);
