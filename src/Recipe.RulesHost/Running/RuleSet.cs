using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Recipe.RulesHost.Compiling;
using Recipe.RulesProcess.Protocol;

namespace Recipe.RulesHost.Running;

/// <summary>Files of rules, from memory, from the cache, or compiled.</summary>
internal sealed class RuleSet(RuleCache cache)
{
    private const int MostInMemory = 100;
    private readonly Dictionary<string, LoadedRules> _loaded = [];
    private bool _hasCompiled;

    /// <summary>The rules of the files, and why files have none.</summary>
    public (ImmutableArray<LoadedRules> Files, ImmutableArray<RuleDiagnostic> Diagnostics, ImmutableArray<string> Compiled) Load(HostRequest request, Action<HostProgress> report)
    {
        var files = ImmutableArray.CreateBuilder<LoadedRules>();
        var diagnostics = ImmutableArray.CreateBuilder<RuleDiagnostic>();
        var compiled = ImmutableArray.CreateBuilder<string>();
        var names = new HashSet<string>();
        foreach (var file in request.Files.Where(file => !request.SkipFiles.Contains(file.Name)))
        {
            var key = RuleCache.Key(file.Text);
            var (rules, refused) = (Find(key, file), ImmutableArray<RuleDiagnostic>.Empty);
            if (rules is null)
            {
                report(new HostProgress(request.Id, file.Name, null, null));
                if (!_hasCompiled)
                {
                    _hasCompiled = true;
                    Warm();
                }

                compiled.Add(file.Name);
                (rules, refused) = Compile(key, file);
            }

            diagnostics.AddRange(refused);
            if (rules is null)
            {
                continue;
            }

            var twice = rules.Descriptions.Where(rule => !names.Add(rule.Name)).ToList();
            diagnostics.AddRange(twice.Select(rule => new RuleDiagnostic(file.Name, rule.Start, rule.End, "RULE015", $"Another file has a rule with the name '{rule.Name}' too. Give one another name.")));
            if (twice.Count == 0)
            {
                files.Add(rules);
            }
        }

        return (files.ToImmutable(), diagnostics.ToImmutable(), compiled.ToImmutable());
    }

    private LoadedRules? Find(string key, RuleSource file)
    {
        if (_loaded.TryGetValue(key, out var known))
        {
            return known.In(file.Name);
        }

        return cache.Find(key, file.Name) is { } found ? Remember(key, found) : null;
    }

    // Both apart, so that no assembly of the C# compiler is loaded for rules that are in the cache.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Warm() => RuleCompiler.Warm();

    [MethodImpl(MethodImplOptions.NoInlining)]
    private (LoadedRules? Rules, ImmutableArray<RuleDiagnostic> Refused) Compile(string key, RuleSource file)
    {
        var compiled = RuleCompiler.Compile(file);
        if (compiled.Image is not { } image)
        {
            return (null, compiled.Diagnostics);
        }

        var types = LoadedRules.Load(image, compiled.Classes.Select(one => one.Type));
        var (descriptions, refused) = (ImmutableArray<RuleDescription>.Empty, ImmutableArray<RuleDiagnostic>.Empty);
        Guarded.OnSmallStack(() => (descriptions, refused) = RuleDescriber.Describe(file.Name, compiled.Classes, types));
        if (!refused.IsEmpty)
        {
            return (null, refused);
        }

        cache.Keep(key, image, compiled.Classes, descriptions);
        return (Remember(key, LoadedRules.Of(file.Name, types, descriptions)), []);
    }

    private LoadedRules Remember(string key, LoadedRules rules)
    {
        if (_loaded.Count >= MostInMemory)
        {
            _loaded.Clear();
        }

        _loaded[key] = rules;
        return rules;
    }
}
