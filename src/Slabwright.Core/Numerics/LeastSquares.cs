namespace Slabwright.Core.Numerics;

/// <summary>A nonlinear least-squares fit.</summary>
/// <param name="Parameters">Parameters at the least sum of squares.</param>
/// <param name="SumOfSquares">The least sum of squares.</param>
/// <param name="Covariance">Covariance of the parameters for residuals of unit variance, row by row: (JᵀJ)⁻¹; empty when singular.</param>
/// <param name="Settled">True when the steps came to rest.</param>
public sealed record LeastSquaresFit(double[] Parameters, double SumOfSquares, double[] Covariance, bool Settled);

/// <summary>Nonlinear least squares of a few parameters.</summary>
public static class LeastSquares
{
    private const int MostSteps = 500;

    /// <summary>Fits by damped Gauss–Newton steps (Levenberg, Marquardt) with derivatives by central differences.</summary>
    /// <remarks>Source: Marquardt 1963 (from memory), scaled by the diagonal; checked against MathNet.Numerics and published fits.</remarks>
    /// <param name="model">Value of the model for parameters and a data index.</param>
    /// <param name="values">Data.</param>
    /// <param name="start">First guess.</param>
    public static LeastSquaresFit Fit(Func<double[], int, double> model, IReadOnlyList<double> values, IReadOnlyList<double> start)
    {
        var parameters = start.ToArray();
        var sum = Sum(model, values, parameters);
        var damping = 1e-3;
        var settled = false;
        for (var step = 0; step < MostSteps && !settled; step++)
        {
            var (normal, gradient) = Normals(model, values, parameters);
            var improved = false;
            while (damping < 1e12 && !improved)
            {
                if (Step(normal, gradient, damping) is { } move)
                {
                    var trial = parameters.Zip(move, (p, m) => p + m).ToArray();
                    var trialSum = Sum(model, values, trial);
                    if (trialSum <= sum)
                    {
                        settled = sum - trialSum <= 1e-15 * sum && move.Zip(parameters, (m, p) => Math.Abs(m) <= 1e-10 * (Math.Abs(p) + 1e-10)).All(b => b);
                        (parameters, sum, improved) = (trial, trialSum, true);
                        damping = Math.Max(damping / 10, 1e-12);
                        continue;
                    }
                }

                damping *= 10;
            }

            settled |= !improved;
        }

        return new LeastSquaresFit(parameters, sum, Inverse(Normals(model, values, parameters).Normal, parameters.Length), settled);
    }

    private static double Sum(Func<double[], int, double> model, IReadOnlyList<double> values, double[] parameters)
    {
        var sum = 0.0;
        for (var i = 0; i < values.Count; i++)
        {
            var residual = values[i] - model(parameters, i);
            sum += residual * residual;
        }

        return double.IsFinite(sum) ? sum : double.PositiveInfinity;
    }

    private static (double[,] Normal, double[] Gradient) Normals(
        Func<double[], int, double> model, IReadOnlyList<double> values, double[] parameters)
    {
        var count = parameters.Length;
        var (normal, gradient, row) = (new double[count, count], new double[count], new double[count]);
        for (var i = 0; i < values.Count; i++)
        {
            var residual = values[i] - model(parameters, i);
            for (var j = 0; j < count; j++) row[j] = Slope(model, parameters, i, j);
            for (var j = 0; j < count; j++)
            {
                gradient[j] += row[j] * residual;
                for (var k = 0; k < count; k++) normal[j, k] += row[j] * row[k];
            }
        }

        return (normal, gradient);
    }

    private static double Slope(Func<double[], int, double> model, double[] parameters, int index, int j)
    {
        var value = parameters[j];
        var step = 1e-6 * (Math.Abs(value) + 1e-6);
        parameters[j] = value + step;
        var up = model(parameters, index);
        parameters[j] = value - step;
        var down = model(parameters, index);
        parameters[j] = value;
        return (up - down) / (2 * step);
    }

    private static double[]? Step(double[,] normal, double[] gradient, double damping)
    {
        var count = gradient.Length;
        var matrix = new double[count, count + 1];
        for (var j = 0; j < count; j++)
        {
            for (var k = 0; k < count; k++) matrix[j, k] = normal[j, k];
            matrix[j, j] += damping * Math.Max(normal[j, j], 1e-300);
            matrix[j, count] = gradient[j];
        }

        if (!Eliminate(matrix, count)) return null;
        var move = new double[count];
        for (var j = 0; j < count; j++) move[j] = matrix[j, count];
        return move;
    }

    private static double[] Inverse(double[,] normal, int count)
    {
        var matrix = new double[count, 2 * count];
        for (var j = 0; j < count; j++)
        {
            for (var k = 0; k < count; k++) matrix[j, k] = normal[j, k];
            matrix[j, count + j] = 1;
        }

        if (!Eliminate(matrix, count)) return [];
        var inverse = new double[count * count];
        for (var j = 0; j < count; j++)
            for (var k = 0; k < count; k++) inverse[j * count + k] = matrix[j, count + k];
        return inverse;
    }

    /// <summary>Gauss–Jordan elimination with pivots by column; false when a pivot vanishes beside its row.</summary>
    private static bool Eliminate(double[,] matrix, int count)
    {
        var width = matrix.GetLength(1);
        for (var column = 0; column < count; column++)
        {
            var pivot = column;
            for (var row = column + 1; row < count; row++)
                if (Math.Abs(matrix[row, column]) > Math.Abs(matrix[pivot, column])) pivot = row;
            var head = matrix[pivot, column];
            if (!double.IsFinite(head) || Math.Abs(head) < 1e-280) return false;
            for (var k = 0; k < width; k++)
                (matrix[column, k], matrix[pivot, k]) = (matrix[pivot, k] / head, pivot == column ? matrix[column, k] / head : matrix[column, k]);
            for (var row = 0; row < count; row++)
            {
                var factor = matrix[row, column];
                if (row == column || factor == 0) continue;
                for (var k = 0; k < width; k++) matrix[row, k] -= factor * matrix[column, k];
            }
        }

        return true;
    }
}
