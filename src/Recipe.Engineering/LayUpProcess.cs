namespace Recipe.Engineering;

/// <summary>How the resin gets into the cloth and out again, which decides how much of it stays.</summary>
public enum LayUpProcess
{
    /// <summary>By brush and roller, no bag.</summary>
    Hand,

    /// <summary>Wet lay-up pressed under a vacuum bag.</summary>
    Bagged,

    /// <summary>Dry cloth, resin drawn in under vacuum.</summary>
    Infused,

    /// <summary>Cloth that came with its resin.</summary>
    Prepreg,
}
