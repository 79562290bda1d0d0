using System.Collections.Immutable;
using Slabwright.Core.Boundaries;
using Slabwright.Core.Measures;
using Slabwright.Core.Pavement;

namespace Slabwright.Tests.Boundaries;

/// <summary>Seeded random clusters that stir every rule: skew, cracks, ramps, no-cut zones, price classes, tied faces, weights.</summary>
internal static class RandomProblems
{
    private const long Foot = Ticks.PerFoot;

    public static BoundaryProblem Make(int seed, int lanes, int feet, int stepFeet, int mostDemands)
    {
        var random = new Random(seed);
        var money = BoundaryProblem.MoneyPerUnit;
        var tied = random.Next(3) == 0;
        var weights = random.Next(3) > 0;
        return new BoundaryProblem
        {
            StepThousandths = stepFeet * Foot * 1000,
            Limits = Limits(random),
            Prices = new ProblemPrices
            {
                CutRate = Rate(random.Next(2, 8)),
                SealRate = Rate(random.Next(0, 4)),
                IsolationRate = Rate(random.Next(0, 6)),
                TieRate = Rate(random.Next(0, 9)),
                TieFrom = tied ? random.Next(8, 20) * Foot : long.MaxValue,
                LiftPiece = 6 * Foot,
                SpannedJoint = weights ? random.Next(0, 120) * money : 0,
                UnmatchedEnd = weights ? random.Next(0, 80) * money : 0,
            },
            Lanes = [.. Enumerable.Range(0, lanes).Select(n => WithBars(Lane(random, n, lanes, feet, mostDemands), new Random(seed * 31 + n), feet))],
        };
    }

    /// <summary>One lane in four ties an end of short repairs in a reinforced stretch; one in eight has no dowels at all.</summary>
    private static ProblemLane WithBars(ProblemLane lane, Random random, int feet)
    {
        if (random.Next(8) == 0) return lane with { Undowelled = true, DowelledEndCost = 0 };
        if (random.Next(4) > 0) return lane;
        var from = random.Next(0, feet / 2) * Foot;
        return lane with
        {
            TieOneEndUpTo = random.Next(6, 16) * Foot,
            TiedEndCost = random.Next(20, 260) * BoundaryProblem.MoneyPerUnit,
            Reinforced = [new TickSpan(from, from + random.Next(12, feet) * Foot)],
        };
    }

    private static long Rate(int dollarsPerFoot) => dollarsPerFoot * BoundaryProblem.MoneyPerUnit / Foot;

    private static ProblemLimits Limits(Random random) => new()
    {
        LeastLength = random.Next(3, 8) * Foot,
        LeastLengthUndowelled = random.Next(8, 11) * Foot,
        LeastRemnant = random.Next(1, 7) * Foot,
        LeastGap = random.Next(1, 7) * Foot,
        PassDowelled = random.Next(1, 3) * Foot,
        PassOther = 1 * Foot,
        EndAtUndowelled = random.Next(2) == 0,
        LeastPanel = 6 * Foot,
        MatchWithin = 500,
    };

    private static ProblemLane Lane(Random random, int index, int lanes, int feet, int mostDemands)
    {
        var from = random.Next(4) == 0 ? random.Next(0, feet / 3) * Foot : 0;
        var to = (random.Next(4) == 0 ? feet - random.Next(0, feet / 3) : feet) * Foot;
        var money = BoundaryProblem.MoneyPerUnit;
        return new ProblemLane
        {
            Number = index + 1,
            From = from,
            To = to,
            Joints = Joints(random, from, to),
            NoCut = NoCut(random, feet),
            Demands = Demands(random, from, to, mostDemands),
            Unjointed = random.Next(3) == 0 ? [new UnjointedLimit(0, feet * Foot, random.Next(10, 20) * Foot)] : [],
            FixedCost = random.Next(100, 900) * money,
            DowelledEndCost = random.Next(50, 200) * money,
            InnerJointCost = random.Next(50, 250) * money,
            LiftCutCost = random.Next(0, 60) * money,
            Classes = Classes(random),
            LeastPayLength = random.Next(4) == 0 ? random.Next(4, 10) * Foot : 0,
            ExtraRate = Rate(random.Next(0, 5)),
            Left = index > 0 ? new ProblemSide(true, index - 1, Rate(6)) : new ProblemSide(random.Next(2) == 0, -1, Rate(random.Next(2, 9))),
            Right = index + 1 < lanes ? new ProblemSide(true, index + 1, Rate(6)) : new ProblemSide(random.Next(2) == 0, -1, Rate(random.Next(2, 9))),
        };
    }

    private static ImmutableArray<ProblemJoint> Joints(Random random, long from, long to)
    {
        var joints = new List<ProblemJoint> { Square(from, JointKind.PavementEnd) };
        var skew = random.Next(4) == 0 ? random.Next(-2, 3) * Foot : 0;
        var kind = random.Next(3) == 0 ? JointKind.Undowelled : JointKind.Dowelled;
        for (var at = from + random.Next(8, 16) * Foot; at < to - 4 * Foot; at += random.Next(12, 18) * Foot)
        {
            joints.Add(new ProblemJoint(at, at - skew / 2, at + skew / 2, random.Next(12) == 0 ? JointKind.Expansion : kind));
            if (random.Next(4) == 0 && at + 9 * Foot < to)
            {
                var odd = random.Next(2) == 0 ? JointKind.WorkingCrack : JointKind.EarlierRepairEdge;
                joints.Add(Square(at + random.Next(4, 9) * Foot + random.Next(0, 2) * 1000, odd));
            }
        }

        joints.Add(Square(to, JointKind.PavementEnd));
        return [.. joints.OrderBy(j => j.At)];
    }

    private static ProblemJoint Square(long at, JointKind kind) => new(at, at, at, kind);

    private static ImmutableArray<TickSpan> NoCut(Random random, int feet)
    {
        if (random.Next(4) > 0) return [];
        var from = random.Next(0, feet - 12) * Foot;
        return [new TickSpan(from, from + random.Next(4, 12) * Foot)];
    }

    private static ImmutableArray<TickSpan> Demands(Random random, long from, long to, int most)
    {
        var demands = new List<TickSpan>();
        for (var n = random.Next(0, most + 1); n > 0; n--)
        {
            var at = from + (long)(random.NextDouble() * (to - from));
            demands.Add(new TickSpan(at, Math.Min(to, at + (long)(random.NextDouble() * 5 * Foot))));
        }

        var merged = new List<TickSpan>();
        foreach (var demand in demands.OrderBy(d => d.From))
        {
            if (merged.Count > 0 && demand.From <= merged[^1].To)
                merged[^1] = new TickSpan(merged[^1].From, Math.Max(merged[^1].To, demand.To));
            else merged.Add(demand);
        }

        return [.. merged];
    }

    private static ImmutableArray<LengthClass> Classes(Random random)
    {
        var first = random.Next(80, 300);
        if (random.Next(2) == 0) return [new LengthClass(0, Rate(first))];
        var second = first - random.Next(5, first / 2);
        var from = random.Next(6, 16) * Foot + random.Next(0, 2) * 777;
        if (random.Next(2) == 0) return [new LengthClass(0, Rate(first)), new LengthClass(from, Rate(second))];
        return
        [
            new LengthClass(0, Rate(first)), new LengthClass(from, Rate(second)),
            new LengthClass(from + random.Next(6, 20) * Foot, Rate(second - random.Next(1, second / 2))),
        ];
    }
}
