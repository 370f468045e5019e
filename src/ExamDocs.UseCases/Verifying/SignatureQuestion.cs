using System.Globalization;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Documents.Signing;
using ExamDocs.UseCases.Issuing;
using NodaTime;

namespace ExamDocs.UseCases.Verifying;

/// <summary>Is it signed, is the signature whole, and who signed?</summary>
internal static class SignatureQuestion
{
    private const string Question = "signature";

    /// <param name="pdf">The whole file.</param>
    /// <param name="contents">The data embedded in it; null where they cannot be read.</param>
    /// <param name="trust">The certificates that are known here.</param>
    /// <param name="now">When it is asked.</param>
    public static (IReadOnlyList<Statement> Statements, bool Vouches) Ask(
        byte[] pdf,
        DocumentContents? contents,
        SignatureTrust trust,
        Instant now
    )
    {
        var report = SignatureCheck.Of(pdf, trust, now);
        if (!report.IsSigned)
            return (
                contents?.Basis.Signature is { } missing
                    ?
                    [
                        Statement.Fails(
                            Question,
                            $"its page says that it is electronically signed by {missing.Name}, and there is no signature"
                        ),
                    ]
                    : [Statement.Holds(Question, $"it bears no electronic signature")],
                false
            );
        var vouches = report is { IsIntact: true, IsTrusted: true, Faults: [] };
        return (
            [
                .. Of(report, Examiner(contents)),
                .. Printed(report, contents),
                .. report.NotChecked.Select(text => Statement.NotChecked(Question, Plain(text))),
            ],
            vouches
        );
    }

    private static IEnumerable<Statement> Of(SignatureReport report, Message examiner)
    {
        if (!report.IsIntact || report.Faults.Count > 0)
        {
            foreach (var fault in report.Faults.DefaultIfEmpty("Its signature is not valid"))
                yield return Statement.Fails(Question, Plain(fault));
            yield break;
        }
        Message when = report.TimestampedAt is { } at
            ? $", by {at.ToString("uuuu-MM-dd HH:mm 'UTC'", CultureInfo.InvariantCulture)} as a timestamp says"
            : Message.None;
        Message who =
            $"signed by {Named(report.SignedBy)} (certificate of {Named(report.Issuer)}, SHA-256 {report.Fingerprint}{when}); {examiner}";
        yield return report switch
        {
            { IsTrusted: true, IsNamed: true } => Statement.Holds(Question, $"{who}; the certificate is the one that you named"),
            { IsTrusted: true } => Statement.Holds(
                Question,
                $"{who}; the certificate was issued by {report.TrustedBy}, which you named, for signing documents"
            ),
            _ => Statement.NotChecked(
                Question,
                $"{who}; unaltered since, by a certificate that you did not name, and anybody can make one in any name "
                    + $"(--trust FILE names the issuer's own certificate)"
            ),
        };
    }

    /// <summary>The page names the certificate that it is signed with: a signature by another one contradicts the page.</summary>
    private static IEnumerable<Statement> Printed(SignatureReport report, DocumentContents? contents)
    {
        if (contents is { Basis.Signature: null })
            yield return Statement.Fails(Question, $"it is signed, and the data within say that it was issued unsigned");
        if (
            contents?.Basis.Signature is { } printed
            && report.IsIntact
            && !string.Equals(printed.Fingerprint, report.Fingerprint, StringComparison.OrdinalIgnoreCase)
        )
            yield return Statement.Fails(
                Question,
                $"its page names another certificate than the one it was signed with, that of {printed.Name}"
            );
    }

    /// <summary>The examiner's name beside the signer's, so that a reader sees where they differ.</summary>
    private static Message Examiner(DocumentContents? contents)
    {
        var items = contents?.Basis.Items.ToHashSet(StringComparer.Ordinal);
        var record = contents?.Record.Record is { } read ? SharedValues.FilledIn(read) : null;
        var names = record
            ?.Examinations.Where(e => items!.Contains(e.Item ?? ""))
            .Select(e => e.Examiner)
            .OfType<string>()
            .Distinct(StringComparer.Ordinal)
            .Select(id => record.People.FirstOrDefault(p => string.Equals(p.Id, id, StringComparison.Ordinal))?.Name)
            .OfType<string>()
            .Distinct(StringComparer.Ordinal)
            .Take(3)
            .ToList()
            ?? [];
        return names.Count == 0 ? (Message)$"it does not say who examined" : $"examined, as it says, by {string.Join(", ", names)}";
    }

    private static Message Named(string? name) => name is null ? (Message)$"nobody named" : Message.AsIs(name);

    /// <summary>The text in the form of the other sentences.</summary>
    private static Message Plain(string sentence) => Message.AsIs(sentence.TrimEnd('.'));
}
