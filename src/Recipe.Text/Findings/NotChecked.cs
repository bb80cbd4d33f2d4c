namespace Recipe.Text.Findings;

/// <summary>A check that could not speak because an input it names is missing. It neither passed nor fired.</summary>
/// <param name="Descriptor">The check.</param>
/// <param name="Where">The part or block it would have looked at.</param>
/// <param name="Missing">What is missing, in words: "no pot life given for my-epoxy".</param>
public sealed record NotChecked(FindingDescriptor Descriptor, SourceSpan Where, string Missing);
