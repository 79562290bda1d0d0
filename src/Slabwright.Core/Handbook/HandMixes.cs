using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Concrete.Maturity;
using Slabwright.Core.Concrete.Mixes;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;

namespace Slabwright.Core.Handbook;

/// <summary>Mixes as typed: published ones by name or class, or by their contents; what is not given is filled in and said.</summary>
internal static class HandMixes
{
    /// <summary>Taken where neither mix nor user says, all common practice: water–cement ratio, air, and share of the aggregate that is coarse, by volume.</summary>
    private const double WaterCement = 0.40;

    private const double Air = 0.06;
    private const double CoarseShare = 0.58;

    /// <summary>The mixes, each with reasons for what was filled in.</summary>
    public static ImmutableArray<(ConcreteMix Mix, ImmutableArray<Reason> Reasons)> Of(HandReading reading)
    {
        var names = (reading.Text("mix") ?? "").Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var own = reading.Number("cement") is not null;
        var published = names.Select(n => (Name: n, Rows: Published(n))).ToArray();
        if (published.Length > 1 || (published.Length == 1 && published[0].Rows.Length > 1))
        {
            foreach (var key in HandInputs.Numbers.Take(11).Skip(2).Select(n => n.Key).Where(reading.Has).Order(StringComparer.Ordinal))
                reading.Add("CON-137", "Contents are given with several mixes.", key, reading.Text("mix"), "Ask for one mix by its contents, or for several in a folder by --mixes.");
        }

        foreach (var unknown in published.Where(p => p.Rows.IsEmpty && !(own && published.Length == 1)))
        {
            reading.Add("CON-130", "No published mix or class has this name, and its contents are not given.", "mix", unknown.Name,
                "Use one of: " + string.Join(", ", PublishedMixes.All.Select(m => m.Name)) + "; or of the classes " + TradeWords.All<MixClassId>() + "; or give --cement.");
        }

        if (names.Length == 0 && !own) reading.Add("CON-136", "No mix is given.", "mix", null, "Name published ones, e.g. --mix \"Class FS\", give --cement and --water, or a folder by --mixes.");
        if (reading.IsWrong) return [];
        var rows = published.SelectMany(p => p.Rows).Distinct().ToArray();
        return rows.Length == 0 ? [Made(names.FirstOrDefault() ?? "by hand", null, reading)] : [.. rows.Select(r => Made(r.Name, r, reading))];
    }

    /// <summary>Parts of a mix by absolute volume.</summary>
    public static ImmutableArray<HandVolume> Volumes(ConcreteMix mix)
    {
        var d = mix.Densities;
        (string, double, double)[] parts =
        [
            ("cement", mix.Cement, d.Cement), ("fly ash", mix.FlyAsh, d.FlyAsh), ("slag", mix.Slag, d.Slag), ("silica fume", mix.SilicaFume, d.SilicaFume),
            ("water", mix.Water, 1), ("coarse aggregate", mix.Coarse, d.Coarse), ("fine aggregate", mix.Fine, d.Fine),
        ];
        return [.. parts.Where(p => p.Item2 > 0).Select(p => new HandVolume(p.Item1, p.Item2, p.Item3, AbsoluteVolume.Of(p.Item2, p.Item3))), new("air", null, null, mix.Air)];
    }

    /// <summary>Breaks of the mixes as typed.</summary>
    public static ImmutableArray<StrengthBreak> Breaks(HandReading reading, IReadOnlyList<ConcreteMix> mixes)
    {
        if (reading.Text("breaks") is not { } list) return [];
        var kind = reading.Word<StrengthKind>("breaks-kind");
        var breaks = ImmutableArray.CreateBuilder<StrengthBreak>();
        foreach (var typed in BreakText.Read(list, reading.System, "breaks", reading.Findings))
        {
            var mix = typed.Mix is null ? (mixes.Count == 1 ? mixes[0] : null) : mixes.FirstOrDefault(m => m.Id.Equals(typed.Mix, StringComparison.OrdinalIgnoreCase));
            if (mix is null)
            {
                reading.Add("CON-131", "The breaks do not say which mix they are of.", "breaks", typed.Mix ?? list, "Write the mix before a colon, one of: " + string.Join(", ", mixes.Select(m => m.Id)) + ".");
                return [];
            }

            breaks.Add(new StrengthBreak(mix.Id, kind, typed.Hours, typed.Strength) { Curing = typed.Temperature ?? reading["curing"] });
        }

        return breaks.ToImmutable();
    }

