using System.Globalization;
using System.IO.Hashing;
using System.Text;
using System.Text.Json;
using Recipe.RulesProcess.Protocol;

namespace Recipe.RulesProcess;

/// <summary>
/// Answers that were given before, one file each. Rules are pure, so the same rules and the same facts always get the same answer and the
/// host need not be started. A file begins with the digest of the rest of it; it is written beside and moved into place.
/// </summary>
internal sealed class AnswerCache(RulesProcessOptions options)
{
    private const int Digest = 16;
    private const int MostFiles = 300;
    private readonly string? _folder = options.CacheFolder is { } folder ? Path.Combine(folder, "answers") : null;

    /// <summary>The key of a request to the host as it is installed now; null when nothing is kept.</summary>
    public string? Key(HostRequest request)
    {
        var host = new FileInfo(options.HostPath);
        if (_folder is null || !host.Exists)
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
        if (key is null)
        {
            return null;
        }

        try
        {
            var path = PathOf(key);
            if (!File.Exists(path))
            {
                return null;
            }

            var bytes = File.ReadAllBytes(path);
            return bytes.Length > Digest && XxHash128.Hash(bytes.AsSpan(Digest)).AsSpan().SequenceEqual(bytes.AsSpan(0, Digest))
                ? AnswerWire.Read(bytes.AsMemory(Digest)).Answer?.Run
                : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or JsonException or InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>Keeps an answer; one that cannot be kept is asked for again the next time.</summary>
    public void Keep(string? key, RuleRunAnswer answer)
    {
        if (key is null)
        {
            return;
        }

        try
        {
            var line = AnswerWire.Write(new HostAnswer(0, answer, [], []));
            Directory.CreateDirectory(_folder!);
            var part = PathOf(key) + "." + Guid.NewGuid().ToString("N") + ".part";
            File.WriteAllBytes(part, [.. XxHash128.Hash(line), .. line]);
            File.Move(part, PathOf(key), overwrite: true);
            foreach (var old in new DirectoryInfo(_folder!).GetFiles("*.answer").OrderByDescending(file => file.LastWriteTimeUtc).Skip(MostFiles))
            {
                old.Delete();
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // A cache that cannot be written costs time and nothing else.
        }
    }

    private string PathOf(string key) => Path.Combine(_folder!, key + ".answer");
}
