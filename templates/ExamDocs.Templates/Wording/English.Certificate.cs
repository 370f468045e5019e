using ExamDocs.Templates.Shared;
using NodaTime;

namespace ExamDocs.Templates.Wording;

public static partial class English
{
    /// <summary>Words of the certificate of conformity for reissue.</summary>
    public static class Certificate
    {
        public const string Title = "Certificate of conformity for reissue";
        public const string Law = "Statement of return to service, made by the examiner after a renewal. Contents as ISO/IEC 17050-1:2004, 6.1, lists them, (a) to (h)";
        public const string NotTheMakers = "This is the examiner's own statement about one item as examined. It is not the maker's declaration of conformity, does not stand in for it, and is no mark of approval.";
        public const string Number = "This statement";
        public const string Issuer = "Issued by";
        public const string Object = "The item";
        public const string Fitted = "Parts fitted";
        public const string Statement = "Statement";
        public const string Requirements = "What it conforms to";
        public const string Renewed = "What was renewed";
        public const string Removed = "Taken off";
        public const string FittedPart = "Fitted";
        public const string Reason = "Reason";
        public const string DoneBy = "Done by";
        public const string SupervisedBy = "Supervised by";
        public const string DoneOn = "On";
        public const string Document = "Under the maker's document";
        public const string NothingFitted = "nothing";
        public const string Limits = "Limits on its validity";
        public const string Issue = "Date and place";
        public const string IssuedAt = "examined at";
        public const string For = "Issued to (employer)";
        public const string SignLead = "Signed, with the place and date of signing:";
        public const string Function = "the competent person who examined the item";
        public const string OtherFunction = "who authenticates for the competent person who examined the item";

        public static string Conforms(string item, LocalDate? on, string examiner) =>
            $"The item {item}, with the parts named here fitted, was examined on {Printed.Day(on)} by {examiner} after the renewal. As examined, it conforms to what is listed under (e), and may be put back into service.";

        public static string ConformsUntil(LocalDate? until) => $"It may stay in service until {Printed.Day(until)}, which is the last day of use.";

        public static string ByMaker(string item, string document) => $"{item}: the maker's instructions, {document}";

        public static string Standards(string standards) =>
            $"marked {standards} (the marks were read; the item was not tested to those standards)";

        public static string ExaminedUnder(string law) => $"the examination was made under the {law}";

        public static string LimitState(LocalDate? on) => $"It speaks of the state of the item on {Printed.Day(on)}, and of no later one.";

        public static string LimitNext(LocalDate? next) => $"It ends when the next examination falls due: {Printed.Day(next)} is the latest date for it.";

        public static string LimitUntil(LocalDate? until) => $"It ends after {Printed.Day(until)}, the last day of use.";

        public static string LimitEnd(LocalDate? end) => $"The recorded limits end the item's service after {Printed.Day(end)}.";

        public const string LimitEvents =
            "It ends at once when the item is altered, when another part is fitted, or after a fall, a severe load, or contact with a saw, heat or a chemical.";
    }
}
