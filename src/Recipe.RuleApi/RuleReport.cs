namespace Recipe.RuleApi;

/// <summary>Takes what a rule finds about one part. It is bounded: what goes beyond is counted and not kept.</summary>
public sealed class RuleReport
{
    /// <summary>The most findings that are kept of one rule about one part.</summary>
    public const int MostFindings = 200;

    /// <summary>The longest message, in characters; a longer one is cut and ends with an ellipsis.</summary>
    public const int LongestMessage = 500;

    private readonly List<RuleFinding> _findings = [];
    private readonly List<string> _missing = [];

    /// <summary>What was found, in order.</summary>
    public IReadOnlyList<RuleFinding> Findings => _findings;

    /// <summary>What the rule would have needed to know, in order, each once.</summary>
    public IReadOnlyList<string> Missing => _missing;

    /// <summary>How many findings and missing facts were one too many.</summary>
    public int Dropped { get; private set; }

    /// <summary>Reports something about the part.</summary>
    /// <param name="message">The facts, with units, in one sentence.</param>
    /// <param name="severity">How bad it is; that of the rule when it is not given.</param>
    public void Finding(string message, RuleSeverity? severity = null) => Add(null, 0, message, severity);

    /// <summary>Reports something about a ply, a layer, a pot or a step, shown at its line.</summary>
    /// <param name="element">The element.</param>
    /// <param name="message">The facts, with units, in one sentence.</param>
    /// <param name="severity">How bad it is; that of the rule when it is not given.</param>
    public void Finding(ElementFacts element, string message, RuleSeverity? severity = null)
    {
        ArgumentNullException.ThrowIfNull(element);
        Add(element.Group, element.Index, message, severity);
    }

    /// <summary>Says that the rule could not judge because something is not known.</summary>
    /// <param name="missing">What is missing: <c>the resin content of the outer ply</c>.</param>
    public void NotChecked(string missing)
    {
        var text = Tidy(missing);
        if (_missing.Contains(text))
        {
            return;
        }

        if (_missing.Count < MostFindings)
        {
            _missing.Add(text);
        }
        else
        {
            Dropped++;
        }
    }

    private void Add(string? group, int index, string message, RuleSeverity? severity)
    {
        if (_findings.Count < MostFindings)
        {
            _findings.Add(new RuleFinding(Tidy(message), severity, group, index));
        }
        else
        {
            Dropped++;
        }
    }

    private static string Tidy(string message)
    {
        ArgumentNullException.ThrowIfNull(message);
        return PlainText.Of(message, LongestMessage);
    }
}
