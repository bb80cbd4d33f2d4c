namespace Recipe.Architecture.Tests;

/// <summary>The project files and the compiled assemblies keep to the stair.</summary>
public sealed class StairTests
{
    public static TheoryData<string> Projects => [.. ProductProject.All.Select(project => project.Name)];

    [Fact]
    public void The_first_projects_of_the_stair_are_found()
    {
        string[] expected = ["Recipe.Text", "Recipe.Syntax", "Recipe.Model", "Recipe.Engineering", "Recipe.Cli"];
        Assert.Empty(expected.Except(ProductProject.All.Select(project => project.Name)));
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_refers_only_to_what_it_may_know(string name)
    {
        var project = Find(name);
        Assert.Empty(StairLaw.ForbiddenReferences(project, Stair.Of(name)));
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_names_only_its_own_packages(string name)
    {
        var project = Find(name);
        Assert.Empty(StairLaw.ForbiddenPackages(project, Stair.Of(name)));
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void The_compiled_assembly_uses_only_what_the_project_may_know(string name)
    {
        // References flow through: a project can use a type that its file does not name. The assembly tells.
        var project = Find(name);
        var step = Stair.Of(name);
        var allowed = step.Knows.Select(AssemblyNameOf).Concat(step.Packages).ToHashSet();
        var used = AssemblyScan.Open(project.AssemblyPath).ReferencedAssemblies.Where(assembly => !StairLaw.IsFramework(assembly));
        Assert.Empty(used.Except(allowed));
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void Only_a_door_touches_the_world(string name) =>
        Assert.Equal(Stair.Of(name).TouchesTheWorld, Find(name).TouchesTheWorld);

    [Fact]
    public void The_law_itself_has_no_cycle_and_names_only_steps()
    {
        Assert.All(Stair.Steps.SelectMany(step => step.Knows), known => Stair.Of(known));
        Assert.Empty(StairLaw.Cycle(Stair.Steps.ToDictionary(step => step.Name, step => step.Knows.ToList())));
    }

    [Fact]
    public void The_projects_have_no_cycle() =>
        Assert.Empty(StairLaw.Cycle(ProductProject.All.ToDictionary(project => project.Name, project => project.References.ToList())));

    [Fact]
    public void Every_project_is_in_the_solution()
    {
        var solution = Repository.Read("Recipe.sln").Replace('\\', '/');
        var projects = Repository.Files().Where(file => file.EndsWith(".csproj", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(projects);
        Assert.All(projects, project => Assert.Contains($"\"{project}\"", solution, StringComparison.Ordinal));
    }

    [Fact]
    public void An_upward_edge_is_caught()
    {
        const string xml = """
            <Project Sdk="Microsoft.NET.Sdk">
              <ItemGroup>
                <ProjectReference Include="..\Recipe.Syntax\Recipe.Syntax.csproj" />
                <PackageReference Include="Pidgin" />
                <PackageReference Include="UnitsNet" />
              </ItemGroup>
            </Project>
            """;
        var offender = ProductProject.Parse("Recipe.Engineering", xml);
        Assert.Equal(["Recipe.Syntax"], StairLaw.ForbiddenReferences(offender, Stair.Of("Recipe.Engineering")));
        Assert.Equal(["Pidgin"], StairLaw.ForbiddenPackages(offender, Stair.Of("Recipe.Engineering")));
    }

    [Fact]
    public void A_cycle_is_caught()
    {
        var graph = new Dictionary<string, List<string>> { ["a"] = ["b"], ["b"] = ["c"], ["c"] = ["b"], ["d"] = [] };
        Assert.Equal(["a", "b", "c"], StairLaw.Cycle(graph).Order());
    }

    [Fact]
    public void A_project_without_a_step_is_caught() =>
        Assert.Throws<InvalidOperationException>(() => Stair.Of("Recipe.Elsewhere"));

    private static ProductProject Find(string name) => ProductProject.All.Single(project => project.Name == name);

    private static string AssemblyNameOf(string project) =>
        ProductProject.All.SingleOrDefault(candidate => candidate.Name == project)?.AssemblyName ?? project;
}
