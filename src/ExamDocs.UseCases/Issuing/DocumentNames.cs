using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Corrections;
using ExamDocs.Templates.Shared.Wording.Kinds;
using ExamDocs.UseCases.Outputs;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Names the files of documents for people, by a pattern; in the language of each document.</summary>
/// <param name="pattern">How they are named.</param>
internal sealed class DocumentNames(FileNamePattern pattern)
{
    /// <param name="number">The document's number.</param>
    /// <param name="job">The job that made it, or would make it again.</param>
    /// <param name="issuedOn">Day of issue; null where not known.</param>
    public string Of(string number, DocumentJob job, LocalDate? issuedOn) =>
        job.Language.In(() => pattern.NameOf(number, placeholder => placeholder switch
                {
                    "kind" => KindPhrases.Current.Of(job.Type.Kind, job.CopyOf is not null),
                    "employer" => job.Visit.Record.Visit.Employer?.Name,
                    "premises" => job.Visit.Record.Visit.Premises?.Name,
                    "reference" => job.Visit.Record.Visit.Reference,
                    "item" => Items(job),
                    "date" => Day(job.Visit.Record.Visit.ExaminedOn),
                    "issued" => Day(issuedOn),
                    _ => null,
                }));

    private static string Items(DocumentJob job)
    {
        var first = Printed.Text(job.Items[0].Item.Id);
        return job.Items.Count == 1 ? first : CorrectionPhrases.Languages.Current.AndMore(first, job.Items.Count - 1);
    }

    private static string? Day(LocalDate? day) => day is { } known ? LocalDatePattern.Iso.Format(known) : null;
}
