using System.Globalization;
using System.IO.Hashing;
using System.Text;
using Recipe.Model;

namespace Recipe.Compiler.Exploring;

/// <summary>What shards belong to, and why one does not.</summary>
public sealed class ShardSet
{
    private readonly Study _study;

    private ShardSet(string program, string recipe, Study study) => (Program, Recipe, _study) = (program, recipe, study);

    /// <summary>Version of the program.</summary>
    public string Program { get; }

    /// <summary>Hash of the recipe and of all texts that it rests on.</summary>
    public string Recipe { get; }

    internal static ShardSet Of(CompiledFile file, Study study, string program)
    {
        var hash = new XxHash128();
        foreach (var used in file.RestsOn)
        {
            hash.Append(Encoding.UTF8.GetBytes(used.Text is null ? "\0" : $"\u0001{used.Text.Length.ToString(CultureInfo.InvariantCulture)}\u0001{used.Text}"));
        }

        return new(program, Convert.ToHexStringLower(hash.GetCurrentHash()), study);
    }

    /// <summary>Why a shard does not belong here; null when it does.</summary>
    public string? Refuse(ShardFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var shard = file.Shard;
        return shard.Study != _study.Name ? $"it is of the study {shard.Study}, not of {_study.Name}"
            : shard.Recipe != Recipe ? "it is of another recipe, or the recipe or a text that it uses has changed since"
            : shard.Program != Program ? $"it was made by version {shard.Program} of the program, and this is {Program}"
            : (shard.From, shard.Until) != new ShardPlan(shard.Number, shard.Of).Range(_study.Candidates) ? "its stretch of candidates is not one of this study"
            : null;
    }

    /// <summary>Why shards cannot be put together; null when they can.</summary>
    /// <param name="shards">The shards, each with the name of its file.</param>
    public string? Refuse(IReadOnlyList<(string File, ShardFile Shard)> shards)
    {
        ArgumentNullException.ThrowIfNull(shards);
        var seen = new Dictionary<int, string>();
        foreach (var (file, read) in shards)
        {
            if (Refuse(read) is { } reason)
            {
                return $"{file}: {reason}.";
            }

            var (shard, first) = (read.Shard, (shards[0].File, shards[0].Shard.Shard));
            if (shard.Of != first.Shard.Of || shard.Today != first.Shard.Today)
            {
                return shard.Of != first.Shard.Of
                    ? $"{file} is shard {shard.Name} and {first.File} is {first.Shard.Name}: they are not of one run."
                    : $"{file} was checked for another day than {first.File}.";
            }

            if (!shard.IsComplete)
            {
                return $"{file}: shard {shard.Name} was broken off; run it again with `--state {file}` first.";
            }

            if (!seen.TryAdd(shard.Number, file))
            {
                return $"{file} and {seen[shard.Number]} are both shard {shard.Name}.";
            }
        }

        var missing = Enumerable.Range(1, shards[0].Shard.Plan.Of).Where(number => !seen.ContainsKey(number)).ToList();
        return missing.Count == 0 ? null : $"shard {string.Join(", ", missing.Take(8).Select(number => $"{number}/{shards[0].Shard.Plan.Of}"))}{(missing.Count > 8 ? " and others are" : missing.Count > 1 ? " are" : " is")} missing.";
    }
}
