namespace Recipe.Model;

/// <summary>A figure that parts are compared and explored by, and that an <c>explore</c> may limit or want. One number for a part, in SI.</summary>
public enum PartFigure
{
    /// <summary>Mass of the trimmed part, kg.</summary>
    Mass,

    /// <summary>Thickness of the full-cover stack, m.</summary>
    Thickness,

    /// <summary>Resin as a share of fibre and resin by weight, 0 to 1.</summary>
    ResinContent,

    /// <summary>Bending stiffness of a strip along the part for each unit of its width, N m2/m.</summary>
    BendingAlong,

    /// <summary>Bending stiffness of a strip across the part for each unit of its width, N m2/m.</summary>
    BendingAcross,

    /// <summary>Modulus for a pull along the part, Pa.</summary>
    ModulusAlong,

    /// <summary>Modulus for a pull across the part, Pa.</summary>
    ModulusAcross,

    /// <summary>How many times over the stack bears the stated load that comes closest to a strain limit.</summary>
    TimesOver,

    /// <summary>Resin to mix, all pots, kg.</summary>
    Resin,

    /// <summary>Number of pots.</summary>
    Pots,

    /// <summary>Time from the first mix to full vacuum, s.</summary>
    ToVacuum,

    /// <summary>What the resin on the part allows, less the time to full vacuum, s; negative when the job is too long.</summary>
    ClockLeft,

    /// <summary>Time that an infusion takes to fill, s.</summary>
    Fill,

    /// <summary>Time from the start of the cure to its end, s.</summary>
    CureEnd,

    /// <summary>The hottest it gets in the cure, K.</summary>
    Hottest,

    /// <summary>Glass transition at the end of the cure, K.</summary>
    SoftensAt,

    /// <summary>What the materials of all parts cost, in the shop's currency; unknown while a price is missing.</summary>
    Cost,
}
