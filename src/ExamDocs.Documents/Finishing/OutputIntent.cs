using System.Globalization;
using ExamDocs.Documents.PdfSyntax;

namespace ExamDocs.Documents.Finishing;

/// <summary>Says what the colours of a file mean, so that they look the same years later (ISO 19005-3, 6.2.3).</summary>
internal static class OutputIntent
{
    /// <returns>The number of the object.</returns>
    public static int AddTo(PdfTarget target)
    {
        var profile = target.Add(PdfTarget.Stream("/N 3\n", SrgbProfile.Bytes));
        return target.Add(
            string.Create(
                CultureInfo.InvariantCulture,
                $"<</Type /OutputIntent\n/S /GTS_PDFA1\n/OutputConditionIdentifier (sRGB)\n/Info (sRGB IEC "
                    + $"61966-2-1)\n/DestOutputProfile {profile} 0 R>>"
            )
        );
    }
}
