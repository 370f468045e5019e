using System.Security.Cryptography.X509Certificates;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Documents.Signing;

/// <summary>Asks who made a sound signature, and whether that is somebody who is trusted here.</summary>
/// <param name="trust">What the signer's certificate must go back to.</param>
/// <param name="now">The time that counts where no trusted timestamp says when it was signed.</param>
/// <param name="faults">Takes what is wrong, a sentence each.</param>
/// <param name="open">Takes what could not be checked, a sentence each.</param>
internal sealed class SignerTrust(SignatureTrust trust, Instant now, List<string> faults, List<string> open)
{
    /// <returns>The anchor that the signer's certificate goes back to; null where that could not be shown.</returns>
    public X509Certificate2? AnchorOf(IReadOnlyList<X509Certificate2> path, TimestampToken? timestamp)
    {
        var signer = path[0];
        if (!CertificateFacts.MaySign(signer) && !trust.Names(signer))
            faults.Add($"The certificate of {CertificateFacts.Name(signer)} is not made for signing.");
        var isTimeKnown = timestamp is not null && IsTrusted(timestamp);
        var at = isTimeKnown ? timestamp!.At : now;
        if (at < CertificateFacts.From(signer))
            faults.Add($"The certificate of {CertificateFacts.Name(signer)} is not valid before {Day(CertificateFacts.From(signer))}.");
        else if (at > CertificateFacts.Until(signer))
            TellExpired(signer, isTimeKnown);
        else if (trust.AnchorOf(signer, path.Skip(1), at) is { } anchor)
            return IsFit(signer) ? anchor : null;
        else
            open.Add(
                $"Who signed is not certain: the certificate of {CertificateFacts.Name(signer)} is not one that was named "
                    + "here, and goes back to none."
            );
        return null;
    }

    /// <summary>
    /// What an authority issued for web servers does not sign documents; the very certificate that was named may be of any kind.
    /// </summary>
    private bool IsFit(X509Certificate2 signer)
    {
        if (trust.Names(signer) || CertificateFacts.IsForDocuments(signer))
            return true;
        open.Add(
            $"The certificate of {CertificateFacts.Name(signer)} was not issued for signing documents, so that who issued it "
                + "does not count."
        );
        return false;
    }

    private void TellExpired(X509Certificate2 signer, bool isTimeKnown)
    {
        var until = $"The certificate of {CertificateFacts.Name(signer)} ran out on {Day(CertificateFacts.Until(signer))}";
        if (isTimeKnown)
            faults.Add($"{until}, before it was signed.");
        else
            open.Add($"{until}; no trusted timestamp shows whether it was signed before that.");
    }

    private bool IsTrusted(TimestampToken timestamp)
    {
        if (trust.AnchorOf(timestamp.Path[0], timestamp.Path.Skip(1), timestamp.At) is not null)
            return true;
        open.Add(
            $"The time is not certain: the timestamp is by {CertificateFacts.Name(timestamp.Path[0])}, which goes back to no "
                + "authority that is trusted here."
        );
        return false;
    }

    private static string Day(Instant instant) => InstantPattern.General.Format(instant);
}
