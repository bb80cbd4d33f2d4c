namespace Recipe.RulesHost.Tests;

/// <summary>A folder that goes with the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("recipe-rules-").FullName;

    public string Of(params string[] names) => System.IO.Path.Combine([Path, .. names]);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
