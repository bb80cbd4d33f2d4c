using Recipe.Model;
using Recipe.Semantics.Reading;
using UnitsNet;

namespace Recipe.Semantics.Binding;

/// <summary>Takes the sides out of a size such as <c>60 mm x 40 mm</c>.</summary>
internal static class Sizes
{
    /// <summary>One side as a figure, or null when the line or its size is not there.</summary>
    public static Figure<Length>? Side(Line? line, string name, int index) =>
        line?.Reading.Find(name) is { Payload: Side[] sides } && index < sides.Length
            ? new Figure<Length>(Si.Length(sides[index].Si), line.Basis, sides[index].Written, sides[index].Where, line.Source?.Text)
            : null;
}
