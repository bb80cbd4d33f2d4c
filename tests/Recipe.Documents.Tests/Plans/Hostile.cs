using CsCheck;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Tests.Plans;

/// <summary>The hatch lid with one text in every place a user can fill.</summary>
internal static class Hostile
{
    /// <summary>Texts that mean something to one of the formats.</summary>
    private static readonly string[] Texts =
    [

        "<script>alert(1)</script>", "</style><script>", "\"><img src=x onerror=alert(1)>", "]]>", "<!--", "&amp;", "javascript:alert(1)", "https://example.invalid/x",
        "=1+1", "+1", "-1+cmd|' /C x'!A0", "@SUM(A1)", "\t=1", "\r\n=1", "a\",\"b", "a|b", "a\nb", "# heading", "- [ ] task", "> quote", "```", "`", "[x](y)", "![x](y)", "~~~", "1. a", "\\", "\\|",
        "\u202Eevil", "\u0000\u0007", "\uD800", "\uFFFE", "\u2028", "", " ", "*/ } @page {", "${x}", "{{x}}", "\u00A0", "\uFF1D1",
    ];

    /// <summary>One of the texts that mean something to one of the formats.</summary>
    public static Gen<string> Words { get; } = Gen.Int[0, Texts.Length - 1].Select(i => Texts[i]);

    public static PaperInput With(string text)
    {
        var input = HatchLid.Input;
        var plan = input.Plan;
        var part = plan.Part with
        {
            Title = text,
            Axis = text,
            Resin = plan.Part.Resin! with { Title = text, Hazard = text, Hardener = text },
            Bag = plan.Part.Bag! with { GaugeAt = text },
            Mould = plan.Part.Mould! with { Title = text, Halves = [text, text + "2"] },
            Finish = [new FinishStep(text, text, Make.Here)],
            Waivers = [new Waiver(text, text, null, Make.Here)],
            TargetMass = plan.Part.TargetMass! with { Written = text },
        };
        return input with
        {
            Revision = text,
            SourceName = text,
            Plan = plan with
            {
                Part = part,
                Assumptions = [.. plan.Assumptions.Select(assumption => assumption with { What = text, Value = text, Source = text, HowToReplace = text })],
                Gaps = [new Gap(text, text)],
                Takeoff = [.. plan.Takeoff.Select(line => line with { Label = text })],
                Stack = [.. plan.Stack.Select(line => line with { Item = line.Item with { At = text } })],
                Pots = [.. plan.Pots.Select(pot => pot with { For = [text] })],
            },
            Findings = [.. input.Findings.Select(finding => finding with { Message = text })],
            NotChecked = [.. input.NotChecked.Select(check => check with { Missing = text })],
        };
    }
}
