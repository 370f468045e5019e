using System.Globalization;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.Issuing;
using static ExamDocs.UseCases.Tests.Registered.HelmetVisits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>A folder ready to send holds what its recipient gets and a list of it, and stays as it was sent.</summary>
public sealed class FolderToSendTests : IDisposable
{
    private readonly HelmetVisits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public async Task Each_recipient_gets_what_is_theirs_and_a_list_of_it()
    {
        var issued = await _visits.IssueAsync(Visit(Connector), For(SendTo.Employer, SendTo.Owner, SendTo.Authority));

        string[] sent = [.. issued.Documents.Where(d => d.Kind is "report" or "notice" && d.CopyOf is null).Select(d => d.FileName)];
        Assert.Equal(3, sent.Length);
        Assert.Equal([.. sent.Append("Contents.pdf").Order()], Names(Folder("employer")));
        Assert.Equal([.. sent.Append("Contents.pdf").Order()], Names(Folder("owner")));
        Assert.EndsWith("2026-05-11 V-2026-031 Quillmere Access Hire LLP", Folder("owner"), StringComparison.Ordinal);
        var copy = issued.Documents.Single(d => d.CopyOf is not null);
        Assert.Equal(["Contents.pdf", copy.FileName], Names(Folder("authority")));

        var list = Pdf.Squeeze(Pdf.Text(Path.Combine(Folder("employer"), "Contents.pdf")));
        foreach (var document in issued.Documents)
        {
            Assert.Equal(sent.Contains(document.FileName), list.Contains(Pdf.Squeeze(document.Number), StringComparison.Ordinal));
            Assert.Equal(sent.Contains(document.FileName), list.Contains(document.Document.Sha256[..16], StringComparison.Ordinal));
        }
        Assert.Contains(Pdf.Squeeze("Brackwater Tree Training and Hire Ltd"), list, StringComparison.Ordinal);
        Assert.DoesNotContain("Quillmere", list, StringComparison.Ordinal);
        Assert.DoesNotContain(Pdf.Squeeze("No report in this folder"), list, StringComparison.Ordinal);
        Assert.Contains(
            Pdf.Squeeze("No report in this folder is about: HEL-01, HEL-02"),
            Pdf.Squeeze(Pdf.Text(Path.Combine(Folder("authority"), "Contents.pdf"))),
            StringComparison.Ordinal
        );
        Assert.Null(Pdf.Objection(Path.Combine(Folder("employer"), "Contents.pdf")));
        Assert.Equal(issued.Documents.Count, Directory.GetFiles(_visits.Out, "*.pdf").Length);
    }

    [Fact]
    public async Task A_second_run_changes_nothing_and_a_correction_makes_another_folder_beside_it()
    {
        await _visits.IssueAsync(Visit(), For(SendTo.Employer));
        var first = Folder("employer");
        var before = Contents(first);
        var again = await _visits.IssueAsync(Visit(), For(SendTo.Employer));
        Assert.Equal([$"The folder for the employer is there already: {first}"], again.ToSend);

        var corrected = await _visits.IssueAsync(SerialOfTwo(), For(SendTo.Employer));
        Assert.Equal(
            [$"The folder for the employer has 1 document and a list: {first} (2) (the one of an earlier run stays beside it)"],
            corrected.ToSend
        );
        Assert.Equal(["Contents.pdf", "R-2026-000002.pdf"], Names($"{first} (2)"));
        Assert.Equal(before, Contents(first));
    }

    [Fact]
    public async Task What_an_interrupted_run_left_is_finished_and_what_is_not_ours_is_left_alone()
    {
        var issued = await _visits.IssueAsync(Visit(), For());
        var report = issued.Documents.Single(d => d.Kind is "report");
        var place = Path.Combine(_visits.Out, "for employer", "2026-05-11 V-2026-031 Brackwater Tree Training and Hire Ltd");
        Directory.CreateDirectory(place + FolderToSend.Unfinished);
        File.Copy(Path.Combine(_visits.Out, report.FileName), Path.Combine(place + FolderToSend.Unfinished, report.FileName));
        await _visits.IssueAsync(Visit(), For(SendTo.Employer));
        Assert.Equal(["Contents.pdf", report.FileName], Names(place));
        Assert.False(Directory.Exists(place + FolderToSend.Unfinished));

        Directory.Move(place, place + FolderToSend.Unfinished);
        await File.WriteAllTextAsync(
            Path.Combine(place + FolderToSend.Unfinished, "letter.txt"),
            "mine",
            TestContext.Current.CancellationToken
        );
        await _visits.IssueAsync(Visit(), For(SendTo.Employer));
        Assert.Equal(["Contents.pdf", report.FileName], Names($"{place} (2)"));
        Assert.Equal(["Contents.pdf", report.FileName, "letter.txt"], Names(place + FolderToSend.Unfinished));
    }

    [Fact]
    public async Task Files_keep_the_names_that_they_were_given_and_the_list_is_in_the_documents_language()
    {
        await _visits.IssueAsync(Visit(), r => For(SendTo.Employer)(r) with { Names = FileNamePattern.Parse("{kind} {date}", out _), Style =
                    new PrintStyle { Language = Language.German } });
        Assert.Equal(["Bericht 2026-05-11 R-2026-000001.pdf", "Inhalt.pdf"], Names(Folder("employer")));
        Assert.Contains(
            Pdf.Squeeze("Beigefügte Unterlagen"),
            Pdf.Squeeze(Pdf.Text(Path.Combine(Folder("employer"), "Inhalt.pdf"))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Nobody_named_or_nothing_to_send_makes_no_folder()
    {
        var record = Visit();
        record["visit"]!.AsObject().Remove("hiredFrom");
        var issued = await _visits.IssueAsync(record, For(SendTo.Owner, SendTo.Authority));
        Assert.Equal(
            [
                "No folder for the owner of V-2026-031: the record names none.",
                "No folder for the authority of V-2026-031: there is nothing to send.",
            ],
            issued.ToSend
        );
        Assert.Empty(Directory.GetDirectories(_visits.Out, "for *"));
    }

    private static Func<IssueRequest, IssueRequest> For(params SendTo[] recipients) => r => r with { For = recipients };

    private string Folder(string word) => Directory.GetDirectories(Path.Combine(_visits.Out, $"for {word}")).Single();

    private static string[] Names(string folder) =>
        [.. Directory.GetFileSystemEntries(folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    private static IEnumerable<string> Contents(string folder) =>
        Directory
            .GetFiles(folder)
            .Order(StringComparer.Ordinal)
            .Select(f =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{f} {Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(f)))}"
                )
            );
}
