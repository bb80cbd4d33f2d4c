using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using UnitsNet;

namespace Recipe.HouseRules;

/// <summary>Short ways to say what is known.</summary>
internal static class Facts
{
    public static FactValue? Word(string? word, SourceSpan? where = null) => word is null ? null : new FactValue { Word = word, Where = where };

    public static FactValue Number(double number) => new() { Si = number };

    public static FactValue YesNo(bool yes) => new() { Yes = yes };

    /// <summary>A figure that the recipe or a material states.</summary>
    public static FactValue? Of<T>(Figure<T>? figure, Func<T, double> si, string what) => figure is null ? null : new FactValue
    {
        Si = si(figure.Value),
        Where = figure.Basis == Basis.Stated ? figure.Where : null,
        Assumed = figure.IsAssumed ? $"{what} {figure.Written}" : null,
    };

    public static FactValue? YesNo(Figure<bool>? figure, string what) => figure is null ? null : new FactValue
    {
        Yes = figure.Value,
        Where = figure.Basis == Basis.Stated ? figure.Where : null,
        Assumed = figure.IsAssumed ? $"{what} {figure.Written}" : null,
    };

    /// <summary>A word that the recipe says, or that follows from what it says: then it stands nowhere.</summary>
    public static FactValue? Word<T>(Figure<T>? figure, Func<T, string?> word, string what) => figure is null || word(figure.Value) is not { } said ? null : new FactValue
    {
        Word = said,
        Where = figure.Where is { } where && where.Text == said ? where : null,
        Assumed = figure.IsAssumed ? $"{what} {said}" : null,
    };

    /// <summary>A word that stands somewhere on a line, with its place there.</summary>
    public static FactValue WordOn(string word, SourceSpan line)
    {
        var text = line.Text;
        for (var at = text.IndexOf(word, StringComparison.Ordinal); at >= 0; at = text.IndexOf(word, at + word.Length, StringComparison.Ordinal))
        {
            var end = at + word.Length;
            if ((at == 0 || char.IsWhiteSpace(text[at - 1])) && (end == text.Length || char.IsWhiteSpace(text[end])))
            {
                return new FactValue { Word = word, Where = line with { Span = new TextSpan(line.Span.Start + at, word.Length) } };
            }
        }

        return new FactValue { Word = word };
    }

    /// <summary>Whether a value stands behind a word of its line.</summary>
    public static bool StandsBehind(SourceSpan value, string word) => value.Source.Text.AsSpan(0, value.Span.Start).TrimEnd().EndsWith(word, StringComparison.Ordinal);

    public static FactValue? Length(Figure<Length>? figure, string what) => Of(figure, l => l.Meters, what);

    public static FactValue? Time(Figure<Duration>? figure, string what) => Of(figure, t => t.Seconds, what);

    public static FactValue? Heat(Figure<Temperature>? figure, string what) => Of(figure, t => t.Kelvins, what);

    public static FactValue? ArealWeight(Figure<AreaDensity>? figure, string what) => Of(figure, w => w.KilogramsPerSquareMeter, what);

    /// <summary>A value of the plan.</summary>
    public static FactValue? Of<T>(Computed<T>? computed, Func<T, double> si) => computed is { } known ? new FactValue { Si = si(known.Value), RestsOn = known.RestsOn.IsDefault ? [] : known.RestsOn } : null;

    public static FactValue? Mass(Computed<Mass>? computed) => Of(computed, m => m.Kilograms);

    public static FactValue? Length(Computed<Length>? computed) => Of(computed, l => l.Meters);

    public static FactValue? Time(Computed<Duration>? computed) => Of(computed, t => t.Seconds);

    public static FactValue? Heat(Computed<Temperature>? computed) => Of(computed, t => t.Kelvins);

    public static FactValue? Area(Computed<Area>? computed) => Of(computed, a => a.SquareMeters);

    public static FactValue? Pressure(Computed<Pressure>? computed) => Of(computed, p => p.Pascals);

    public static FactValue? Share(Computed<double>? computed) => Of(computed, s => s);

    /// <summary>Where the recipe states what the plan reckons with, that it does, so that it can be changed there.</summary>
    public static FactValue? StatedAt(this FactValue? value, SourceSpan? where) => value is null || where is null ? value : value with { Where = where };
}
