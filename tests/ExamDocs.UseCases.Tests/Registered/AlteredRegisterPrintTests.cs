using System.Text;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>What an altered register knows is neither printed again nor vouched for.</summary>
public sealed class AlteredRegisterPrintTests : IDisposable
{
    private readonly Visits _visits = new();

    public AlteredRegisterPrintTests()
    {
        _visits.Import(Visit("V-0", "2025-11-13"));
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
    }

    public void Dispose() => _visits.Dispose();

    [Fact]
    public void No_workbook_is_prepared_from_it()
    {
        Tampering.Alter(_visits.Register, "UPDATE outcome SET outcome = 'fit', codes = '[]' WHERE visit = 2");
        Tampering.AssertNamed(Assert.Throws<RegisterAlteredException>(() => RegisterRecord.Of(_visits.Register, null, null, Today, out _)));
    }

    [Theory]
    [InlineData("DELETE FROM line_end")]
    [InlineData("UPDATE outcome SET outcome = 'fit'")]
    [InlineData("UPDATE document SET ended = NULL, ended_on = NULL, ended_reason = NULL")]
    [InlineData("UPDATE document SET visit = NULL")]
    public async Task A_label_that_has_ended_is_not_printed_again_once_that_was_taken_out(string statement)
    {
        var label = Label();
        Tampering.Alter(_visits.Register, "UPDATE document SET ended = NULL, ended_on = NULL, ended_reason = NULL");
        Tampering.Alter(_visits.Register, "DELETE FROM ended_line");
        Tampering.Alter(_visits.Register, statement);
        var sheet = Path.Combine(Path.GetDirectoryName(_visits.Register)!, "labels.pdf");
        var request = new LabelRequest
        {
            InputsOrNumbers = [label],
            OutFile = sheet,
            RegisterPath = _visits.Register,
            Today = Today,
        };
        var refused = await Assert.ThrowsAsync<RegisterAlteredException>(() =>
            PrintLabels.RunAsync(request, TestContext.Current.CancellationToken)
        );
        Assert.StartsWith("The register was altered or damaged: D-2027-000001 is no longer", refused.Message, StringComparison.Ordinal);
        Assert.False(File.Exists(sheet));
    }

    [Fact]
    public async Task A_document_of_such_a_visit_is_not_verified_by_it()
    {
        using var visits = new Visits();
        var report = visits.FileOf(Assert.Single((await visits.IssueAsync(Visit("V-0", "2026-05-11"), only: "report")).Documents));
        visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        Assert.Equal(Verdict.NotValid, (await visits.VerifyAsync(report)).Verdict);
        Tampering.Alter(visits.Register, "DELETE FROM line_end");
        Tampering.AssertNamed(await Assert.ThrowsAsync<RegisterAlteredException>(() => visits.VerifyAsync(report)));
    }

    [Fact]
    public async Task A_document_is_vouched_for_where_another_firm_s_item_of_that_id_was_withdrawn_later()
    {
        using var visits = new Visits();
        var report = visits.FileOf(Assert.Single((await visits.IssueAsync(Visit("V-0", "2026-05-11"), only: "report")).Documents));
        var other = Visit("V-1", "2026-06-12", withdraw: true);
        (other["visit"]!["employer"]!["name"], other["visit"]!["hiredFrom"]!["name"]) = ("Quite Another Tree Care", "Other Hire Ltd");
        (other.Item(Item)["serial"], other.Item(Item)["maker"]) = ("QX-7001", "Otherwise Works");
        foreach (var limits in other["limits"]!.AsArray())
            limits!["maker"] = "Otherwise Works";
        visits.Import(other);
        Assert.Equal(Verdict.Valid, (await visits.VerifyAsync(report)).Verdict);
    }

    /// <summary>What ends a document is in an entry of its own, which need not be beside that of the visit.</summary>
    [Fact]
    public async Task A_document_that_a_withdrawal_ended_is_not_vouched_for_where_the_entry_that_ends_it_was_altered_too()
    {
        using var visits = new Visits();
        var report = visits.FileOf(Assert.Single((await visits.IssueAsync(Visit("V-0", "2026-05-11"), only: "report")).Documents));
        // Decided in one run: their entries come between that of the withdrawal and the one that says what it ends.
        visits.ImportOthers(0, 70, Visit("V-1", "2026-05-12", withdraw: true));
        visits.ImportOthers(70, 70);
        Tampering.Alter(
            visits.Register,
            "UPDATE log SET entry = CAST(replace(CAST(entry AS TEXT), '\"what\":\"ends\"', '\"what\":\"endz\"') AS BLOB) WHERE "
                + "CAST(entry AS TEXT) LIKE '%\"what\":\"ends\"%'"
        );
        Tampering.Alter(visits.Register, "UPDATE document SET ended = NULL, ended_on = NULL, ended_reason = NULL");
        Tampering.Alter(visits.Register, "DELETE FROM ended_line");
        Tampering.Alter(visits.Register, "DELETE FROM line_end");
        await Assert.ThrowsAsync<RegisterAlteredException>(() => visits.VerifyAsync(report));
        // That it ended is in a third entry, which then is found by no number either.
        Tampering.Alter(
            visits.Register,
            "UPDATE log SET entry = CAST(replace(CAST(entry AS TEXT), '-000001\"', '-000007\"') AS BLOB) WHERE "
                + "CAST(entry AS TEXT) LIKE '%\"what\":\"ended\"%'"
        );
        await Assert.ThrowsAsync<RegisterAlteredException>(() => visits.VerifyAsync(report));
    }

    [Fact]
    public async Task Other_bytes_are_not_vouched_for_because_the_row_of_the_document_has_their_hash()
    {
        using var visits = new Visits();
        var report = visits.FileOf(Assert.Single((await visits.IssueAsync(Visit("V-0", "2026-05-11"), only: "report")).Documents));
        using var others = new Visits();
        var forged = Visit("V-0", "2026-05-11");
        forged.Item(Visits.Item)["serial"] = "OTHER-1";
        var other = others.FileOf(Assert.Single((await others.IssueAsync(forged, only: "report")).Documents));
        var bytes = await File.ReadAllBytesAsync(other, TestContext.Current.CancellationToken);
        var sha256 = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes));
        Tampering.Alter(visits.Register, $"UPDATE document SET sha256 = '{sha256}'");
        Tampering.Alter(visits.Register, $"UPDATE content SET bytes = x'{Convert.ToHexString(bytes)}'");
        var verdict = await Record.ExceptionAsync(async () => Assert.NotEqual(Verdict.Valid, (await visits.VerifyAsync(other)).Verdict));
        Assert.True(verdict is null or RegisterAlteredException, verdict?.Message);
        using var register = DocumentRegister.OpenToRead(visits.Register);
        Assert.ThrowsAny<Exception>(() => register.Content(register.FindByNumber(register.Documents().Single().Number)!));
        Assert.True(File.Exists(report));
    }

    /// <summary>A next-examination label of the first visit, as the press would have issued it; the second visit has ended it.</summary>
    private string Label()
    {
        using var register = DocumentRegister.Open(_visits.Register, Today);
        var pending = register.Take(
            new('D', 2027, "due-label", "job", [Visits.Item], Path.GetDirectoryName(_visits.Register)!) { Visit = 1 }
        );
        var label = register.Publish(pending, Encoding.UTF8.GetBytes("%PDF-1.7 stand-in"), 1, $$"""{"{{Visits.Item}}":"fit"}""").Number;
        Assert.False(register.Find(label)!.IsCurrent);
        return label;
    }
}
