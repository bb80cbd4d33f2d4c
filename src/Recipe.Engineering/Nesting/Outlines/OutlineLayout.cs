namespace Recipe.Engineering;

/// <summary>One way to lay the pieces out.</summary>
internal sealed class OutlineLayout
{
    internal OutlineLayout(int count)
    {
        (X, Y, Pose, Stock) = (new double[count], new double[count], new int[count], new int[count]);
        Array.Fill(Stock, -1);
    }

    internal double[] X { get; }

    internal double[] Y { get; }

    /// <summary>Which of the allowed positions.</summary>
    internal int[] Pose { get; }

    /// <summary>Place of the roll in the order in which they are tried; -1 for a piece that lies nowhere.</summary>
    internal int[] Stock { get; }

    internal void Place(int item, int pose, int stock, double x, double y)
    {
        (Pose[item], Stock[item], X[item], Y[item]) = (pose, stock, x, y);
    }

    internal OutlineLayout Copy()
    {
        var copy = new OutlineLayout(X.Length);
        X.CopyTo(copy.X, 0);
        Y.CopyTo(copy.Y, 0);
        Pose.CopyTo(copy.Pose, 0);
        Stock.CopyTo(copy.Stock, 0);
        return copy;
    }
}
