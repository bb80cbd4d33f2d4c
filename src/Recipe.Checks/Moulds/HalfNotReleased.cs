using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>One half of the mould gets no release.</summary>
public sealed class HalfNotReleased : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2117",
        Name = "half-not-released",
        Severity = Severity.Error,
        Title = "Half of the mould without release",
        Reason = "The part comes out of one half and stays in the other.",
        Remedy = "Release every face that resin can reach: both halves, and the lands between them.",
        Source = "common practice",
        Exceptions = """
            A release line without `on` counts for both halves.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              halves left right
              release {
                carnauba-wax coats 5 wait 30 min on left
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              join {
                manner wet-in-wet
                overlap 20 mm
                within 60 min
                align dowels
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              halves left right
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              join {
                manner wet-in-wet
                overlap 20 mm
                within 60 min
                align dowels
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.ReleaseLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { Halves: { IsEmpty: false } halves, Release: { IsEmpty: false } release } mould
            || !context.Part.IsWetted() || release.Any(r => r.On is null)
            || halves.FirstOrDefault(h => release.All(r => r.On != h)) is not { } bare)
        {
            return;
        }

        context.Report(
            release[0].Where,
            $"the release of {mould.Name} goes on {release[0].On} only; {bare} stays bare",
            fixes: [OnBoth(release)]);
    }

    private static Fix? OnBoth(System.Collections.Immutable.ImmutableArray<ReleaseCoat> release)
    {
        var edits = new List<TextEdit>();
        foreach (var line in release)
        {
            var words = " on " + line.On;
            var at = line.Where.Text.IndexOf(words, StringComparison.Ordinal);
            if (at >= 0)
            {
                edits.Add(Edits.Replace(new SourceSpan(line.Where.Source, new TextSpan(line.Where.Span.Start + at, words.Length)), ""));
            }
        }

        return edits.Count == 0 ? null : new Fix("Release both halves alike", FixSafety.NeedsALook, [.. edits]);
    }
}
