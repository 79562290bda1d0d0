namespace Slabwright.Core.Numerics;

/// <summary>Small dense symmetric systems.</summary>
public static class DenseCholesky
{
    /// <summary>Solves a symmetric positive definite system; the matrix is overwritten.</summary>
    /// <param name="matrix">Row by row; the lower half is read.</param> <param name="right">Right-hand side.</param>
    /// <returns>The solution.</returns>
    /// <exception cref="ArithmeticException">The matrix is not positive definite.</exception>
    public static double[] Solve(double[] matrix, double[] right)
    {
        var size = right.Length;
        var solution = (double[])right.Clone();
        for (var j = 0; j < size; j++)
        {
            for (var i = j; i < size; i++)
            {
                var sum = matrix[i * size + j];
                for (var k = 0; k < j; k++) sum -= matrix[i * size + k] * matrix[j * size + k];
                if (i > j) matrix[i * size + j] = sum / matrix[j * size + j];
                else if (sum > 0) matrix[j * size + j] = Math.Sqrt(sum);
                else throw new ArithmeticException("The matrix is not positive definite.");
            }
        }

        for (var i = 0; i < size; i++)
        {
            for (var k = 0; k < i; k++) solution[i] -= matrix[i * size + k] * solution[k];
            solution[i] /= matrix[i * size + i];
        }

        for (var i = size - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < size; k++) solution[i] -= matrix[k * size + i] * solution[k];
            solution[i] /= matrix[i * size + i];
        }

        return solution;
    }
}
