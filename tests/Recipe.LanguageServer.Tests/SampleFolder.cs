using Recipe.TestKit;

namespace Recipe.LanguageServer.Tests;

/// <summary>A folder of its own with some of the samples in it.</summary>
internal sealed class SampleFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("recipe lsp ");

    public SampleFolder(params string[] samples)
    {
        foreach (var sample in samples)
        {
            File.Copy(Repository.PathOf($"samples/{sample}"), PathOf(sample));
        }
    }

    public string Folder => _folder.FullName.Replace('\\', '/');

    public string Folders => $$"""[{ "uri": "{{new Uri(Folder).AbsoluteUri}}", "name": "bench" }]""";

    public string PathOf(string name) => Path.Combine(_folder.FullName, name);

    public string UriOf(string name) => new Uri(PathOf(name)).AbsoluteUri;

    public string Read(string name) => File.ReadAllText(PathOf(name));

    public void Write(string name, string text) => File.WriteAllText(PathOf(name), text);

    public void Dispose() => _folder.Delete(recursive: true);
}