    /// <summary>The curve given by its constants; null where none is, or where it cannot be read.</summary>
    public static MixCurve? Curve(HandReading reading, IReadOnlyList<ConcreteMix> mixes)
    {
        if (reading.Text("curve") is not { } text) return null;
        if (reading.Has("breaks")) reading.Add("CON-137", "Both breaks and the constants of a curve are given.", "curve", text, "Leave one of them out.");
        if (mixes.Count > 1) reading.Add("CON-135", "A curve by its constants is for one mix.", "curve", text, "Ask for one mix, or give breaks of each.");
        if (reading.Number("first-tested") is not { } first)
        {
            reading.Add("CON-135", "A curve by its constants says nothing of how young its specimens were.", "first-tested", null, "Give the age of the youngest, e.g. --first-tested \"4 h\".");
            return null;
        }

        if (mixes.Count != 1) return null;
        var kind = reading.Word<StrengthKind>("breaks-kind");
        var scale = MixCurves.ScaleOf(mixes[0], MaturityKind.EquivalentAge);
        var parts = text.Split(';', StringSplitOptions.TrimEntries);
        if (!TradeWords.TryRead<StrengthForm>(parts[0], out var form) || Constants(form, parts[1..], reading.System) is not { } constants)
        {
            reading.Add("CON-135", "The strength curve cannot be read.", "curve", text,
                "Write form, end strength and constants over hours at the reference temperature: \"hyperbolic; 5600 psi; 0.30\", \"hyperbolic from set; 5600 psi; 0.30; 3\" or \"exponential; 5600 psi; 8; 0.9\".");
            return null;
        }

        return new MixCurve(mixes[0].Id, new StrengthCurve
        {
            Kind = kind, Form = form, Scale = scale, Parameters = constants, FirstTested = first / HandInputs.Hour, Origin = CurveOrigin.Measured, LogSpread = reading["curve-error"],
            Sentence = $"{StrengthCurveFit.Words(form)} curve by the constants given".Replace(", curve", " curve", StringComparison.Ordinal),
        }, [], []);
    }

    /// <summary>Prices of ingredients; empty where none is typed.</summary>
    public static ImmutableArray<IngredientPrice> Prices(HandReading reading)
    {
        var prices = ImmutableArray.CreateBuilder<IngredientPrice>();
        foreach (var item in (reading.Text("ingredient-prices") ?? "").Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var space = item.LastIndexOf(' ');
            if (space > 0 && TradeWords.TryRead<Ingredient>(item[..space].Trim(), out var ingredient)
                && decimal.TryParse(item[space..], NumberStyles.Number, CultureInfo.InvariantCulture, out var price) && price >= 0)
                prices.Add(new(ingredient, null, price / (decimal)HandInputs.KilogramsOfPrice(reading.System)));
            else
                reading.Add("CON-136", "This is not an ingredient with its price.", "ingredient-prices", item, $"Write the ingredient and its price, one of: {TradeWords.All<Ingredient>()}.");
        }

        return prices.ToImmutable();
    }

    private static ImmutableArray<PublishedMix> Published(string name)
    {
        ImmutableArray<PublishedMix> named = [.. PublishedMixes.All.Where(m => m.Name.Equals(name, StringComparison.OrdinalIgnoreCase))];
        if (!named.IsEmpty) return named;
        return TradeWords.TryRead<MixClassId>(name, out var mixClass) ? [.. PublishedMixes.Of(mixClass)] : [];
    }

