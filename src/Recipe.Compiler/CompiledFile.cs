using System.Collections.Immutable;
using Recipe.Checks;
using Recipe.Documents;
using Recipe.Planning;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>A file, compiled.</summary>
public sealed record CompiledFile
{
    /// <summary>Its tree.</summary>
    public required SyntaxTree Tree { get; init; }

    /// <summary>What it means.</summary>
    public required BoundFile Bound { get; init; }

    /// <summary>Its parts and variants, in order.</summary>
    public required ImmutableArray<CompiledPart> Parts { get; init; }

    /// <summary>The build records that stand in it, in order, each beside the recipe as it stands today.</summary>
    public ImmutableArray<LoggedBuild> Builds { get; init; } = [];

    /// <summary>How many build records stand in it.</summary>
    public int RecordCount => Bound.Model.Builds.Length;

    /// <summary>The plans of all of them, in order. To look at one part, ask that part.</summary>
    public ImmutableArray<Plan> Plans => [.. Parts.Select(part => part.Plan)];

    /// <summary>What the checks found in all of them together.</summary>
    public required CheckReport Report { get; init; }

    /// <summary>All findings of all stages, in the order of <see cref="Finding.Compare"/>, with what could not be understood of the texts that it uses; accepted ones are not among them.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Ten letters that change when what the text says, or a text it uses, changes; comments, layout and build records do not count.</summary>
    public string Revision => RevisionWhenAsked.Value;

    internal Lazy<string> RevisionWhenAsked { get; init; } = new("");

    /// <summary>The texts that it uses, directly or through others, in order of name.</summary>
    public required ImmutableArray<SyntaxTree> Used { get; init; }

    /// <summary>Every text whose change, coming or going would change this result: the file itself, what it uses, its settings, records beside it, shapes and rules.</summary>
    public ImmutableArray<TextUsed> RestsOn => RestsOnWhenAsked.Value;

    internal Lazy<ImmutableArray<TextUsed>> RestsOnWhenAsked { get; init; } = new(ImmutableArray<TextUsed>.Empty);

    /// <summary>How bad the folder's settings hold findings to be.</summary>
    internal ImmutableArray<Model.SeveritySetting> Settings { get; init; } = [];

    /// <summary>The checks that looked at it: all of the program, then the rules of the house in scope.</summary>
    internal IReadOnlyList<Check> Checks { get; init; } = CheckCatalogue.All;

    /// <summary>Rules of the house in scope, described as all findings are.</summary>
    public IEnumerable<FindingDescriptor> HouseRules => Checks.Where(check => check is RuleCheck or CodedRuleCheck).Select(check => check.Descriptor);

    /// <summary>What rules in C# say of each part, in the order of the parts; empty when there are none.</summary>
    internal ImmutableArray<PartExamination> CodedExaminations { get; init; } = [];

    /// <summary>Whether a written reason can settle a finding of this file: not what is found in the text itself, nor what no reason makes safe.</summary>
    public bool CanBeAccepted(FindingDescriptor finding) => Checks.FirstOrDefault(check => check.Descriptor.Code == finding.Code) is { CanBeAccepted: true };

    /// <summary>What could not be understood of its own text: errors of the grammar, of names and of units, in order.</summary>
    public ImmutableArray<Finding> NotUnderstood => [.. Findings.Where(finding => finding.Severity == Severity.Error && Tree.Findings.Concat(Bound.Findings).Contains(finding))];

    /// <summary>The text.</summary>
    public SourceText Source => Tree.Source;

    /// <summary>Names of the parts and variants, in order.</summary>
    public IEnumerable<string> PartNames => Parts.Select(part => part.Part.Name);

    /// <summary>The used file in which a part of this name stands, or null: such a part is not one of <see cref="Parts"/>.</summary>
    public SourceText? UsedFileOf(string part) => Bound.Model.UsedParts.GetValueOrDefault(part)?.Where.Source;

    /// <summary>Findings that a waiver in the recipe accepts.</summary>
    public ImmutableArray<Finding> Accepted => Report.Accepted;

    /// <summary>Checks that could not speak.</summary>
    public ImmutableArray<NotChecked> NotChecked => Report.NotChecked;

    /// <summary>How many rules of the house the file declares or names, and how many of their examples were run.</summary>
    public (int Rules, int Examples) RulesTried { get; init; }

    /// <summary>Whether any finding is an error, of its own text or of one that it uses.</summary>
    public bool HasErrors => Findings.Any(finding => finding.Severity == Severity.Error);

    /// <summary>The findings of several files for programs, in the schema <c>recipe/findings/1</c>.</summary>
    public static string FindingsAsJson(IReadOnlyCollection<CompiledFile> files) => FindingsJson.Write(All(files), Unspoken(files));

    /// <summary>The findings of several files for systems that review code: SARIF 2.1.0.</summary>
    /// <param name="files">The files.</param>
    /// <param name="version">Version of the program.</param>
    public static string FindingsAsSarif(IReadOnlyCollection<CompiledFile> files, string version) => SarifWriter.Write(All(files), Unspoken(files), version);

    /// <summary>The findings of several files as results of tests, for build servers.</summary>
    public static string FindingsAsJUnit(IReadOnlyCollection<CompiledFile> files) =>
        JUnitWriter.Write([.. files.Select(file => (file.Source.Name, (IReadOnlyCollection<Finding>)file.Findings))]);

    /// <summary>The findings of several files as remarks that a build server shows beside the code.</summary>
    public static string FindingsAsAnnotations(IReadOnlyCollection<CompiledFile> files) => AnnotationWriter.Write([.. Each(files.SelectMany(file => file.Findings))]);

    // What is wrong in a text that several files use is one thing to mend.
    private static Finding[] All(IEnumerable<CompiledFile> files) => [.. Each(files.SelectMany(file => file.Findings.Concat(file.Accepted)))];

    /// <summary>
    /// Each finding once. A variant in another file earns what its part earns, in the same place and the same words, and a text that cannot be read is said
    /// with every file that uses it.
    /// </summary>
    public static IEnumerable<Finding> Each(IEnumerable<Finding> findings) =>
        findings.DistinctBy(finding => (finding.Descriptor, finding.Severity, $"{finding.Where}", finding.Message, finding.AcceptedBecause));

    private static NotChecked[] Unspoken(IEnumerable<CompiledFile> files) => [.. files.SelectMany(file => file.NotChecked)];
}
