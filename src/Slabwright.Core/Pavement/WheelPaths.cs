namespace Slabwright.Core.Pavement;

/// <summary>Where wheels run in a lane: two paths, even about the lane's middle. Common practice.</summary>
public static class WheelPaths
{
    /// <summary>Width of one wheel path, m.</summary>
    public const double Width = 0.75;

    /// <summary>Distance between the middles of both paths, m.</summary>
    public const double Apart = 1.8;
}
