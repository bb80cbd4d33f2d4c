using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Tests.Plans;

/// <summary>The hatch lid with one text in every place a user can fill.</summary>
internal static class Hostile
{
    public static PaperInput With(string text)
    {
        var input = HatchLid.Input;
        var plan = input.Plan;
        var part = plan.Part with
        {
            Title = text,
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
