using System.Globalization;

namespace ExamDocs.Core.Tests.Measurement;

/// <summary>
/// Data with certified answers from the Statistical Reference Datasets of the National Institute of Standards and
/// Technology, U.S. Department of Commerce (NIST StRD, itl.nist.gov/div898/strd; public domain).
/// </summary>
internal static class ReferenceData
{
    public static double[] NorrisX { get; } =
        Numbers(
            """
            0.2 337.4 118.2 884.6 10.1 226.5 666.3 996.3 448.6 777.0 558.2 0.4 0.6 775.5 666.9 338.0 447.5 11.6 556.0
            228.1 995.8 887.6 120.2 0.3 0.3 556.8 339.1 887.2 999.0 779.0 11.1 118.3 229.2 669.1 448.9 0.5
            """
        );

    public static double[] NorrisY { get; } =
        Numbers(
            """
            0.1 338.8 118.1 888.0 9.2 228.1 668.5 998.5 449.1 778.9 559.2 0.3 0.1 778.1 668.8 339.3 448.9 10.8 557.7 228.3
            998.0 888.8 119.6 0.3 0.6 557.6 339.3 888.0 998.5 778.9 10.2 117.6 228.9 668.4 449.2 0.2
            """
        );

    public static double[] Michelso { get; } =
        Numbers(
            """
            299.85 299.74 299.90 300.07 299.93 299.85 299.95 299.98 299.98 299.88 300.00 299.98 299.93 299.65 299.76
            299.81 300.00 300.00 299.96 299.96 299.96 299.94 299.96 299.94 299.88 299.80 299.85 299.88 299.90 299.84
            299.83 299.79 299.81 299.88 299.88 299.83 299.80 299.79 299.76 299.80 299.88 299.88 299.88 299.86 299.72
            299.72 299.62 299.86 299.97 299.95 299.88 299.91 299.85 299.87 299.84 299.84 299.85 299.84 299.84 299.84
            299.89 299.81 299.81 299.82 299.80 299.77 299.76 299.74 299.75 299.76 299.91 299.92 299.89 299.86 299.88
            299.72 299.84 299.85 299.85 299.78 299.89 299.84 299.78 299.81 299.76 299.81 299.79 299.81 299.82 299.85
            299.87 299.87 299.81 299.74 299.81 299.94 299.95 299.80 299.81 299.87
            """
        );

    public static double[] Mavro { get; } =
        Numbers(
            """
            2.00180 2.00170 2.00180 2.00190 2.00180 2.00170 2.00150 2.00140 2.00150 2.00150 2.00170 2.00180 2.00180
            2.00190 2.00190 2.00210 2.00200 2.00160 2.00140 2.00130 2.00130 2.00150 2.00150 2.00160 2.00150 2.00140
            2.00130 2.00140 2.00150 2.00140 2.00150 2.00160 2.00150 2.00160 2.00190 2.00200 2.00200 2.00210 2.00220
            2.00230 2.00240 2.00250 2.00270 2.00260 2.00260 2.00260 2.00270 2.00260 2.00250 2.00240
            """
        );

    public static double[] Lew { get; } =
        Numbers(
            """
            -213 -564 -35 -15 141 115 -420 -360 203 -338 -431 194 -220 -513 154 -125 -559 92 -21 -579 -52 99 -543 -175 162
            -457 -346 204 -300 -474 164 -107 -572 -8 83 -541 -224 180 -420 -374 201 -236 -531 83 27 -564 -112 131 -507
            -254 199 -311 -495 143 -46 -579 -90 136 -472 -338 202 -287 -477 169 -124 -568 17 48 -568 -135 162 -430 -422
            172 -74 -577 -13 92 -534 -243 194 -355 -465 156 -81 -578 -64 139 -449 -384 193 -198 -538 110 -44 -577 -6 66
            -552 -164 161 -460 -344 205 -281 -504 134 -28 -576 -118 156 -437 -381 200 -220 -540 83 11 -568 -160 172 -414
            -408 188 -125 -572 -32 139 -492 -321 205 -262 -504 142 -83 -574 0 48 -571 -106 137 -501 -266 190 -391 -406 194
            -186 -553 83 -13 -577 -49 103 -515 -280 201 300 -506 131 -45 -578 -80 138 -462 -361 201 -211 -554 32 74 -533
            -235 187 -372 -442 182 -147 -566 25 68 -535 -244 194 -351 -463 174 -125 -570 15 72 -550 -190 172 -424 -385 198
            -218 -536 96
            """
        );

    public static double[] NumAcc1 { get; } = [10000001, 10000003, 10000002];

    public static double[] NumAcc2 { get; } = Alternating(1.2, 1.1, 1.3);

    public static double[] NumAcc3 { get; } = Alternating(1000000.2, 1000000.1, 1000000.3);

    public static double[] NumAcc4 { get; } = Alternating(10000000.2, 10000000.1, 10000000.3);

    public static double[] Of(string set) =>
        set switch
        {
            nameof(Michelso) => Michelso,
            nameof(Mavro) => Mavro,
            nameof(Lew) => Lew,
            nameof(NumAcc1) => NumAcc1,
            nameof(NumAcc2) => NumAcc2,
            nameof(NumAcc3) => NumAcc3,
            nameof(NumAcc4) => NumAcc4,
            _ => throw new ArgumentOutOfRangeException(nameof(set), set, "no such set"),
        };

    private static double[] Alternating(double first, double low, double high) =>
        [first, .. Enumerable.Range(0, 1000).Select(i => i % 2 == 0 ? low : high)];

    private static double[] Numbers(string text) =>
        [.. text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
}
