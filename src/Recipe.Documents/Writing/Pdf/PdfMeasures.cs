namespace Recipe.Documents.Writing.Pdf;

/// <summary>
/// Sizes of type in points and of room in millimetres, those of <see cref="HtmlStyle"/>. When a station is a little too high for its
/// page, <see cref="Air"/> goes from 1 towards 0: the room between things shrinks, never the type, nor a space to write in.
/// </summary>
/// <param name="IsBench">Whether it is read at the bench.</param>
/// <param name="Air">How much of the room between things is left, 0 to 1.</param>
internal sealed record PdfMeasures(bool IsBench, double Air)
{
    public const double BlankHigh = 12;
    public const double BlankWide = 40;
    public const double Ring = 36;

    public double Body => IsBench ? 14 : 10.5;

    public double Title => IsBench ? 16 : 20;

    public double Station => IsBench ? 24 : 14;

    public double Heading => IsBench ? 15 : 12;

    public double Note => IsBench ? 11 : 9;

    public double Fine => IsBench ? 11 : 9;

    public const double FineList = 9;

    public double Big => IsBench ? 28 : 20;

    public const double InBlank = 11;

    public double Label => IsBench ? 11 : 10.5;

    /// <summary>Side of a box to tick: for a marker in a glove, or for a pen at the desk.</summary>
    public double TickSide => IsBench ? 10 : 6;

    public double LabelWide => IsBench ? 24 : 38;

    /// <summary>Distance of base lines for each size of type.</summary>
    public double Leading => IsBench ? 1.1 + (0.1 * Air) : 1.2;

    /// <summary>Least height of a row of steps with a space to write in or without.</summary>
    public double StepRow(bool isWritten) => isWritten ? BlankHigh + (0.5 * Air) : 10 + Air;

    /// <summary>Room between things.</summary>
    public double Gap(double mm) => mm * Air;
}
