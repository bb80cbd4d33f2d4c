using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Compiler.Exploring;

/// <summary>An <c>explore</c> of a compiled file.</summary>
public sealed class DeclaredStudy
{
    private readonly CompiledFile _file;
    private readonly Study _study;

    private DeclaredStudy(CompiledFile file, Study study) => (_file, _study) = (file, study);

    /// <summary>Those that a file declares, in order. One that was not understood whole is not among them: findings say why.</summary>
    public static ImmutableArray<DeclaredStudy> Of(CompiledFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return [.. file.Bound.Model.Studies.Where(study => study.IsWhole).Select(study => new DeclaredStudy(file, study))];
    }

    /// <summary>Its name.</summary>
    public string Name => _study.Name;

    /// <summary>How many candidates it has.</summary>
    public long Candidates => _study.Candidates;

    /// <summary>A candidate as the variant that it is, to be put into the recipe.</summary>
    /// <param name="index">Its number, from 0 to <see cref="Candidates"/>, that one excluded.</param>
    public string Variant(long index) => CandidateText.Write(_study, index);

    /// <summary>Prepares a run.</summary>
    /// <param name="today">The day for which candidates are checked.</param>
    /// <param name="threads">On how many threads it runs; null for all cores. It changes nothing but the time.</param>
    public Exploration Begin(DateOnly? today, int? threads = null) => new(_file, _study, today, threads);

    /// <summary>What its shards belong to.</summary>
    /// <param name="program">Version of the program.</param>
    public ShardSet Shards(string program) => ShardSet.Of(_file, _study, program);
}
