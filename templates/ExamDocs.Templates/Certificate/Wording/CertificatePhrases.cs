using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Certificate.Wording;

/// <summary>Words of the certificate of conformity for reissue.</summary>
public abstract class CertificatePhrases
{
    public static InEachLanguage<CertificatePhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static CertificatePhrases Current => Languages.Current;

    public abstract string Title { get; }
    public abstract string Law { get; }
    public abstract string NotTheMakers { get; }
    public abstract string Number { get; }
    public abstract string Issuer { get; }
    public abstract string Object { get; }
    public abstract string Fitted { get; }
    public abstract string Statement { get; }
    public abstract string Requirements { get; }
    public abstract string Renewed { get; }
    public abstract string Removed { get; }
    public abstract string FittedPart { get; }
    public abstract string Reason { get; }
    public abstract string DoneBy { get; }
    public abstract string SupervisedBy { get; }
    public abstract string DoneOn { get; }
    public abstract string Document { get; }
    public abstract string NothingFitted { get; }
    public abstract string Limits { get; }
    public abstract string Issue { get; }
    public abstract string IssuedAt { get; }
    public abstract string For { get; }
    public abstract string MakerAndModel { get; }
    public abstract string SignLead { get; }

    /// <summary>The same where it is signed electronically.</summary>
    public abstract string SignedLead { get; }
    public abstract string Function { get; }
    public abstract string OtherFunction { get; }
    public abstract string Conforms(string item, LocalDate? on, string examiner);

    public abstract string ConformsUntil(LocalDate? until);

    public abstract string ByMaker(string item, string document);

    public abstract string Standards(string standards);

    public abstract string ExaminedUnder(string law);

    public abstract string LimitState(LocalDate? on);

    public abstract string LimitNext(LocalDate? next);

    public abstract string LimitUntil(LocalDate? until);

    public abstract string LimitEnd(LocalDate? end);

    public abstract string LimitEvents { get; }
}
