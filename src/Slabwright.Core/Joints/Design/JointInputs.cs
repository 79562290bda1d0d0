using System.Collections.Immutable;
using System.Globalization;
using Slabwright.Core.Evidence;
using Slabwright.Core.Pavement;

namespace Slabwright.Core.Joints.Design;

/// <summary>The project's settings with the defaults filled in; remembers which defaults were used.</summary>
internal sealed class JointInputs(JointSettings settings, Climate climate)
{
    private readonly Dictionary<string, JointDefault> _used = new(StringComparer.Ordinal);

    public JointSettings Settings => settings;

    public double Modulus => Take(settings.Modulus, JointDefaults.Modulus);

    public double Poisson => Take(settings.Poisson, JointDefaults.Poisson);

    public double Strength => Take(settings.Strength, JointDefaults.Strength);

    public double Rupture => Take(settings.Rupture, JointDefaults.Rupture);

    public double Expansion => Take(settings.Expansion, JointDefaults.Expansion);

    public double Shrinkage => Take(settings.Shrinkage, JointDefaults.Shrinkage);

    public double Drainage => Take(settings.Drainage, JointDefaults.Drainage);

    public double DowelSupport => Take(settings.DowelSupport, JointDefaults.DowelSupport);

    public double SteelModulus => Take(settings.SteelModulus, JointDefaults.SteelModulus);

    public double Coldest => Take(settings.Coldest, JointDefaults.Coldest(climate));

    public double Hottest => Take(settings.Hottest, JointDefaults.Hottest);

    public double DesignYears => Take(settings.DesignYears, JointDefaults.DesignYears);

    public double TyrePressure => Take(settings.TyrePressure, JointDefaults.TyrePressure);

    public double CurbWidth => Take(settings.CurbWidth, JointDefaults.CurbWidth);

    public int GangDrills => (int)Take(settings.GangDrills, JointDefaults.GangDrills);

    public double GangSpacing => Take(settings.GangSpacing, JointDefaults.GangSpacing);

    public BarAnchor Anchor => settings.Anchor ?? BarAnchor.Epoxy;

    public BarCostShares Costs => settings.Costs ?? BarCostShares.Assumption;

    public ImmutableArray<double> Diameters => settings.Diameters.IsEmpty ? JointDefaults.Diameters : [.. settings.Diameters.Order()];

    public ImmutableArray<double> Lengths => settings.Lengths.IsEmpty ? JointDefaults.Lengths : [.. settings.Lengths.Order()];

    public double Reaction(BaseKind kind) => Take(settings.Reaction, JointDefaults.Reaction(kind));

    /// <summary>Notes for every default used so far, in the order of their fields.</summary>
    public IEnumerable<Finding> Notes()
    {
        foreach (var used in _used.Values.OrderBy(d => d.Field, StringComparer.Ordinal).ThenBy(d => d.Name, StringComparer.Ordinal))
            yield return new("JNT-001", FindingLevel.Note, $"Assumed for the joints: {used.Name}.", Place(used.Field), JointWords.Of(used.Value, used.Units),
                $"Set {used.Field} in project.json where it is known.", Source: used.Source.ToString());
        if (settings.Anchor is null)
            yield return new("JNT-001", FindingLevel.Note, "Assumed for the joints: bars anchored with epoxy.", Place("joints.anchor"), "epoxy",
                "Set joints.anchor in project.json where it is known.", Source: SourceRef.CommonPractice.ToString());
        if (settings.Costs is null)
            yield return new("JNT-001", FindingLevel.Note, "Assumed for the joints: how the price of a dowel spreads over other sizes.",
                Place("joints.cost_shares"), string.Create(CultureInfo.InvariantCulture, $"{Costs.Fixed} fixed, {Costs.Hole} hole, {Costs.Steel} steel"),
                "Set joints.cost_shares in project.json from the prices asked for.", Source: SourceRef.CommonPractice.ToString());
    }

    /// <summary>Notes that a default was used and gives its value.</summary>
    public double Use(JointDefault value) => Take(null, value);

    private double Take(double? given, JointDefault otherwise)
    {
        if (given is { } known) return known;
        _used[otherwise.Field + otherwise.Name] = otherwise;
        return otherwise.Value;
    }

    private static FindingPlace Place(string field) => new("project.json", null, field);
}
