namespace Recipe.RulesProcess.Protocol;

/// <summary>Whether an answer speaks of nothing but what was asked: who joins it may index with it.</summary>
internal static class AnswerCheck
{
    /// <summary>Whether files, parts and elements exist and offsets lie in their text.</summary>
    public static bool Fits(HostRequest request, RuleRunAnswer answer)
    {
        var lengths = new Dictionary<string, int>();
        foreach (var file in request.Files)
        {
            lengths[file.Name] = file.Text.Length;
        }

        return answer.Rules.All(one => IsPlace(one.File, one.Start, one.End))
            && answer.Diagnostics.All(one => IsPlace(one.File, one.Start, one.End))
            && answer.Findings.All(one => lengths.ContainsKey(one.File) && IsPart(one.Part) && IsElement(one))
            && answer.NotChecked.All(one => lengths.ContainsKey(one.File) && IsPart(one.Part))
            && answer.Problems.All(one => Enum.IsDefined(one.Kind) && (one.File is null || lengths.ContainsKey(one.File)) && (one.Part is not { } part || IsPart(part)));

        bool IsPlace(string file, int start, int end) => lengths.TryGetValue(file, out var length) && 0 <= start && start <= end && end <= length;

        bool IsPart(int part) => 0 <= part && part < (request.Parts?.Count ?? 0);

        bool IsElement(RuleRunFinding one) => one.Group is not { } group || (0 <= one.Index && one.Index < request.Parts![one.Part].Group(group).Count);
    }
}
