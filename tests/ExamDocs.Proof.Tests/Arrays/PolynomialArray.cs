namespace ExamDocs.Proof.Tests.Arrays;

/// <summary>
/// An orthogonal array from polynomials over the numbers modulo a prime (K. A. Bush, Annals of Mathematical Statistics
/// 23, 1952): row n is the polynomial of degree under the strength whose coefficients are the digits of n, column x its
/// value at x. Any columns as many as the strength show every combination once. Values are folded onto the levels wanted.
/// </summary>
internal sealed class PolynomialArray(int columns, int levels, int strength)
{
    private readonly int _prime = Enumerable.Range(Math.Max(columns, levels), 100).First(IsPrime);

    public int Columns => columns;

    public long Rows { get; } = (long)Math.Pow(Enumerable.Range(Math.Max(columns, levels), 100).First(IsPrime), strength);

    public int[] Row(long number)
    {
        Span<int> coefficients = stackalloc int[strength];
        for (var i = 0; i < strength; i++)
        {
            coefficients[i] = (int)(number % _prime);
            number /= _prime;
        }

        var row = new int[columns];
        for (var x = 0; x < columns; x++)
        {
            var value = 0;
            for (var i = strength - 1; i >= 0; i--)
            {
                value = ((value * x) + coefficients[i]) % _prime;
            }

            row[x] = value % levels;
        }

        return row;
    }

    private static bool IsPrime(int n) => Enumerable.Range(2, Math.Max(0, (int)Math.Sqrt(n) - 1)).All(divisor => n % divisor != 0);
}
