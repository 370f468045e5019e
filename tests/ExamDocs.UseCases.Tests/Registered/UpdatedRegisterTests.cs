using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.Issuing;
using Microsoft.Data.Sqlite;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>
/// A register of the version before, in which spellings that are one by now were two: once it is brought up to date, nothing vouches for
/// what only that difference let through.
/// </summary>
public sealed class UpdatedRegisterTests : IDisposable
{
    private const string Cyrillic = "\u0421\u041eR-11";
    private const string Latin = "COR-11";

    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public void A_label_of_an_item_that_was_withdrawn_in_other_letters_is_not_vouched_for()
    {
        _visits.Import(Marked(Visit("W-1", "2026-05-11", withdraw: true), Cyrillic));
        Store(Marked(Visit("W-2", "2026-06-12"), Latin));
        AssertNotVouchedFor(Label(2, Latin));
    }

    [Fact]
    public void A_label_of_a_visit_that_was_corrected_under_another_spelling_of_its_reference_is_not_vouched_for()
    {
        _visits.Import(Visit("V-1", "2026-05-11"));
        var corrected = Visit("v 1", "2026-05-11");
        foreach (var limits in corrected["limits"]!.AsArray())
            limits!["intervalMonths"] = 1;
        Store(corrected);
        AssertNotVouchedFor(Label(1, Item));
    }

    private void AssertNotVouchedFor(string label)
    {
        MakeLayoutFour();
        UpdateRegister.Run(_visits.Register, Today);
        using var register = DocumentRegister.OpenToRead(_visits.Register);
        Assert.NotEmpty(new DocumentStanding(register, Today).Against(register.Find(label)!));
    }

    /// <summary>As a version that knew nothing of the other spelling decided and stored it.</summary>
    private void Store(JsonObject record)
    {
        using var alone = new Visits();
        alone.Import(Visit("V-0", "2025-11-13"));
        var visit = CheckAgainstRegister.All([_visits.File(record)], Today, KnownRules.BuiltIn, alone.Register)[0].Visit!;
        Assert.Equal(Core.Records.Outcome.Fit, visit.Items.Single().Outcome);
        using var register = DocumentRegister.Open(_visits.Register, Today);
        register.Visits.Remember(RememberVisit.Of(visit));
    }

    private string Label(int visit, string item)
    {
        using var register = DocumentRegister.Open(_visits.Register, Today);
        var pending = register.Take(
            new('D', 2027, "due-label", "job", [item], Folder: null) { Visit = visit, KnownUpTo = register.Visits.Latest }
        );
        return register.Publish(pending, "%PDF-1.7 stand-in"u8.ToArray(), 1, $$"""{"{{item}}":"fit"}""").Number;
    }

    private void MakeLayoutFour()
    {
        using var connection = new SqliteConnection($"Data Source={_visits.Register};Pooling=False");
        connection.Open();
        foreach (
            var statement in (string[])
                [
                    "DROP TRIGGER the_register_stays_itself",
                    "DROP TABLE visit_key",
                    "DROP INDEX log_by_document",
                    "UPDATE register SET layout = 4",
                    "PRAGMA user_version = 4",
                ]
        )
        {
            using var command = connection.CreateCommand();
            command.CommandText = statement;
            command.ExecuteNonQuery();
        }
    }

    private static JsonObject Marked(JsonObject record, string mark)
    {
        record.ExaminationOf(Item)["item"] = mark;
        var item = record.Item(Item);
        (item["id"], item["ownersMark"], item["serial"]) = (mark, mark, null);
        return record;
    }
}
