using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>Pot life and film life of one resin today: one model for pots and clock.</summary>
internal sealed class PotLives
{
    private readonly PlanContext _context;
    private readonly ResinSystem _resin;
    private readonly Owner _owner;

    /// <param name="context">The part.</param>
    /// <param name="resin">The resin.</param>
    /// <param name="conditions">Where it is mixed.</param>
    /// <param name="ofWetOut">Whether what `wet-out` says of the pots holds for it; else it is mixed in a cup.</param>
    public PotLives(PlanContext context, ResinSystem resin, Conditions conditions, bool ofWetOut)
    {
        _context = context;
        _resin = resin;
        _owner = Owner.Of(resin);
        Temperature = conditions.Resin;
        var tray = ofWetOut ? context.Figures.Any(context.Part.WetOut?.Tray, context.PartOwner, "tray") : null;
        Shape = new Known<PotShape>(tray is { Value: true } ? PotShape.ShallowTray : PotShape.DeepCup, tray?.On ?? Rests.None);
        Reference = ReadReference();
        if (Reference is not null && !InRange)
        {
            context.Miss("pot life", $"no rule is known for {resin.Name} below 0 or above 60 degC");
        }
    }

    /// <summary>Temperature of the resin when mixed.</summary>
    public Known<Temperature> Temperature { get; }

    /// <summary>Cup or tray.</summary>
    public Known<PotShape> Shape { get; }

    /// <summary>What the data sheet says; null when it says nothing.</summary>
    public Known<PotLifeReference>? Reference { get; }

    /// <summary>Whether the resin's temperature is one that the rule is good for.</summary>
    public bool InRange => IsInRange(Temperature.Value);

    /// <summary>Pot life in a pot of this mass, s.</summary>
    public Num? Of(Num mass)
    {
        if (Reference is not { } reference || !InRange || mass.Si <= 0)
        {
            return null;
        }

        var pot = Mass.FromKilograms(mass.Si);
        var life = PotLife.At(reference.Value, Temperature.Value, pot, Shape.Value);
        var byRule = new Num(life.Life.Seconds, reference.On | Temperature.On | Shape.On | mass.On | Rules(life.Assumptions));
        return PotHeat.Of(_resin)?.Life(pot, Temperature.Value, Shape.Value) is { } byHeat && byHeat.Seconds < byRule.Si
            ? new Num(byHeat.Seconds, reference.On | Temperature.On | Shape.On | mass.On | PotHeat.Basis(_context, _resin))
            : byRule;
    }

    /// <summary>How hot a pot of this mass gets when it is left standing; null when it is not known.</summary>
    public Known<Temperature>? Peak(Num mass) => InRange && mass.Si > 0 && PotHeat.Of(_resin)?.Peak(Mass.FromKilograms(mass.Si), Temperature.Value, Shape.Value) is { } peak
        ? new Known<Temperature>(peak, Temperature.On | Shape.On | mass.On | PotHeat.Basis(_context, _resin))
        : null;

    /// <summary>How long resin spread on the part stays workable in this room, s.</summary>
    public Num? InFilm(Known<Temperature> room)
    {
        if (!IsInRange(room.Value))
        {
            return null;
        }

        if (_resin.FilmLife is { } film && film.Value.Time.Seconds is > 0 and < 1e9 && IsInRange(film.Value.At))
        {
            var sheet = PotLife.InFilm(film.Value.Time, film.Value.At, room.Value);
            return new Num(sheet.Life.Seconds, _context.Figures.Basis(film, _owner, "film-life") | room.On | Rules(sheet.Assumptions));
        }

        if (Reference is not { } reference)
        {
            return null;
        }

        var life = PotLife.InFilm(reference.Value, room.Value);
        return new Num(life.Life.Seconds, reference.On | room.On | Rules(life.Assumptions));
    }

    /// <summary>Life of a pot so small that it does not warm itself, at a temperature of its own, s.</summary>
    public Num? SmallAt(Known<Temperature> temperature)
    {
        if (Reference is not { } reference || !IsInRange(temperature.Value))
        {
            return null;
        }

        var life = PotLife.At(reference.Value, temperature.Value, PotLife.SmallPot);
        return new Num(life.Life.Seconds, reference.On | temperature.On | Rules(life.Assumptions));
    }

    /// <summary>Gel time of the sheet, carried to another temperature, s; null when it gives none that can be used.</summary>
    public Num? Gel(Known<Temperature> temperature)
    {
        if (_resin.GelTime is not { } gel || !(gel.Value.Time.Seconds is > 0 and < 1e9) || !IsInRange(gel.Value.At) || !IsInRange(temperature.Value))
        {
            return null;
        }

        var life = PotLife.InFilm(gel.Value.Time, gel.Value.At, temperature.Value);
        return new Num(life.Life.Seconds, _context.Figures.Basis(gel, _owner, "gel-time") | temperature.On | Rules(life.Assumptions));
    }

    /// <summary>The rules of thumb that an estimate rests on.</summary>
    public Rests Rules(PotLifeAssumptions used)
    {
        var rests = Rests.None;
        foreach (var rule in Defaults.RulesOf(used))
        {
            rests |= _context.Ledger.Assume(rule);
        }

        return rests;
    }

    private Known<PotLifeReference>? ReadReference()
    {
        if (_resin.PotLife is not { } figure)
        {
            _context.Miss("pot life", $"{_resin.Name} gives none");
            return null;
        }

        var at = figure.Value;
        if (!(at.Time.Seconds is > 0 and < 1e9) || !IsInRange(at.At) || (at.In is { } stated && !(stated.Kilograms is > 0 and < 1e6)))
        {
            _context.Miss("pot life", $"'{figure.Written}' cannot be used");
            return null;
        }

        var on = _context.Figures.Basis(figure, _owner, "pot-life");
        return at.In is { } mass
            ? new Known<PotLifeReference>(new PotLifeReference(at.Time, at.At, mass), on)
            : new Known<PotLifeReference>(
                new PotLifeReference(at.Time, at.At, Defaults.PotLifeMass.Value), on | _context.Ledger.Assume(Defaults.PotLifeMass));
    }

    private static bool IsInRange(Temperature temperature) =>
        temperature >= PotLife.LowestTemperature && temperature <= PotLife.HighestTemperature;
}
