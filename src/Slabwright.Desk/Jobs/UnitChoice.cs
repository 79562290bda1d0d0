using Slabwright.Core.Measures;

namespace Slabwright.Desk.Jobs;

/// <summary>The units a reader has chosen for the screen; the project's own until then. Lives as long as the reader's visit.</summary>
public sealed class UnitChoice
{
    public UnitSystem? Chosen { get; private set; }

    public event Action? Changed;

    public UnitSystem For(UnitSystem project) => Chosen ?? project;

    public void Choose(UnitSystem units)
    {
        Chosen = units;
        Changed?.Invoke();
    }
}
