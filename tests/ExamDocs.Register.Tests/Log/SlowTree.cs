using System.Security.Cryptography;

namespace ExamDocs.Register.Tests.Log;

/// <summary>
/// The definitions of RFC 6962 section 2.1 written down as they stand, with a list for each D and no thought of speed: MTH,
/// PATH and SUBPROOF.
/// </summary>
internal static class SlowTree
{
    public static byte[] Mth(byte[][] d) =>
        d.Length switch
        {
            0 => SHA256.HashData([]),
            1 => SHA256.HashData([0, .. d[0]]),
            var n => SHA256.HashData([1, .. Mth(d[..K(n)]), .. Mth(d[K(n)..])]),
        };

    public static byte[][] Path(int m, byte[][] d)
    {
        var n = d.Length;
        if (n == 1)
            return [];
        return m < K(n) ? [.. Path(m, d[..K(n)]), Mth(d[K(n)..])] : [.. Path(m - K(n), d[K(n)..]), Mth(d[..K(n)])];
    }

    public static byte[][] Proof(int m, byte[][] d) => SubProof(m, d, b: true);

    private static byte[][] SubProof(int m, byte[][] d, bool b)
    {
        var n = d.Length;
        if (m == n)
            return b ? [] : [Mth(d)];
        return m <= K(n) ? [.. SubProof(m, d[..K(n)], b), Mth(d[K(n)..])] : [.. SubProof(m - K(n), d[K(n)..], b: false), Mth(d[..K(n)])];
    }

    private static int K(int n)
    {
        var k = 1;
        while (k * 2 < n)
            k *= 2;
        return k;
    }
}
