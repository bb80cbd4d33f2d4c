using System.Globalization;
using System.IO.Hashing;
using System.Text;
using System.Text.Json;
using Recipe.RulesProcess.Protocol;

namespace Recipe.RulesProcess;

/// <summary>
/// Answers that were given before, one file each. Rules are pure, so the same rules and the same facts always get the same answer and the
/// host need not be started.
/// </summary>
internal sealed class AnswerCache(RulesProcessOptions options)
{
    private const int MostFiles = 300;
    private readonly KeptFiles? _kept = options.CacheFolder is { } folder ? new KeptFiles(Path.Combine(folder, "answers"), ".answer", MostFiles) : null;

    /// <summary>The key of a request to the host as it is installed now; null when nothing is kept.</summary>
    public string? Key(HostRequest request)
    {
        var host = new FileInfo(options.HostPath);
        if (_kept is null || !host.Exists)
        {
            return null;
        }

        var hash = new XxHash128();
        hash.Append(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{Wire.Version};{host.FullName};{host.Length};{host.LastWriteTimeUtc.Ticks};{typeof(AnswerCache).Module.ModuleVersionId}\n")));
        hash.Append(RequestWire.Body(request));
        return Convert.ToHexStringLower(hash.GetCurrentHash());
    }

    /// <summary>The answer of a key, or null.</summary>
    public RuleRunAnswer? Find(string? key)
    {
        try
        {
            return key is not null && _kept?.Find(key) is { } bytes ? AnswerWire.Read(bytes).Answer?.Run : null;
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>Keeps an answer.</summary>
    public void Keep(string? key, RuleRunAnswer answer)
    {
        if (key is not null)
        {
            _kept?.Keep(key, AnswerWire.Write(new HostAnswer(0, answer, [], [])));
        }
    }
}
