using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.PdfSyntax;
using ExamDocs.Intake;
using ExamDocs.Intake.Json;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Issuing;

/// <summary>The data embedded in a document, read strictly.</summary>
/// <param name="Basis">What it says that it was made from.</param>
/// <param name="Record">The embedded record, as read.</param>
/// <param name="Outcome">The embedded outcomes, byte for byte.</param>
internal sealed record DocumentContents(DocumentBasis Basis, ReadResult Record, byte[] Outcome)
{
    /// <returns>The contents, null where they are not whole; and what is to be said of them.</returns>
    public static (DocumentContents? Contents, Message Said) Of(byte[] pdf)
    {
        try
        {
            var files = new[] { EmbeddedFiles.DocumentName, EmbeddedFiles.RecordName, EmbeddedFiles.OutcomeName }
                .Select(name => AttachedFiles.Find(pdf, name, JsonRecordReader.MaxBytes))
                .ToArray();
            if (Array.TrueForAll(files, f => f is null))
                return Refused($"it is not one of our documents: it holds no data that a document of this program holds");
            if (files is not [{ } document, { } record, { } outcome])
                return Refused($"the data within are not whole: every document holds examdocs.json, outcome.json and document.json");
            return Read(document, record, outcome);
        }
        catch (Exception e) when (IsOfTheFile(e))
        {
            return Refused($"it is not one of our documents, or it is damaged: what is in the file cannot be read");
        }
    }

    /// <summary>The visit determined once more, on the day and with the history that the document names; null where it cannot be.</summary>
    public DeterminedVisit? Determined(KnownRules rules) =>
        Record.Record is not { } record || RecordSizeLimit.Of(record, Record.Findings) is not null
            ? null
            : Determine.Visit(record, Record.Findings, Basis.History, Basis.AsOf, rules);

    internal static (DocumentContents? Contents, Message Said) Read(byte[] document, byte[] record, byte[] outcome)
    {
        if (DocumentFile.Read(document) is not { } basis)
            return Refused($"what it says it rests on (document.json) cannot be read");
        var read = EmbeddedRecord.ReadWithin(record, EmbeddedFiles.RecordName);
        return read switch
        {
            { Record: null } => Refused($"the record within cannot be read: {read.Unreadable}"),
            { PartOf: { } part } => (
                new DocumentContents(basis, read, outcome),
                $"it calls itself {basis.Number}, and the data it was made from are whole: that part of its visit of {part.Items} items "
                    + $"which bears on it"
            ),
            _ => (new DocumentContents(basis, read, outcome), $"it calls itself {basis.Number}, and the data it was made from are whole"),
        };
    }

    /// <summary>A failure to read a file that somebody altered or damaged, as against a mistake in the program.</summary>
    public static bool IsOfTheFile(Exception failure) =>
        failure
            is PdfSyntaxException
                or ArgumentException
                or InvalidOperationException
                or FormatException
                or OverflowException
                or IOException
                or NotSupportedException;

    private static (DocumentContents? Contents, Message Said) Refused(Message why) => (null, why);
}
