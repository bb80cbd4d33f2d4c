using System.Collections.Immutable;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>All findings about meaning: units and values (RC11xx), names and structure (RC12xx).</summary>
public static class SemanticFindings
{
    /// <summary>Their descriptors, by code.</summary>
    public static ImmutableArray<FindingDescriptor> All { get; } =
    [
        BareNumber.Descriptor,
        WrongKindOfUnit.Descriptor,
        UnknownUnit.Descriptor,
        ClothInOunces.Descriptor,
        VacuumWithoutConvention.Descriptor,
        PercentOfWhat.Descriptor,
        RatioWithoutBasis.Descriptor,
        DimensionClash.Descriptor,
        OutOfRange.Descriptor,
        DatesBackwards.Descriptor,
        NotUnderstood.Descriptor,
        MissingValue.Descriptor,
        ExtraValue.Descriptor,
        ValueCycle.Descriptor,
        MixedFraction.Descriptor,
        UnknownWord.Descriptor,
        RegionalWord.Descriptor,
        UnknownName.Descriptor,
        DuplicateName.Descriptor,
        WrongKindOfName.Descriptor,
        SaidTwice.Descriptor,
        ImportMissing.Descriptor,
        ImportCycle.Descriptor,
        VariantCycle.Descriptor,
        CopyCycle.Descriptor,
        UnknownPly.Descriptor,
        WaiverWithoutReason.Descriptor,
        TwoDefaults.Descriptor,
        UnknownLanguage.Descriptor,
        TooManyCandidates.Descriptor,
    ];
}
