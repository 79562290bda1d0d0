using System.Collections.Immutable;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Data.Folder;

/// <summary>What a break is for.</summary>
public enum BreakUse
{
    /// <summary>The strength curve is fitted to it.</summary>
    Curve,

    /// <summary>It is held against the curve.</summary>
    Check,
}

/// <summary>Reads mixes.csv and breaks.csv.</summary>
internal static class MixReader
{
    private const double Yard3 = 0.9144 * 0.9144 * 0.9144;

    /// <summary>Mixes and breaks that can be used; a break of an unknown mix is left out.</summary>
    public static (ImmutableArray<ConcreteMix> Mixes, ImmutableArray<StrengthBreak> Breaks) Read(string folder, ProjectHead? head, List<Finding> findings)
    {
        var scene = head?.Scene ?? new FolderScene(0, new Stationing { Style = StationStyle.Metres }, UnitSystem.Si);
        var mixes = new Dictionary<string, ConcreteMix>(StringComparer.Ordinal);
        foreach (var row in FolderTable.Read(folder, FolderFormat.Mixes, scene, findings))
        {
            var mix = Mix(row);
            if (row.Good && !mixes.TryAdd(mix.Id, mix)) row.Bad("ROAD-018", "The mix stands twice; the first row holds.", "id", mix.Id, "Give each mix its own identifier.");
            if (row.Good) findings.AddRange(MixChecks.Of(mix, row.Place));
        }

        var breaks = ImmutableArray.CreateBuilder<StrengthBreak>();
        foreach (var row in FolderTable.Read(folder, FolderFormat.Breaks, scene, findings))
        {
            var specimen = Break(row);
            if (row.Good && !mixes.ContainsKey(specimen.Mix))
                row.Bad("CON-073", "mixes.csv has no mix with this identifier.", "mix", specimen.Mix, "Give an identifier from mixes.csv, or remove the row.");
            if (row.Good) breaks.Add(specimen);
        }

        return ([.. mixes.Values], breaks.ToImmutable());
    }

    private static ConcreteMix Mix(FolderRow row)
    {
        var (cement, water, coarse, fine) = (Content(row, "cement", 50, 1000), Content(row, "water", 50, 400), Content(row, "coarse", 0, 2000), Content(row, "fine", 0, 2000));
        var (air, dose) = (row.Number("air_share"), row.Number("accelerator_dose_share"));
        row.Within("air_share", air, 0, 0.2, Units.One);
        row.Within("accelerator_dose_share", dose, 0, 0.1, Units.One);
        var (datum, energy) = (row.Measure("datum"), row.Number("activation_energy_j_per_mol"));
        row.Within("datum", datum, -20, 10, Units.Celsius);
        row.Within("activation_energy_j_per_mol", energy, 20_000, 90_000, Units.One);
        return new ConcreteMix
        {
            Id = row.Text("id"), Name = row.Text("name"), Class = row.Words<MixClassId>("class"), CementKind = row.Words<CementKind>("cement_kind") ?? default,
            Cement = cement, FlyAsh = Content(row, "fly_ash", 0, 500), Slag = Content(row, "slag", 0, 500), SilicaFume = Content(row, "silica_fume", 0, 100),
            Water = water, Coarse = coarse, Fine = fine, Air = air ?? 0, Accelerator = row.Words<Accelerator>("accelerator") ?? Accelerator.None,
            AcceleratorDose = dose ?? 0, Price = Price(row), Datum = datum, ActivationEnergy = energy,
        };
    }

    private static double Content(FolderRow row, string name, double least, double most)
    {
        var content = row.Measure(name);
        row.Within(name, content, least, most, Units.KilogramPerCubicMetre);
        return content ?? 0;
    }

    /// <summary>Price of a cubic metre; a yard's price is kept to a hundredth of a cent so that it comes back when written.</summary>
    private static decimal? Price(FolderRow row)
    {
        var (metre, yard) = (row.Number("price_per_m3"), row.Number("price_per_yd3"));
        row.Within("price_per_m3", metre, 0, 100_000, Units.One);
        row.Within("price_per_yd3", yard, 0, 100_000, Units.One);
        if (metre is not null && yard is not null) row.Bad("ROAD-017", "The same value is given in two columns.", "price_per_yd3", null, "Leave one of the two prices empty.");
        if (!row.Good) return null;
        return metre is { } m ? (decimal)m : yard is { } y ? decimal.Round((decimal)(y / Yard3), 4) : null;
    }

    private static StrengthBreak Break(FolderRow row)
    {
        var (age, strength, curing) = (row.Number("age_h"), row.Measure("strength"), row.Measure("curing_temp"));
        var (factor, velocity) = (row.Number("factor_c_h"), row.Measure("pulse_velocity"));
        row.Within("age_h", age, 0.25, 100_000, Units.One);
        row.Within("strength", strength, 1e4, 2e8, Units.Megapascal);
        row.Within("curing_temp", curing, -5, 80, Units.Celsius);
        row.Within("factor_c_h", factor, 0.1, 1e7, Units.One);
        row.Within("pulse_velocity", velocity, 300, 6000, Units.MetrePerSecond);
        return new StrengthBreak(row.Text("mix"), row.Words<StrengthKind>("kind") ?? default, age ?? 0, strength ?? 0)
        {
            Curing = curing ?? 23, Factor = factor, IsCheck = row.Words<BreakUse>("use") == BreakUse.Check, PulseVelocity = velocity, Row = row.Place.Row ?? 0,
        };
    }
}
