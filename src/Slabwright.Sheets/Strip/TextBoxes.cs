namespace Slabwright.Sheets.Strip;

/// <summary>Boxes already taken by texts, so that none is written over another.</summary>
internal sealed class TextBoxes
{
    private readonly List<(double Left, double Top, double Right, double Bottom)> taken = [];

    /// <summary>Takes a box if it is free.</summary>
    public bool TryTake(double left, double top, double width, double height)
    {
        if (!IsFree(left, top, width, height)) return false;
        taken.Add((left, top, left + width, top + height));
        return true;
    }

    /// <summary>Takes a box whether or not something lies there.</summary>
    public void Take(double left, double top, double width, double height) => taken.Add((left, top, left + width, top + height));

    /// <summary>True when nothing lies in the box.</summary>
    public bool IsFree(double left, double top, double width, double height)
    {
        foreach (var box in taken)
        {
            if (left < box.Right && box.Left < left + width && top < box.Bottom && box.Top < top + height) return false;
        }

        return true;
    }
}
