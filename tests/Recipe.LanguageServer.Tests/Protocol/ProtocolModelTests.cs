using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Recipe.LanguageServer.Protocol;
using Recipe.TestKit;

namespace Recipe.LanguageServer.Tests.Protocol;

/// <summary>
/// Our records against the protocol's own declarations (<c>protocol-3.17.tsv</c>): every member has a name that the protocol knows; what
/// we demand of a client, the protocol demands too; what the protocol demands of us, we always write.
/// </summary>
public sealed class ProtocolModelTests
{
    // Structures that are ours alone ("data"), and records that stand for several structures or for one that has no name.
    private static readonly string[] OurOwn = ["CompletionData", "FindingData"];

    private static readonly Dictionary<string, string[]> OtherNames = new()
    {
        ["ClientCodeActionLiteralOptions"] = ["CodeActionClientCapabilities.codeActionLiteralSupport"],
        ["ClientCompletionItemOptions"] = ["CompletionClientCapabilities.completionItem"],
        ["DiagnosticWorkspaceClientCapabilities"] = ["WorkspaceClientCapabilities.diagnostics"],
        ["DocumentParams"] = ["DocumentSymbolParams", "CodeLensParams", "FoldingRangeParams", "DocumentLinkParams", "SemanticTokensParams"],
        ["DocumentRangeParams"] = ["SemanticTokensRangeParams"],
        ["PrepareRenamePlaceholder"] = ["PrepareRenameResult"],
        ["SemanticTokensDeltaResult"] = ["SemanticTokens", "SemanticTokensDelta"],
        ["SemanticTokensFullDelta"] = ["SemanticTokensOptions.full"],
        ["SemanticTokensWorkspaceClientCapabilities"] = ["WorkspaceClientCapabilities.semanticTokens"],
        ["ServerInfo"] = ["InitializeResult.serverInfo"],
        ["TextDocumentPositionParams"] =
            ["TextDocumentPositionParams", "CompletionParams", "HoverParams", "SignatureHelpParams", "DefinitionParams", "DocumentHighlightParams", "PrepareRenameParams"],
        ["WorkspaceFoldersServerCapabilities"] = ["ServerCapabilities.workspace.workspaceFolders"],
        ["WorkspaceOptions"] = ["ServerCapabilities.workspace"],
    };

    // Read by us and never written.
    private static bool IsFromTheClient(Type type) =>
        type.Name.EndsWith("Params", StringComparison.Ordinal) && type.Name is not ("ConfigurationParams" or "RegistrationParams" or "LogMessageParams" or "PublishDiagnosticsParams" or "ShowDocumentParams" or "ShowMessageParams")
        || type.Name.EndsWith("ClientCapabilities", StringComparison.Ordinal)
        || type.Name is "ClientCapabilities" or "ClientCodeActionLiteralOptions" or "ClientCompletionItemOptions" or "TextDocumentItem" or "VersionedTextDocumentIdentifier"
            or "TextDocumentIdentifier" or "TextDocumentContentChangeEvent" or "ReferenceContext" or "CodeActionContext" or "FileEvent" or "WorkspaceFolder"
            or "WorkspaceFoldersChangeEvent" or "PreviousResultId";

    private static readonly Dictionary<string, Dictionary<string, bool>> Model = File
        .ReadLines(Repository.PathOf("tests/Recipe.LanguageServer.Tests/Protocol/protocol-3.17.tsv"))
        .Where(line => !line.StartsWith('#'))
        .Select(line => line.Split('\t'))
        .GroupBy(cells => cells[0])
        .ToDictionary(group => group.Key, group => group.ToDictionary(cells => cells[1], cells => cells[2] == "required"));

    public static TheoryData<string> Records() => [.. RecordTypes().Select(type => type.Name)];

    [Fact]
    public void The_records_are_found() => Assert.InRange(RecordTypes().Count(), 80, 200);

    [Theory]
    [MemberData(nameof(Records))]
    public void A_record_is_as_the_protocol_has_it(string name)
    {
        if (OurOwn.Contains(name))
        {
            Assert.DoesNotContain(name, Model.Keys);
            return;
        }

        var type = RecordTypes().Single(t => t.Name == name);
        foreach (var structure in OtherNames.GetValueOrDefault(name) ?? [name])
        {
            Assert.Contains(structure, Model.Keys);
            Compare(type, structure);
        }
    }

    private static void Compare(Type type, string structure)
    {
        var theirs = Model[structure];
        var ours = ProtocolJson.Default.GetTypeInfo(type)!.Properties.ToDictionary(p => p.Name);
        var several = OtherNames.GetValueOrDefault(type.Name) is { Length: > 1 } && type == typeof(SemanticTokensDeltaResult);
        foreach (var (member, info) in ours)
        {
            if (!several)
            {
                Assert.True(theirs.ContainsKey(member), $"{structure} has no member {member}");
            }

            if (IsFromTheClient(type))
            {
                Assert.True(!info.IsRequired || theirs[member], $"{structure}.{member} may be missing, and we demand it");
            }
        }

        if (!IsFromTheClient(type) && !several)
        {
            foreach (var (member, isRequired) in theirs.Where(m => m.Value))
            {
                Assert.True(ours.TryGetValue(member, out var info), $"{structure}.{member} has to be there");
                Assert.True(IsAlwaysWritten(info), $"{structure}.{member} has to be there, and we may leave it out");
            }
        }
    }

    private static bool IsAlwaysWritten(JsonPropertyInfo property) =>
        !property.IsGetNullable
        || property.AttributeProvider?.GetCustomAttributes(typeof(JsonIgnoreAttribute), inherit: true).OfType<JsonIgnoreAttribute>().Any(a => a.Condition == JsonIgnoreCondition.Never) == true;

    private static IEnumerable<Type> RecordTypes() => typeof(ProtocolJson).Assembly.GetTypes()
        .Where(type => type.Namespace == typeof(ProtocolJson).Namespace && type.IsClass && !type.IsNested && type.GetMethod("<Clone>$") is not null);
}
