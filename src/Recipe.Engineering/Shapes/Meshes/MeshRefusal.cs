namespace Recipe.Engineering;

/// <summary>Why a file gives no mesh, with what is needed to say it.</summary>
/// <param name="Reason">The kind of reason.</param>
/// <param name="Word">The word, element or part of the file that is meant, where there is one.</param>
/// <param name="Found">What was found: a count, or metres for <see cref="MeshRefusalReason.TooLarge"/> and <see cref="MeshRefusalReason.TooSmall"/>.</param>
/// <param name="Limit">What was wanted or allowed, in the same unit.</param>
/// <param name="Line">Line of the file where it stands, from 1, for forms in words.</param>
/// <param name="Offset">Byte of the file where it stands, from 0, for forms in bytes.</param>
public sealed record MeshRefusal(
    MeshRefusalReason Reason,
    string? Word = null,
    double? Found = null,
    double? Limit = null,
    int? Line = null,
    long? Offset = null);
