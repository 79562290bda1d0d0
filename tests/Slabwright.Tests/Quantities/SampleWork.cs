using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Evidence;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;
using Slabwright.Core.Prices;
using Slabwright.Core.Quantities;
using Slabwright.Core.RuleSets;
using Slabwright.Core.Treatments;

namespace Slabwright.Tests.Quantities;

/// <summary>Small roads, repairs and price lists in feet.</summary>
internal static class SampleWork
{
    public const double Foot = 0.3048;

    public static Unit Each { get; } = new("each", Dimension.None, 1);

    public static MeasurementSettings Settings { get; } = new();

    public static JointLimits Joints { get; } = new()
    {
        DowelSpacing = new(12 * 0.0254, SourceRef.CommonPractice),
        LeastDowelDiameter = new(1.25 * 0.0254, SourceRef.CommonPractice),
        DowelIntermediateJoints = new(true, SourceRef.CommonPractice),
        TieBarSpacing = new(30 * 0.0254, SourceRef.CommonPractice),
    };

    public static Road Road(int lanes = 2) => new()
    {
        Name = "Test road",
        Length = 1000 * Foot,
        Stationing = new Stationing { Style = StationStyle.Feet },
        Climate = new Climate(true),
        Lanes = [.. Enumerable.Range(1, lanes).Select(Lane)],
    };

    public static Repair Repair(
        double fromFeet,
        double toFeet,
        double widthFeet = 12,
        int lane = 1,
        string id = "R001",
        LongitudinalFace left = LongitudinalFace.Isolated,
        LongitudinalFace right = LongitudinalFace.Isolated,
        JointDesign design = JointDesign.Dowelled,
        int bars = 11,
        Treatment kind = Treatment.FullDepthRepair,
        bool severed = false)
    {
        var (from, to) = (fromFeet * Foot, toFeet * Foot);
        return new Repair
        {
            Id = id,
            Lane = lane,
            From = from,
            To = to,
            Width = widthFeet * Foot,
            Thickness = 10 * 0.0254,
            Kind = kind,
            Start = new RepairJoint(from, design, false, bars),
            End = new RepairJoint(to, design, false, bars),
            LeftFace = [new FaceStretch(from, to, left, severed)],
            RightFace = [new FaceStretch(from, to, right, severed)],
            DistressIds = ["D1"],
            Reasons = [],
        };
    }

    public static SurfaceWork Surface(Treatment treatment, double lengthFeet, double areaSquareFeet, string id) =>
        new(id, 1, 100 * Foot, (100 + lengthFeet) * Foot, treatment, lengthFeet * Foot, areaSquareFeet * Foot * Foot, ["D9"]);

    public static PayItem Item(PayRole role, Unit unit, decimal price, string? code = null) => new()
    {
        Code = code ?? role.ToString(), Name = role.ToString(), Role = role, Unit = unit, UnitPrice = price,
    };

    /// <summary>One item of every role in US customary units.</summary>
    public static PriceList FullList()
    {
        var items = MeasurementUnits().Select(u => Item(u.Role, u.Unit, 10)).ToImmutableArray();
        return new PriceList("USD", items);
    }

    public static IEnumerable<(PayRole Role, Unit Unit)> MeasurementUnits() =>
        MeasurementRules.All.Select(r => (r.Role, r.Dimension switch
        {
            Dimension.Area => Units.SquareYard,
            Dimension.Length => Units.Foot,
            Dimension.Volume => Units.CubicYard,
            _ => Each,
        }));

    private static Lane Lane(int number) => new()
    {
        Number = number,
        Width = 12 * Foot,
        From = 0,
        To = 1000 * Foot,
        LeftEdge = number == 1 ? LaneEdge.AsphaltShoulder : LaneEdge.TiedLane,
        RightEdge = LaneEdge.TiedConcreteShoulder,
        Joints = [.. Enumerable.Range(0, 51).Select(i => new TransverseJoint(i * 20 * Foot, JointKind.Dowelled))],
        Sections = [new PavementSection(0, 1000 * Foot, PavementKind.JointedPlain, 10 * 0.0254, BaseKind.Granular)],
    };
}
