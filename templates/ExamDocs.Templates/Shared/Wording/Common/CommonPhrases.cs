using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Common;

/// <summary>Words that all documents share.</summary>
public abstract class CommonPhrases
{
    public static InEachLanguage<CommonPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static CommonPhrases Current => Languages.Current;

    public abstract string NotRecorded { get; }
    public abstract string AddressNotRecorded { get; }
    public abstract string UnitNotRecorded { get; }
    public abstract string OnePerson { get; }
    public abstract string Persons { get; }
    public abstract string LoadNotMarked { get; }
    public abstract string LoadBasis { get; }
    public abstract string Issued { get; }
    public abstract string Page { get; }
    public abstract string Of { get; }
    public abstract string Signature { get; }
    public abstract string ToBeSigned { get; }
    public abstract string DateSigned { get; }
    public abstract string PlaceSigned { get; }
    public abstract string QrLabel { get; }
    public abstract string DocumentNumber { get; }
    public abstract string IssueDate { get; }
    public abstract string VisitReference { get; }
    public abstract string CautionsHeading { get; }
    public abstract string None { get; }
    public abstract string Yes { get; }
    public abstract string No { get; }

    public abstract string CautionPrecedence { get; }

    /// <summary>Which language version of the document is the one recorded.</summary>
    public abstract string LanguageNote { get; }

    /// <param name="name">As the certificate has it.</param>
    public abstract string SignedElectronically(string name);

    /// <param name="issuer">Who issued the certificate.</param>
    /// <param name="serialNumber">Hexadecimal.</param>
    /// <param name="fingerprint">The first digits of its SHA-256.</param>
    public abstract string SignatureCertificate(string issuer, string serialNumber, string fingerprint);

    public abstract string SignatureTimestamped { get; }
    public abstract string SignatureNotTimestamped { get; }
    public abstract string HowToCheckSignature { get; }

    /// <summary>What a reading program calls the signature's field.</summary>
    public abstract string SignatureField { get; }

    /// <param name="number">Of the document that this one takes the place of.</param>
    /// <param name="reason">Why, as typed; null where nothing was.</param>
    public abstract string Replaces(string number, string? reason);

    /// <param name="name">Of whoever issues the document.</param>
    public abstract string LogoOf(string name);

    public abstract string HowToVerify(string number);

    public abstract string Imprint(string version);

    /// <summary>The outcome in the words used everywhere.</summary>
    public abstract string Outcome(Outcome outcome);

    /// <summary>The outcome with its date, where it has one.</summary>
    public abstract string Outcome(Outcome outcome, LocalDate? until);

    public abstract string Class(CriterionClass? criterion);

    public abstract string Purpose(Purpose? purpose);

    public abstract string Status(ItemStatus? status);

    /// <summary>What became of a withdrawn item.</summary>
    public abstract string Disposal(DisposalAction? action);
}
