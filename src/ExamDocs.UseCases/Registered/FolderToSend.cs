using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Templates;
using ExamDocs.Templates.Enclosures;
using ExamDocs.Templates.Enclosures.Wording;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Makes folders that are ready to send: the current documents of one visit that a recipient gets, and a list of them. A folder gets its
/// name once it is whole, and is never changed afterwards: what was sent stays as it was sent.
/// </summary>
/// <param name="run">Whose documents are out.</param>
/// <param name="folder">The folder of the run, as the user typed it.</param>
/// <param name="style">How the list is printed.</param>
/// <param name="today">The day on which it is put together.</param>
internal sealed class FolderToSend(RegisteredRun run, string folder, PrintStyle style, LocalDate today)
{
    /// <summary>What a folder is called until all of it is there.</summary>
    public const string Unfinished = " (unfinished)";

    /// <summary>Of the name of a folder: the names of its files must fit beside it into what Windows takes of a path.</summary>
    private const int MostCharacters = 60,
        MostBytes = 120;

    private static readonly string[] Sent = [DocumentTypes.Report.Kind, DocumentTypes.Notice.Kind, DocumentTypes.Certificate.Kind];

    /// <returns>One sentence: where it is, or why there is none.</returns>
    /// <exception cref="IOException">It cannot be written.</exception>
    public async Task<string> MakeAsync(DeterminedVisit visit, SendTo to, CancellationToken cancellation)
    {
        var (word, of) = (Word(to), $"{visit.Record.Visit.Reference ?? "the visit"}");
        if (PartyOf(visit, to) is not { Name: { } name } party || string.IsNullOrWhiteSpace(name))
            return $"No folder for the {word} of {of}: the record names none.";
        var documents = run.Prints.Documents.Where(d => d.Job?.Visit == visit && IsFor(d, to) && IsCurrent(d)).ToList();
        if (documents.Count == 0)
            return $"No folder for the {word} of {of}: there is nothing to send.";
        var list = $"{EnclosuresPhrases.Languages.In(style.Language).FileName}.pdf";
        var hasEarlier = false;
        foreach (var place in Places(visit, name, word))
        {
            if (Path.Exists(place))
            {
                if (Holds(place, documents, list))
                    return $"The folder for the {word} is there already: {place}";
                hasEarlier = true;
                continue;
            }
            if (Path.Exists(place + Unfinished) && !MayGoOn(place + Unfinished, documents))
                continue;
            return await PrintListAsync(visit, party, documents, cancellation) is { } pdf
                ? Finished(place, documents, list, pdf, word, hasEarlier)
                : $"No folder for the {word} of {of}: its list cannot be printed whole with the fonts here.";
        }
        return $"No folder for the {word} of {of}: too many of that name are there.";
    }

    private string Finished(string place, IReadOnlyList<Issued> documents, string list, byte[] pdf, string word, bool hasEarlier)
    {
        var unfinished = place + Unfinished;
        foreach (var document in documents)
        {
            if (IssuedFile.IsIn(unfinished, document.Document, document.FileName))
                continue;
            run.Register.Restore(document.Document, unfinished);
            if (!string.Equals(document.FileName, document.Document.FileName, StringComparison.Ordinal))
                IssuedFile.Rename(document.Document, unfinished, document.Document.FileName, document.FileName);
        }
        OutputGuard.NewFilesOnly.Write(Path.Combine(unfinished, list), pdf);
        Directory.Move(unfinished, place);
        var made = string.Create(
            CultureInfo.InvariantCulture,
            $"The folder for the {word} has {documents.Count} {(documents.Count == 1 ? "document" : "documents")} and a list: {place}"
        );
        return hasEarlier ? $"{made} (the one of an earlier run stays beside it)" : made;
    }

    private Task<byte[]?> PrintListAsync(
        DeterminedVisit visit,
        Party to,
        IReadOnlyList<Issued> documents,
        CancellationToken cancellation
    ) =>
        run.Prints.PrintUnrecordedAsync(
            renderer =>
                style.Language.InAsync(() =>
                    renderer.HtmlAsync(
                        new EnclosuresModel(visit, to, [.. documents.Select(Enclosed)], today, ProgramVersion.Current, style.Letterhead)
                    )
                ),
            cancellation
        );

    private static EnclosedDocument Enclosed(Issued issued) =>
        new(issued.Number, issued.Kind, issued.CopyOf is not null, issued.Items, issued.Document.Pages, issued.Document.Sha256);

    /// <summary>Names that it may have; the first that is free, or holds the same, is its own.</summary>
    private IEnumerable<string> Places(DeterminedVisit visit, string name, string word)
    {
        const int most = 100;
        var typed = visit.Record.Visit;
        var day = typed.ExaminedOn is { } on ? LocalDatePattern.Iso.Format(on) : "";
        var whole = SafeFileName.Cut(SafeFileName.Part($"{day} {typed.Reference} {name}"), MostCharacters, MostBytes);
        for (var n = 1; n <= most; n++)
            yield return Path.Combine(
                folder,
                $"for {word}",
                n == 1 ? whole : string.Create(CultureInfo.InvariantCulture, $"{whole} ({n})")
            );
    }

    private static bool Holds(string place, IReadOnlyList<Issued> documents, string list) =>
        Directory.Exists(place)
        && Names(place).SetEquals(documents.Select(d => d.FileName).Append(list))
        && documents.All(d => IssuedFile.IsIn(place, d.Document, d.FileName));

    /// <summary>Whether an interrupted run left nothing but some of these documents.</summary>
    private static bool MayGoOn(string place, IReadOnlyList<Issued> documents) =>
        Directory.Exists(place)
        && Names(place)
            .All(n =>
                documents.Any(d =>
                    IssuedFile.IsIn(place, d.Document, n)
                    || (n.StartsWith('.') && n.EndsWith(".tmp", StringComparison.Ordinal) && n.Contains(d.Number, StringComparison.Ordinal))
                )
            );

    private static HashSet<string> Names(string place) =>
        Directory.EnumerateFileSystemEntries(place).Select(p => Path.GetFileName(p)).ToHashSet(StringComparer.Ordinal);

    private bool IsCurrent(Issued issued) => run.Register.Find(issued.Number) is { IsCurrent: true };

    private static bool IsFor(Issued issued, SendTo to) =>
        to is SendTo.Authority ? issued.CopyOf is not null : issued.CopyOf is null && Sent.Contains(issued.Kind, StringComparer.Ordinal);

    private static Party? PartyOf(DeterminedVisit visit, SendTo to) =>
        to switch
        {
            SendTo.Employer => visit.Record.Visit.Employer,
            SendTo.Owner => visit.Record.Visit.HiredFrom,
            _ => visit.Record.Visit.EnforcingAuthority,
        };

    /// <summary>As it is typed on the command line.</summary>
    public static string Word(SendTo to) =>
        to switch
        {
            SendTo.Employer => "employer",
            SendTo.Owner => "owner",
            _ => "authority",
        };
}
