namespace Slabwright.Core.Numerics.Heat;

/// <summary>What the top of a column of cells meets: heat flux as a function of the temperature of the outer face, at a time set beforehand.</summary>
public interface ISurfaceLaw
{
    /// <summary>Thermal resistance between the body and the outer face, m²K/W: a blanket; 0 for a bare face.</summary>
    double Resistance { get; }

    /// <summary>Sets the time, s.</summary>
    void Set(double time);

    /// <summary>Heat flux into the outer face, W/m²; falls as the face warms.</summary>
    /// <param name="outer">Temperature of the outer face, °C.</param>
    /// <param name="slope">Its derivative by the temperature, W/(m²·K), negative.</param>
    double Flux(double outer, out double slope);
}
