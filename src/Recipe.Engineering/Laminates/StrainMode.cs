namespace Recipe.Engineering;

/// <summary>The way in which a layer reaches a strain limit, in its own axes.</summary>
public enum StrainMode
{
    /// <summary>Stretched along the fibre.</summary>
    StretchAlong,

    /// <summary>Pressed along the fibre.</summary>
    PressAlong,

    /// <summary>Stretched across the fibre.</summary>
    StretchAcross,

    /// <summary>Pressed across the fibre.</summary>
    PressAcross,

    /// <summary>Sheared in the plane.</summary>
    Shear,
}
