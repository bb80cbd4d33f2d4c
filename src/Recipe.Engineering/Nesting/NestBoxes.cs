namespace Recipe.Engineering;

/// <summary>
/// The pieces while they are laid out, one entry a piece, m. Each is larger by the gap both ways, and so is the roll: then pieces that
/// touch lie the gap apart.
/// </summary>
internal sealed class NestBoxes
{
    internal NestBoxes(double[] along, double[] across, bool[] canTurn, int[] piece, double width)
    {
        (Along, Across, CanTurn, Piece, Width) = (along, across, canTurn, piece, width);
    }

    internal double[] Along { get; }

    internal double[] Across { get; }

    /// <summary>Whether it may lie a quarter turn round, and fits the roll then.</summary>
    internal bool[] CanTurn { get; }

    /// <summary>Index of the size.</summary>
    internal int[] Piece { get; }

    internal double Width { get; }

    internal int Count => Along.Length;

    /// <summary>Whether it fits the roll as it was given.</summary>
    internal bool FitsStraight(int box) => Across[box] <= Width;

    internal double AlongOf(int box, bool turned) => turned ? Across[box] : Along[box];

    internal double AcrossOf(int box, bool turned) => turned ? Along[box] : Across[box];
}
