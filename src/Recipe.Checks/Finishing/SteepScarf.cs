using System.Globalization;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The scarf of a repair is too steep.</summary>
public sealed class SteepScarf : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8216",
        Name = "steep-scarf",
        Severity = Severity.Warning,
        Title = "Steep scarf",
        Reason = "A short taper puts the whole load on the edge of the patch, which peels from there.",
        Remedy = "Taper it 12 to 1 where it carries little, 20 to 1 or more where it carries load.",
        Source = "common practice: 12 to 1 light, 20 to 30 to 1 loaded; FAA AC 43.13-1B (1998) p. 3-3 has 50 to 1 for aircraft, where licensed practice decides",
        Exceptions = """
            Silent where the line says that it is only filled.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
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
              finish {
                wash
                scarf 8 to 1
                abrade 80 grit
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
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
              finish {
                wash
                scarf 12 to 1
                abrade 80 grit
              }
            }
            """,
    };

    private const double Light = 12;
    private const double Loaded = 20;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var loaded = context.Part.CarriesLoad();
        var wanted = loaded ? Loaded : Light;
        foreach (var scarf in context.Part.Finish.Where(f => f.Verb == "scarf"))
        {
            if (Taper.In(scarf.Where) is not { } taper)
            {
                context.NotChecked("no taper is given for the scarf, as in `scarf 20 to 1`", scarf.Where);
                continue;
            }

            if (taper.Ratio >= wanted || TradeWords.Says(scarf.Text, "fill", "cosmetic", "filler"))
            {
                continue;
            }

            context.Report(
                scarf.Where,
                $"the scarf is {Say.Number(taper.Ratio)} to 1; {Say.Number(wanted)} to 1 is wanted{(loaded ? " where load goes through" : "")}",
                fixes: [new Fix($"Taper it {Say.Number(wanted)} to 1", FixSafety.NeedsALook, Edits.Replace(taper.Where, Say.Number(wanted)))]);
            return;
        }
    }

    /// <summary>A taper as it is written.</summary>
    /// <param name="Ratio">How long it is for each 1 that it is deep.</param>
    /// <param name="Where">Where that number stands.</param>
    private sealed record Taper(double Ratio, SourceSpan Where)
    {
        // "20 to 1", "20-to-1", "20:1", "1 in 20": of two numbers with such a word between them one is 1.
        public static Taper? In(SourceSpan line)
        {
            var numbers = Numbers(line.Text).ToList();
            foreach (var ((from, to, number), (nextFrom, nextTo, next)) in numbers.Zip(numbers.Skip(1)))
            {
                if (line.Text[to..nextFrom].Trim(' ', '\t', '-') is "to" or ":" or "in" or "/" && (number == 1 || next == 1) && Math.Max(number, next) is > 0 and < 1000)
                {
                    return number >= next ? At(from, to, number) : At(nextFrom, nextTo, next);
                }
            }

            return null;

            Taper At(int from, int to, double ratio) => new(ratio, new SourceSpan(line.Source, TextSpan.FromBounds(line.Span.Start + from, line.Span.Start + to)));
        }

        private static IEnumerable<(int From, int To, double Value)> Numbers(string text)
        {
            for (var i = 0; i < text.Length; i++)
            {
                var start = i;
                while (i < text.Length && (char.IsAsciiDigit(text[i]) || (text[i] == '.' && i > start)))
                {
                    i++;
                }

                if (i > start && double.TryParse(text[start..i], NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
                {
                    yield return (start, i, number);
                    i--;
                }
            }
        }
    }
}
