using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace Recipe.Semantics.Binding;

/// <summary>
/// What is in scope by name, bound when it is looked up, so that a thousand files can look into one book without copying it.
/// Counting or listing walks everything in scope.
/// </summary>
/// <typeparam name="TDeclaration">The declarations.</typeparam>
/// <typeparam name="T">What they mean.</typeparam>
internal sealed class ScopeView<TDeclaration, T>(Func<string, TDeclaration?> find, Func<IEnumerable<string>> names, Func<TDeclaration, T> bind) : IReadOnlyDictionary<string, T>
    where TDeclaration : Declaration
{
    public IEnumerable<string> Keys => names().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);

    public IEnumerable<T> Values => Keys.Select(k => this[k]);

    public int Count => Keys.Count();

    public T this[string key] => TryGetValue(key, out var value) ? value : throw new KeyNotFoundException($"Nothing named '{key}' is in scope.");

    public bool ContainsKey(string key) => find(key) is not null;

    public bool TryGetValue(string key, [MaybeNullWhen(false)] out T value)
    {
        var declaration = find(key);
        value = declaration is null ? default : bind(declaration);
        return declaration is not null;
    }

    public IEnumerator<KeyValuePair<string, T>> GetEnumerator() => Keys.Select(k => KeyValuePair.Create(k, this[k])).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
