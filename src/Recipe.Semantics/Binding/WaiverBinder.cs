using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;

namespace Recipe.Semantics.Binding;

/// <summary>Waivers.</summary>
internal static class WaiverBinder
{
    public static ImmutableArray<Waiver> Bind(IEnumerable<Line> lines)
    {
        var waivers = ImmutableArray.CreateBuilder<Waiver>();
        foreach (var line in lines)
        {
            if (line.Text("code") is not { } code)
            {
                continue;
            }

            var because = line.Text("because");
            if (string.IsNullOrWhiteSpace(because) && (because is not null || !line.Reading.WasTried("because")))
            {
                line.Context.Sink.Report(WaiverWithoutReason.Create(line.Where, code));
            }

            waivers.Add(new Waiver(code, because, line.Reading.Find("until")?.Date, line.Where));
        }

        return waivers.ToImmutable();
    }
}