    private static (ConcreteMix, ImmutableArray<Reason>) Made(string id, PublishedMix? row, HandReading reading)
    {
        var reasons = ImmutableArray.CreateBuilder<Reason>();
        var source = row?.Source ?? SourceRef.CommonPractice;
        if (row is not null) reasons.Add(new("published mix", row.Says, row.Source));
        var cement = Take("cement", row?.LeastCement, 0, "least cement of the publication");
        var binder = cement + (reading.Number("fly-ash") ?? 0) + (reading.Number("slag") ?? 0) + (reading.Number("silica-fume") ?? 0);
        var water = Take("water", row?.WaterCement * binder, WaterCement * binder, row?.WaterCement is null ? "water–cement ratio 0.40" : "greatest water–cement ratio of the publication");
        var air = Take("air", row is { LeastAir: { } least, MostAir: { } most } ? (least + most) / 2 : null, Air, row?.LeastAir is null ? "air 6 %" : "middle of the air published");
        var kind = reading.Has("cement-kind") ? reading.Word<CementKind>("cement-kind") : row?.Cements[0] ?? CementKind.TypeI;
        if (!reading.Has("cement-kind")) reasons.Add(new("cement", $"{TradeWords.Of(kind)} taken{(row?.Cements.Length > 1 ? ", the first of those published" : "")}.", source));
        var accelerator = reading.Has("accelerator") ? reading.Word<Accelerator>("accelerator") : row?.Accelerator ?? Accelerator.None;
        var dose = reading.Number("dose") ?? row?.AcceleratorDose ?? 0;
        if (accelerator != Accelerator.None && dose == 0) reasons.Add(new("accelerator", "Its dose is not published: none is reckoned with.", source));
        var mix = new ConcreteMix
        {
            Id = id, Name = id, Class = row?.Class, CementKind = kind, Cement = cement, FlyAsh = reading.Number("fly-ash") ?? 0, Slag = reading.Number("slag") ?? 0, SilicaFume = reading.Number("silica-fume") ?? 0,
            Water = water, Air = air, Accelerator = accelerator, AcceleratorDose = dose, Coarse = 0, Fine = 0, Source = row?.Source ?? SourceRef.Project,
            Price = reading.Number("price") is { } price ? HandInputs.PriceOfCubicMetre(price, reading.System) : null,
            ActivationEnergy = reading.Number("activation-energy"), Datum = reading.Number("datum"),
        };
        return (WithAggregate(mix, reading.Number("coarse") ?? row?.Coarse, reading.Number("fine") ?? row?.Fine, reasons), reasons.ToImmutable());

        double Take(string key, double? published, double usual, string how)
        {
            if (reading.Number(key) is { } given) return given;
            reasons.Add(new(key, $"Not given: {how}.", published is null ? SourceRef.CommonPractice : source));
            return published ?? usual;
        }
    }

    /// <summary>Aggregate that fills the volume left, 58 % of it coarse, where neither or one is given.</summary>
    private static ConcreteMix WithAggregate(ConcreteMix mix, double? coarse, double? fine, ImmutableArray<Reason>.Builder reasons)
    {
        if (coarse is { } c && fine is { } f) return mix with { Coarse = c, Fine = f };
        var left = 1 - mix.Air - Volumes(mix with { Air = 0 }).Sum(v => v.Volume);
        var (density, d) = (AbsoluteVolume.WaterDensity, mix.Densities);
        var rocks = coarse ?? (fine is { } sand ? Math.Max(0, left - AbsoluteVolume.Of(sand, d.Fine)) : CoarseShare * left) * d.Coarse * density;
        var sands = fine ?? Math.Max(0, left - AbsoluteVolume.Of(rocks, d.Coarse)) * d.Fine * density;
        reasons.Add(new("aggregate", "Fills the volume that is left; 58 % of it coarse where neither is given.", SourceRef.CommonPractice));
        return mix with { Coarse = rocks, Fine = sands };
    }

    private static ImmutableArray<double>? Constants(StrengthForm form, string[] parts, UnitSystem system)
    {
        if (parts.Length != StrengthForms.ParameterCount(form)) return null;
        var constants = ImmutableArray.CreateBuilder<double>();
        for (var i = 0; i < parts.Length; i++)
        {
            var strength = i == 0 || form == StrengthForm.Logarithmic;
            if (MeasureText.Read(parts[i], strength ? Entry.Stress.In(system) : Units.One, out var value) != MeasureReading.Read || (value <= 0 && form != StrengthForm.Logarithmic)) return null;
            constants.Add(value);
        }

        return constants.ToImmutable();
    }
}
