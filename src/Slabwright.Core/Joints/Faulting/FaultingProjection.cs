using System.Collections.Immutable;

namespace Slabwright.Core.Joints.Faulting;

/// <summary>The bars of a joint as the faulting model knows them.</summary>
/// <param name="Diameter">d, m.</param> <param name="Spacing">s, m.</param>
/// <param name="New">Dimensionless stiffness when new.</param> <param name="Worn">Dimensionless stiffness worn bars tend to.</param>
public sealed record FaultingBars(double Diameter, double Spacing, double New, double Worn)
{
    /// <summary>Bars of a size by the model's own formulas, which take them about 12 in apart.</summary>
    /// <param name="diameter">d, m.</param> <param name="spacing">s, m.</param> <param name="thickness">Slab thickness, m.</param>
    public static FaultingBars OfSize(double diameter, double spacing, double thickness) =>
        new(diameter, spacing, JointWear.NewBars(diameter, thickness), JointWear.WornBars(diameter, thickness));
}

/// <summary>One load class at the corner of a slab.</summary>
/// <param name="FreeDeflection">Deflection of a free corner under it, m; the two sides of a joint share it between them.</param>
/// <param name="PerMonth">Passes a month in the first year.</param>
public readonly record struct CornerLoad(double FreeDeflection, double PerMonth);

/// <summary>What a joint goes through month by month. SI.</summary>
public sealed record FaultingCase
{
    /// <summary>Coefficients of the model.</summary>
    public required FaultingCoefficients Coefficients { get; init; }

    /// <summary>The place.</summary>
    public required FaultingSite Site { get; init; }

    /// <summary>Modulus of foundation reaction, Pa/m.</summary>
    public required double Reaction { get; init; }

    /// <summary>Slab thickness, m.</summary>
    public required double Thickness { get; init; }

    /// <summary>Compressive strength of the concrete, Pa.</summary>
    public required double Strength { get; init; }

    /// <summary>Bars, or null for a joint without.</summary>
    public required FaultingBars? Bars { get; init; }

    /// <summary>True where the faces interlock; a sawn repair face against new concrete does little.</summary>
    public required bool Interlock { get; init; }

    /// <summary>Mean opening of the joint, m.</summary>
    public required double Opening { get; init; }

    /// <summary>Load transfer by the base alone, share: 0.20 aggregate, 0.30 asphalt-treated, 0.40 cement-treated (from memory).</summary>
    public required double BaseTransfer { get; init; }

    /// <summary>Load classes.</summary>
    public required ImmutableArray<CornerLoad> Loads { get; init; }

    /// <summary>Growth of traffic a year, share.</summary>
    public required double Growth { get; init; }
}

/// <summary>One month of a joint's life.</summary>
/// <param name="Month">Faulting, its greatest value and the month's energy.</param>
/// <param name="Transfer">Load transfer by deflection during the month, share.</param>
/// <param name="BarDamage">Damage of the bars at the end of the month.</param>
public readonly record struct ProjectedMonth(FaultingMonth Month, double Transfer, double BarDamage);

/// <summary>Faulting of a joint over the years: load transfer, energy, wear and faulting of each month lead to the next.</summary>
/// <remarks>
/// Source: NCHRP 1-37A part 3 ch. 4 (from memory). Deflections come from the free corner by the sum rule of
/// <see cref="LoadTransfer.LoadedSide"/>; steps are integrated. Use it to rank alternatives: the coefficients were fitted with another slab model.
/// </remarks>
public static class FaultingProjection
{
    /// <summary>Works out so many months.</summary>
    public static ImmutableArray<ProjectedMonth> Run(FaultingCase joint, int months)
    {
        var result = ImmutableArray.CreateBuilder<ProjectedMonth>(months);
        var state = new FaultingMonth(0, 0, FaultingModel.FirstGreatest(joint.Coefficients, joint.Site));
        var (damage, capacity) = (0.0, joint.Interlock ? JointWear.FaceCapacity(joint.Thickness, joint.Opening) : 0);
        for (var month = 0; month < months; month++)
        {
            var traffic = Math.Pow(1 + joint.Growth, month / 12);
            var bars = joint.Bars is { } b ? JointWear.Bars(b.New, b.Worn, damage) : 0;
            var faces = joint.Interlock ? JointWear.Faces(capacity) : 0;
            var transfer = JointWear.Together(LoadTransfer.ByCrovetti(bars), LoadTransfer.ByCrovetti(faces), joint.BaseTransfer);
            var (energy, worn, lost) = Load(joint, transfer, bars, faces, traffic);
            state = FaultingModel.Next(joint.Coefficients, joint.Site, state, energy, FaultingStep.Integrated, FaultingModel.PerMillion);
            damage += worn;
            capacity = Math.Max(0, capacity - lost);
            result.Add(new ProjectedMonth(state, transfer, damage));
        }

        return result.MoveToImmutable();
    }

    /// <summary>Years until a faulting is reached, between months by proportion; infinity when not within the months given.</summary>
    /// <param name="months">From <see cref="Run"/>.</param> <param name="limit">Faulting, m.</param>
    public static double YearsTo(ImmutableArray<ProjectedMonth> months, double limit)
    {
        var before = 0.0;
        for (var i = 0; i < months.Length; i++)
        {
            var now = months[i].Month.Faulting;
            if (now >= limit) return (i + (now > before ? (limit - before) / (now - before) : 0)) / 12;
            before = now;
        }

        return double.PositiveInfinity;
    }

    private static (double Energy, double BarDamage, double FaceLoss) Load(
        FaultingCase joint, double transfer, double bars, double faces, double traffic)
    {
        var (energy, damage, loss) = (0.0, 0.0, 0.0);
        foreach (var load in joint.Loads)
        {
            var passes = load.PerMonth * traffic;
            var loaded = LoadTransfer.LoadedSide(load.FreeDeflection, transfer);
            var unloaded = LoadTransfer.UnloadedSide(load.FreeDeflection, transfer);
            energy += passes * FaultingModel.Energy(joint.Reaction, loaded, unloaded);
            if (joint.Bars is { } b)
            {
                damage += JointWear.BarDamage(joint.Coefficients.C8, bars, loaded - unloaded, b.Spacing, passes, b.Diameter, joint.Strength);
            }

            if (joint.Interlock) loss += passes * JointWear.FaceLoss(joint.Thickness, joint.Opening, faces, loaded - unloaded);
        }

        return (energy, damage, loss);
    }
}
