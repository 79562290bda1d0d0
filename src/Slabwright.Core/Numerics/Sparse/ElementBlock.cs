namespace Slabwright.Core.Numerics.Sparse;

/// <summary>
/// A small dense symmetric matrix that adds to the unknowns it names: a finite element, a spring or a bar. The system's matrix is the sum
/// of its blocks and is never written out.
/// </summary>
/// <param name="Unknowns">Index of each row's unknown, 0 or more; −1 for a row that is held and left out.</param>
/// <param name="Values">The matrix, row by row, with as many rows as unknowns.</param>
/// <param name="X">Place in the plane, used only to order the elimination.</param>
/// <param name="Y">Place in the plane, used only to order the elimination.</param>
public sealed record ElementBlock(int[] Unknowns, double[] Values, double X, double Y);
