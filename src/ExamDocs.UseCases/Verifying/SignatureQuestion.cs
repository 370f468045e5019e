using System.Globalization;
using ExamDocs.Documents.Signing;
using NodaTime;

namespace ExamDocs.UseCases.Verifying;

/// <summary>Is it signed, is the signature whole, and whom does it go back to?</summary>
internal static class SignatureQuestion
{
    private const string Question = "signature";

    public static (IReadOnlyList<Statement> Statements, bool Vouches) Ask(byte[] pdf, SignatureTrust trust, Instant now)
    {
        var report = SignatureCheck.Of(pdf, trust, now);
        if (!report.IsSigned)
            return ([Statement.Holds(Question, "it bears no electronic signature")], false);
        return ([.. Of(report), .. report.NotChecked.Select(text => Statement.NotChecked(Question, Plain(text)))], report is { IsIntact: true, IsTrusted: true, Faults: [] });
    }

    private static IEnumerable<Statement> Of(SignatureReport report)
    {
        if (!report.IsIntact || report.Faults.Count > 0)
        {
            foreach (var fault in report.Faults.DefaultIfEmpty("Its signature is not valid"))
                yield return Statement.Fails(Question, Plain(fault));
            yield break;
        }
        var when = report.TimestampedAt is { } at ? $", by {at.ToString("uuuu-MM-dd HH:mm 'UTC'", CultureInfo.InvariantCulture)} as a timestamp says" : "";
        var who = $"{report.SignedBy ?? "nobody named"} (certificate of {report.Issuer ?? "nobody named"}{when})";
        yield return report.IsTrusted
            ? Statement.Holds(Question, $"signed by {who}; the certificate goes back to {report.TrustedBy}, which is trusted")
            : Statement.NotChecked(Question, $"signed by {who}, and unaltered since; the certificate goes back to nobody who is trusted here, and anybody can make one in any name (--trust FILE names whom you trust)");
    }

    /// <summary>In the form of the other sentences.</summary>
    private static string Plain(string sentence) => sentence.TrimEnd('.');
}
