using System.Diagnostics.CodeAnalysis;
using Recipe.Compiler;
using Recipe.Model;
using Recipe.Planning;
using Recipe.RuleProtocol;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.HouseRules.Tests;

/// <summary>Rules and a part, bound and planned.</summary>
internal static class Bench
{
    /// <summary>A part that has something of everything.</summary>
    public const string Tray = """
        mould tray-mould {
          surface  spherical-cap diameter 300 mm rise 40 mm
          flange   75 mm
          made-of  epoxy-glass-tooling
          pulls    6
          state    seasoned
          release {
            carnauba-wax  coats 5   wait 30 min   dry 60 min
            pva-film      coats 2   wait 30 min   dry 45 min
          }
        }
        part tray {
          title    "Tray"
          mould    tray-mould
          process  bagged
          resin    slow-laminating-epoxy
          trim     15 mm
          use      cosmetic
          outdoors no
          coat     epoxy-surface-coat 300 g/m2 wait 90 min
          load     pulled along pull 10 N/mm
          plies {
            outer  glass-plain-80   0/90
            veil   carbon-veil-8    random
            body   glass-twill-280  +/-45   overlap 15 mm
            stiff  core pvc-foam-75 thickness 5 mm size 120 mm x 80 mm
            boss   insert m5-nut x2
            inner  glass-plain-105  0/90    x2
            hinge  patch glass-tape-200 0/90 size 60 mm x 40 mm
          }
          wet-out { room 20 degC; laminators 1; resin-content 45 % by weight; mixing 3 min }
          bag { peel-ply; release-film perforated; breather breather-150; bag-film; sealant-tape; port vacuum-port at "flange" }
          vacuum { draw 24 inHg below ambient within 10 min; leak-check 5 min rise at-most 30 mbar isolated }
          cure { hold 20 degC for 24 h under vacuum; ramp 0.5 degC/min to 50 degC; hold 50 degC for 8 h; cool to 30 degC; vent; demould }
          finish { trim; wash "warm water"; weigh }
        }
        """;

    public static BoundFile Bind(string text) => Binder.Bind(SyntaxTree.Parse(new SourceText("house.recipe", text)), ShippedTexts.Book, UseScope.Alone());

    /// <summary>A rule whose block holds these lines, and nothing wrong with it.</summary>
    public static HouseRule Rule(string lines)
    {
        var bound = Bind($"rule tried {{\n{lines}\n}}\n");
        Assert.True(bound.Findings.IsEmpty, string.Join("\n", bound.Findings.Select(f => $"{f.Descriptor.Name}: {f.Message}")));
        return Assert.Single(bound.Model.OwnRules);
    }

    /// <summary>What a rule with these lines says of a part.</summary>
    public static RuleOutcome Apply(string lines, string part = Tray)
    {
        var bound = Bind(part);
        Assert.DoesNotContain(bound.Findings, f => f.Severity == Severity.Error);
        return RuleEngine.Apply(Rule(lines), PlanFacts.Of(Planner.Plan(bound.Model.Parts[^1], bound.Model)), bound.Tree.Source);
    }

    public static string[] Messages(string lines, string part = Tray) => [.. Apply(lines, part).Broken.Select(breach => breach.Message)];
}

/// <summary>Files in memory, for the whole program.</summary>
internal sealed class Files : IFileStore
{
    public Dictionary<string, string> Texts { get; } = new(StringComparer.Ordinal);

    public IRuleRunner? Rules
    {
        get
        {
            RulesAsked++;
            return field;
        }

        set;
    }

    public int RulesAsked { get; private set; }

    public bool TryRead(string name, [NotNullWhen(true)] out string? text) => Texts.TryGetValue(name, out text);

    public CompiledFile Compile(string name)
    {
        Assert.True(new Workspace(this, new DateOnly(2026, 5, 14)).TryCompile(name, out var file));
        return file;
    }
}
