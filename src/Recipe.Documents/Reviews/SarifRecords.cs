using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Recipe.Documents.Reviews;

// The members of SARIF 2.1.0 (OASIS standard, section numbers beside them) that are used here, under the standard's own names.

/// <summary>3.13 sarifLog.</summary>
internal sealed record SarifLog([property: JsonPropertyName("$schema")] string Schema, string Version, ImmutableArray<SarifRun> Runs);

/// <summary>3.14 run.</summary>
internal sealed record SarifRun(SarifTool Tool, string ColumnKind, ImmutableArray<SarifInvocation> Invocations, ImmutableArray<SarifResult> Results);

/// <summary>3.18 tool.</summary>
internal sealed record SarifTool(SarifDriver Driver);

/// <summary>3.19 toolComponent.</summary>
internal sealed record SarifDriver(string Name, string SemanticVersion, ImmutableArray<SarifRule> Rules);

/// <summary>3.49 reportingDescriptor.</summary>
internal sealed record SarifRule(string Id, string Name, SarifText ShortDescription, SarifText FullDescription, SarifText Help, SarifConfiguration DefaultConfiguration);

/// <summary>3.50 reportingConfiguration.</summary>
internal sealed record SarifConfiguration(string Level);

/// <summary>3.11 message, 3.12 multiformatMessageString.</summary>
internal sealed record SarifText(string Text);

/// <summary>3.20 invocation.</summary>
internal sealed record SarifInvocation(bool ExecutionSuccessful, ImmutableArray<SarifNotification> ToolExecutionNotifications);

/// <summary>3.58 notification.</summary>
internal sealed record SarifNotification(SarifText Message, string Level, SarifRuleReference AssociatedRule, ImmutableArray<SarifLocation> Locations);

/// <summary>3.52 reportingDescriptorReference.</summary>
internal sealed record SarifRuleReference(string Id, int Index);

/// <summary>3.27 result.</summary>
internal sealed record SarifResult(
    string RuleId,
    int RuleIndex,
    string Level,
    SarifText Message,
    ImmutableArray<SarifLocation> Locations,
    ImmutableArray<SarifLocation> RelatedLocations,
    ImmutableDictionary<string, string> PartialFingerprints,
    ImmutableArray<SarifFix> Fixes,
    ImmutableArray<SarifSuppression>? Suppressions);

/// <summary>3.28 location.</summary>
internal sealed record SarifLocation(SarifPhysicalLocation PhysicalLocation, int? Id = null, SarifText? Message = null);

/// <summary>3.29 physicalLocation.</summary>
internal sealed record SarifPhysicalLocation(SarifArtifact ArtifactLocation, SarifRegion Region);

/// <summary>3.4 artifactLocation.</summary>
internal sealed record SarifArtifact(string Uri);

/// <summary>3.30 region: lines and columns count from 1, the end column is just past the last character.</summary>
internal sealed record SarifRegion(int StartLine, int StartColumn, int EndLine, int EndColumn, int CharOffset, int CharLength);

/// <summary>3.55 fix.</summary>
internal sealed record SarifFix(SarifText Description, ImmutableArray<SarifArtifactChange> ArtifactChanges);

/// <summary>3.56 artifactChange.</summary>
internal sealed record SarifArtifactChange(SarifArtifact ArtifactLocation, ImmutableArray<SarifReplacement> Replacements);

/// <summary>3.57 replacement.</summary>
internal sealed record SarifReplacement(SarifRegion DeletedRegion, SarifText InsertedContent);

/// <summary>3.35 suppression.</summary>
internal sealed record SarifSuppression(string Kind, string Justification);

/// <summary>The shapes, generated at build time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(SarifLog))]
internal sealed partial class SarifShapes : JsonSerializerContext;
