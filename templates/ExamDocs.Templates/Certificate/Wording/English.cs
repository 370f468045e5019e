using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Certificate.Wording;

/// <inheritdoc />
internal sealed class English : CertificatePhrases
{
    public override string Title => "Certificate of conformity for reissue";

    public override string Law =>
        "Statement of return to service, made by the examiner after a renewal. Contents as ISO/IEC 17050-1:2004, 6.1, "
        + "lists them, (a) to (h)";

    public override string NotTheMakers =>
        "This is the examiner's own statement about one item as examined. It is not the maker's declaration of "
        + "conformity, does not stand in for it, and is no mark of approval.";

    public override string Number => "This statement";
    public override string Issuer => "Issued by";
    public override string Object => "The item";
    public override string Fitted => "Parts fitted";
    public override string Statement => "Statement";
    public override string Requirements => "What it conforms to";
    public override string Renewed => "What was renewed";
    public override string Removed => "Taken off";
    public override string FittedPart => "Fitted";
    public override string Reason => "Reason";
    public override string DoneBy => "Done by";
    public override string SupervisedBy => "Supervised by";
    public override string DoneOn => "On";
    public override string Document => "Under the maker's document";
    public override string NothingFitted => "nothing";
    public override string Limits => "Limits on its validity";
    public override string Issue => "Date and place";
    public override string IssuedAt => "examined at";
    public override string For => "Issued to (employer)";
    public override string MakerAndModel => "Maker, model";
    public override string SignedLead => "Signed on the day and for the place of issue given above:";
    public override string SignLead => "Signed, with the place and date of signing:";
    public override string Function => "the competent person who examined the item";
    public override string OtherFunction => "who authenticates for the competent person who examined the item";

    public override string Conforms(string item, LocalDate? on, string examiner) =>
        $"The item {item}, with the parts named here fitted, was examined on {Printed.Day(on)} by {examiner} after the "
        + "renewal. As examined, it conforms to what is listed under (e), and may be put back into service.";

    public override string ConformsUntil(LocalDate? until) =>
        $"It may stay in service until {Printed.Day(until)}, which is the last day of use.";

    public override string ByMaker(string item, string document) => $"{item}: the maker's instructions, {document}";

    public override string Standards(string standards) =>
        $"marked {standards} (the marks were read; the item was not tested to those standards)";

    public override string ExaminedUnder(string law) => $"the examination was made under: {law}";

    public override string LimitState(LocalDate? on) =>
        $"It is about the state of the item on {Printed.Day(on)}, and about no later state.";

    public override string LimitNext(LocalDate? next) =>
        $"It ends when the next examination falls due: {Printed.Day(next)} is the latest date for it.";

    public override string LimitUntil(LocalDate? until) => $"It ends after {Printed.Day(until)}, the last day of use.";

    public override string LimitEnd(LocalDate? end) => $"The recorded limits end the item's service after {Printed.Day(end)}.";

    public override string LimitEvents =>
        "It ends at once when the item is altered, when another part is fitted, or after a fall, a severe load, or "
        + "contact with a saw, heat or a chemical.";
}
