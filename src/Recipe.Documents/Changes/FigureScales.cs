namespace Recipe.Documents.Changes;

/// <summary>Units of the axes of pictures: those in which papers say the same figure.</summary>
internal static class FigureScales
{
    private const double Ounce = 0.45359237 / 16;
    private const double Inch = 0.0254;
    private const double Msi = 6.894757293168e9;

    public static AxisUnit Mass(QuantityText text, double most) =>
        text.IsUs ? (most < 16 * Ounce ? AxisUnit.Of("oz", Ounce) : AxisUnit.Of("lb", 16 * Ounce)) : most < 1 ? AxisUnit.Of("g", 0.001) : AxisUnit.Of("kg", 1);

    public static AxisUnit Thickness(QuantityText text, double most) => text.IsUs ? AxisUnit.Of("in", Inch) : AxisUnit.Of("mm", 0.001);

    public static AxisUnit Share(QuantityText text, double most) => AxisUnit.Of("%", 0.01);

    public static AxisUnit Bending(QuantityText text, double most) => AxisUnit.Of("N·m²/m", 1);

    public static AxisUnit Modulus(QuantityText text, double most) => text.IsUs ? AxisUnit.Of("Msi", Msi) : AxisUnit.Of("GPa", 1e9);

    public static AxisUnit Minutes(QuantityText text, double most) => AxisUnit.Of("min", 60);

    public static AxisUnit Hours(QuantityText text, double most) => AxisUnit.Of("h", 3600);

    public static AxisUnit Temperature(QuantityText text, double most) =>
        text.IsUs ? new AxisUnit("°F", k => (k * 9 / 5) - 459.67) : new AxisUnit("°C", k => k - 273.15);

    public static AxisUnit Money(QuantityText text, double most) => AxisUnit.Of(text.Currency, 1);

    public static AxisUnit Times(QuantityText text, double most) => AxisUnit.Of("times", 1);

    public static AxisUnit Plain(QuantityText text, double most) => AxisUnit.Of("", 1);
}
