using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Runs the checks and lets written reasons have their say.</summary>
public static class CheckRunner
{
    /// <summary>Examines one part. See <see cref="Run(IReadOnlyList{Plan}, RecipeModel, DateOnly?, IReadOnlyList{Check}?, IReadOnlyList{Finding}?, IReadOnlyList{SeveritySetting}?)"/>.</summary>
    public static CheckReport Run(Plan plan, RecipeModel model, DateOnly? today) => Run([plan], model, today);

    /// <summary>
    /// Examines the parts of a file together, so that a waiver at the top of the file is called unused only when no part needs it,
    /// and what two parts share (a mould) is reported once.
    /// </summary>
    /// <param name="plans">The plans, in the order of the file.</param>
    /// <param name="model">What the file means.</param>
    /// <param name="today">The day, for waivers and shelf life; null leaves both out.</param>
    /// <param name="checks">The checks to run; all of the catalogue when not given. Checks of a house join the list here.</param>
    /// <param name="earlier">
    /// What the stages before found, so that a misspelt line is not reported as a missing one too. See <see cref="Check.Reads"/>.
    /// </param>
    /// <param name="settings">
    /// How bad the shop holds findings to be, the first word on each counting; those of the file itself go before them.
    /// </param>
    public static CheckReport Run(
        IReadOnlyList<Plan> plans,
        RecipeModel model,
        DateOnly? today,
        IReadOnlyList<Check>? checks = null,
        IReadOnlyList<Finding>? earlier = null,
        IReadOnlyList<SeveritySetting>? settings = null)
    {
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentNullException.ThrowIfNull(model);
        var examiner = new Examiner(model, today, checks, earlier, settings);
        return examiner.Conclude([.. plans.Select(examiner.Examine)]);
    }
}
