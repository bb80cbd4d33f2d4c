using System.IO.Hashing;

namespace Recipe.RulesProcess;

/// <summary>
/// Files of a cache by their keys. Each begins with the digest of the rest of it, so that one that was cut or changed counts as absent; it is
/// written beside and moved into place. The digest finds accidents, not somebody who means harm: who can write here can do worse.
/// </summary>
/// <param name="folder">Where they lie; made when it is not there.</param>
/// <param name="ending">How their names end.</param>
/// <param name="most">How many are kept; the oldest go.</param>
internal sealed class KeptFiles(string folder, string ending, int most)
{
    private const int Digest = 16;

    /// <summary>A key for everything that something depends on.</summary>
    public static string Key(ReadOnlySpan<byte> grounds) => Convert.ToHexStringLower(XxHash128.Hash(grounds));

    /// <summary>What is kept under a key, or null.</summary>
    public ReadOnlyMemory<byte>? Find(string key)
    {
        try
        {
            var path = PathOf(key);
            if (!File.Exists(path))
            {
                return null;
            }

            var bytes = File.ReadAllBytes(path);
            return bytes.Length > Digest && XxHash128.Hash(bytes.AsSpan(Digest)).AsSpan().SequenceEqual(bytes.AsSpan(0, Digest)) ? bytes.AsMemory(Digest) : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Keeps something. What cannot be kept costs time the next time, and nothing else.</summary>
    public void Keep(string key, ReadOnlySpan<byte> content)
    {
        try
        {
            Directory.CreateDirectory(folder);
            var part = PathOf(key) + "." + Guid.NewGuid().ToString("N") + ".part";
            File.WriteAllBytes(part, [.. XxHash128.Hash(content), .. content]);
            File.Move(part, PathOf(key), overwrite: true);
            foreach (var old in new DirectoryInfo(folder).GetFiles("*" + ending).OrderByDescending(file => file.LastWriteTimeUtc).Skip(most))
            {
                old.Delete();
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // A cache that cannot be written is done without.
        }
    }

    private string PathOf(string key) => Path.Combine(folder, key + ending);
}
