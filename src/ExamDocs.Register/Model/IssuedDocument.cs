namespace ExamDocs.Register.Model;

/// <summary>A document that is out: its file was written whole and its bytes are kept.</summary>
/// <param name="Number">For example R-2026-000123.</param>
/// <param name="Kind">For example report.</param>
/// <param name="JobKey">Names the same input, rules and template.</param>
/// <param name="Items">Ids of the items it is about, in the order given.</param>
/// <param name="Folder">Full path of the folder it was first written to; empty where its bytes are kept in the register alone.</param>
/// <param name="Sha256">Of the file; lower-case hexadecimal.</param>
/// <param name="Pages">Number of pages.</param>
/// <param name="OutcomesJson">Outcome of each item as a JSON object.</param>
public sealed record IssuedDocument(
    string Number,
    string Kind,
    string JobKey,
    IReadOnlyList<string> Items,
    string Folder,
    string Sha256,
    int Pages,
    string OutcomesJson
)
{
    public string FileName => $"{Number}.pdf";
}

/// <summary>A number that was taken and never came out. It stays listed and is never used again.</summary>
/// <param name="Number">For example R-2026-000123.</param>
/// <param name="Kind">For example report.</param>
/// <param name="Items">Ids of the items it would have been about.</param>
/// <param name="Reason">Why, in words.</param>
public sealed record VoidedDocument(string Number, string Kind, IReadOnlyList<string> Items, string Reason);

/// <summary>A document that is printed and finished and is not out yet.</summary>
/// <param name="Pending">The number taken for it.</param>
/// <param name="Pdf">The finished file.</param>
/// <param name="Pages">1 or more.</param>
/// <param name="OutcomesJson">Outcome of each item as a JSON object.</param>
public sealed record FinishedDocument(PendingDocument Pending, byte[] Pdf, int Pages, string OutcomesJson);
