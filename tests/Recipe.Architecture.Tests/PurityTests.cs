using System.Reflection;

namespace Recipe.Architecture.Tests;

/// <summary>
/// The pure layers know no file, clock, console or culture. The compiler refuses such a name (RS0030); these tests read the
/// compiled assemblies as well, so that neither a suppression nor a lost setting lets one through.
/// </summary>
public sealed class PurityTests
{
    public static TheoryData<string> PureProjects =>
        [.. ProductProject.All.Where(project => !Stair.Of(project.Name).TouchesTheWorld).Select(project => project.Name)];

    public static TheoryData<string> Bans => [.. BannedSymbols.All.Keys];

    [Theory]
    [MemberData(nameof(PureProjects))]
    public void A_pure_layer_uses_no_banned_name(string name)
    {
        var scan = Scan(name);
        Assert.Empty(scan.Banned(BannedSymbols.All));
        Assert.Empty(scan.UnitsNetParsing());
    }

    [Theory]
    [InlineData("M:System.IO.File.Exists(System.String)")]
    [InlineData("M:System.Console.get_Error")]
    [InlineData("M:System.DateTime.get_Now")]
    [InlineData("M:System.Globalization.CultureInfo.get_CurrentCulture")]
    [InlineData("M:System.Environment.get_ProcessorCount")]
    [InlineData("M:System.Random.#ctor")]
    [InlineData("M:System.Threading.Thread.Sleep(System.Int32)")]
    public void The_scan_sees_an_offender(string id) =>
        Assert.Contains(ScanOfThisAssembly().Banned(BannedSymbols.All), use => use.StartsWith(id + ": ", StringComparison.Ordinal));

    [Fact]
    public void The_scan_sees_the_parser_that_is_never_used() =>
        Assert.Contains("M:UnitsNet.Mass.Parse(System.String,System.IFormatProvider)", ScanOfThisAssembly().UnitsNetParsing());

    [Theory]
    [InlineData("M:System.Random.#ctor(System.Int32)")]
    [InlineData("M:System.Environment.get_CurrentManagedThreadId")]
    public void The_scan_lets_an_innocent_use_pass(string id)
    {
        var scan = ScanOfThisAssembly();
        Assert.Contains(scan.Members, member => member.Id == id);
        Assert.DoesNotContain(scan.Banned(BannedSymbols.All), use => use.StartsWith(id + ": ", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Bans))]
    public void A_banned_name_exists_and_has_a_reason(string id)
    {
        // A misspelt line would ban nothing and nobody would notice.
        Assert.NotEmpty(BannedSymbols.All[id]);
        var path = id[2..].Split('(')[0];
        var type = id[0] == 'T' ? path : path[..path.LastIndexOf('.')];
        var found = Known(type);
        Assert.NotNull(found);
        if (id[0] != 'T')
        {
            Assert.Contains(id, IdsOf(found));
        }
    }

    private static AssemblyScan Scan(string project) =>
        AssemblyScan.Open(ProductProject.All.Single(candidate => candidate.Name == project).AssemblyPath);

    private static AssemblyScan ScanOfThisAssembly() => AssemblyScan.Open(typeof(PurityTests).Assembly.Location);

    private static Type? Known(string name) =>
        new[]
        {
            typeof(object), typeof(Console), typeof(FileSystemWatcher), typeof(DriveInfo), typeof(System.Diagnostics.Process),
            typeof(HttpClient), typeof(System.Net.Sockets.Socket), typeof(UnitsNet.Mass),
        }
        .Select(neighbour => neighbour.Assembly.GetType(name))
        .FirstOrDefault(type => type is not null);

    private static IEnumerable<string> IdsOf(Type type)
    {
        const BindingFlags exposed = BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance;
        return type.GetProperties(exposed).Select(property => $"P:{type.FullName}.{property.Name}")
            .Concat(type.GetMethods(exposed).Select(method => $"M:{type.FullName}.{method.Name}{Parameters(method)}"))
            .Concat(type.GetConstructors(exposed).Select(constructor => $"M:{type.FullName}.#ctor{Parameters(constructor)}"));
    }

    private static string Parameters(MethodBase method)
    {
        var parameters = method.GetParameters();
        return parameters.Length == 0 ? "" : $"({string.Join(',', parameters.Select(parameter => parameter.ParameterType.FullName))})";
    }
}
