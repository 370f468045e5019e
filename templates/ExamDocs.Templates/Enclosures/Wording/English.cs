using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Enclosures.Wording;

/// <inheritdoc />
internal sealed class English : EnclosuresPhrases
{
    public override string FileName => "Contents";
    public override string Title => "Documents enclosed";
    public override string Lead => "The documents of one visit that are in this folder. Each is a file of its own.";
    public override string PutTogetherOn => "Put together on";
    public override string To => "To";
    public override string From => "From the person making the report";
    public override string ExaminedAt => "Where and when examined";
    public override string What => "What it is";
    public override string Items => "Items";
    public override string Pages => "Pages";
    public override string Sha256 => "SHA-256 begins with";
    public override string NotReported => "No report in this folder is about:";

    public override string HowToCheck =>
        "To check a document, ask the issuer, by a telephone number known otherwise, for the whole SHA-256 of its file. The digits here "
        + "only help to tell files apart.";

    public override string NoDocument => "This page is a list. It has no number, and nothing in it replaces what the documents say.";

    public override string Count(int documents, int pages) =>
        $"{Printed.Count(documents)} {(documents == 1 ? "document" : "documents")}, "
        + $"{Printed.Count(pages)} {(pages == 1 ? "page" : "pages")}";
}
