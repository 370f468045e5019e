using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>What the next visit is prepared from, and what goes out and comes in again.</summary>
public sealed class NextVisitFromRegisterTests : IDisposable
{
    private readonly Visits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Theory]
    [InlineData("2026-11-10", false)] // due by 11 Nov 2026: six months from 11 May
    [InlineData("2026-11-11", true)]
    [InlineData(null, true)]
    public void Only_what_falls_due_by_the_day_is_taken(string? day, bool isTaken)
    {
        _visits.Import(Visit("V-1", "2026-05-11"));
        var before = day is null ? (LocalDate?)null : NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value;
        var record = RegisterRecord.Of(_visits.Register, before, null, Today, out var refused);
        Assert.Equal(isTaken, record is not null);
        Assert.Equal(isTaken, refused is null);
        if (record is not null)
            Assert.Equal([Item], record.Items.Select(i => i.Id), StringComparer.Ordinal);
    }

    [Fact]
    public void What_is_withdrawn_is_left_out_and_kit_of_two_employers_is_not_mixed()
    {
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        Assert.Null(RegisterRecord.Of(_visits.Register, null, null, Today, out var nothing));
        Assert.Contains("nothing in the register falls due", nothing, StringComparison.Ordinal);
        foreach (var employer in new[] { "One Ltd", "Two Ltd" })
        {
            var record = Visit(employer, "2026-05-11");
            record.Item(Item)["serial"] = employer;
            record["visit"]!["employer"]!["name"] = employer;
            _visits.Import(record);
        }
        Assert.Null(RegisterRecord.Of(_visits.Register, null, null, Today, out var two));
        Assert.Contains("One Ltd; Two Ltd. Name one with --employer", two, StringComparison.Ordinal);
        Assert.Equal("Two Ltd", RegisterRecord.Of(_visits.Register, null, "two ltd", Today, out _)!.Items.Single().Serial);
    }

    [Fact]
    public void A_whole_visit_makes_a_workbook_that_is_read_without_a_fault_of_reading()
    {
        using var workspace = new Workspace();
        ImportVisits.Run([Workspace.ExampleJson], _visits.Register, Today, KnownRules.BuiltIn);
        var file = Path.Combine(workspace.Folder, "next.xlsx");
        Assert.Null(
            WriteCaptureWorkbook.Run(
                new CaptureRequest(file, [], null, false)
                {
                    Register = new FromRegister(_visits.Register, new LocalDate(2026, 12, 31), null, Today),
                }
            )
        );
        var visit = CheckRecord.Of(file, Today).Visit!;
        Assert.DoesNotContain(visit.Findings, f => f.Code.StartsWith("INT", StringComparison.Ordinal) || f.Code is "CON002");
        var ids = visit.Items.Select(i => i.Item.Id).ToList();
        Assert.Contains("HAR-02", ids, StringComparer.Ordinal);
        Assert.Contains("BRG-03", ids, StringComparer.Ordinal); // fitted to HAR-02 at the last visit
        Assert.DoesNotContain("BRG-02", ids, StringComparer.Ordinal); // taken off and withdrawn
        Assert.DoesNotContain(visit.Items, i => i.Outcome is Core.Records.Outcome.Fit);
    }

    [Fact]
    public void People_of_two_visits_with_one_id_are_told_apart()
    {
        _visits.Import(Visit("V-1", "2026-05-11"));
        var other = Visit("V-2", "2026-05-12");
        other.Item(Item)["id"] = "CON-50";
        other.Item("CON-50")["serial"] = "C-50";
        other.ExaminationOf(Item)["item"] = "CON-50";
        other.Rows("people").First(p => (string?)p["id"] == "ex1")["name"] = "Somebody Else";
        _visits.Import(other);
        var record = RegisterRecord.Of(_visits.Register, null, null, Today, out _)!;
        var names = record.Examinations.ToDictionary(
            e => e.Item!,
            e => record.People.Single(p => p.Id == e.Examiner).Name,
            StringComparer.Ordinal
        );
        Assert.Equal("Somebody Else", names["CON-50"]);
        Assert.NotEqual("Somebody Else", names[Item]);
    }

    [Fact]
    public void Exported_and_imported_again_the_records_are_the_same_bytes()
    {
        using var workspace = new Workspace();
        _visits.Import(Visit("V-1", "2026-05-11", withdraw: true));
        var misspelt = Visit("V-2", "2026-11-02");
        misspelt.ExaminationOf(Item).Rows("observations").First()["state"] = "cleer"; // what reading found goes with it
        _visits.Import(misspelt);
        var (first, second) = (Path.Combine(workspace.Folder, "first"), Path.Combine(workspace.Folder, "second"));
        Assert.Equal((2, 0), ExportRegister.Run(_visits.Register, first, Today));
        var copy = Path.Combine(workspace.Folder, "copy.db");
        ImportVisits.Run(
            [.. Directory.EnumerateFiles(Path.Combine(first, "visits")).Order(StringComparer.Ordinal)],
            copy,
            Today,
            KnownRules.BuiltIn
        );
        ExportRegister.Run(copy, second, Today);
        foreach (var file in Directory.EnumerateFiles(Path.Combine(first, "visits")))
            Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(Path.Combine(second, "visits", Path.GetFileName(file))));
    }

    [Fact]
    public void The_day_until_which_personal_data_has_to_be_kept_comes_from_the_regime()
    {
        _visits.Import(Visit("V-1", "2026-05-11"));
        Assert.Null(Assert.Single(PersonalData.In(_visits.Register, Today, KnownRules.BuiltIn)).Until);
        _visits.Import(Visit("V-2", "2026-11-02"));
        var held = PersonalData.In(_visits.Register, Today, KnownRules.BuiltIn);
        // LOLER reg 11(2)(a)(iv): until the next report or for two years, whichever is later, counted from the report.
        Assert.Equal(new LocalDate(2028, 5, 11), held[0].Until);
        Assert.Null(held[1].Until);
        Assert.NotEmpty(held[0].People);
    }
}
