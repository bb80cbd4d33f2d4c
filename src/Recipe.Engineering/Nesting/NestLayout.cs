namespace Recipe.Engineering;

/// <summary>One way to lay the boxes out.</summary>
internal sealed class NestLayout
{
    internal NestLayout(int count)
    {
        (X, Y, Turned) = (new double[count], new double[count], new bool[count]);
    }

    /// <summary>From the selvedge, m.</summary>
    internal double[] X { get; }

    /// <summary>From the cut end, m.</summary>
    internal double[] Y { get; }

    internal bool[] Turned { get; }

    /// <summary>Length used, m, the gap behind the last piece included.</summary>
    internal double Length { get; private set; }

    internal void Place(NestBoxes boxes, int box, double x, double y, bool turned)
    {
        (X[box], Y[box], Turned[box]) = (x, y, turned);
        Length = Math.Max(Length, y + boxes.AlongOf(box, turned));
    }
}
