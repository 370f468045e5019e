using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Verifying;

/// <summary>What was issued and never touched is valid, every kind of it.</summary>
public sealed class UntouchedTests(ExampleIssued example)
{
    [Fact]
    public async Task Documents_of_every_kind_are_valid()
    {
        // Three of each kind, the first and the last among them, for each is printed once more.
        List<string> files =
        [
            .. example
                .Result.Documents.GroupBy(d => d.Document.Kind)
                .SelectMany(kind => Effort.OneIn(Math.Max(1, (kind.Count() - 1) / 2), kind))
                .Select(example.File),
        ];
        var verified = await VerifyDocuments.RunAsync(
            new VerifyRequest
            {
                Browser = OpenBrowser.Instance,
                Files = files,
                RegisterPath = Path.Combine(Path.GetDirectoryName(example.Folder)!, "register.db"),
                Now = Instant.FromUtc(2026, 5, 13, 9, 0),
            },
            TestContext.Current.CancellationToken
        );
        Assert.True(verified.Count > 10);
        Assert.Equal(
            "",
            string.Join(
                '\n',
                verified
                    .Where(v => !v.IsValid)
                    .SelectMany(v => v.Statements.Where(s => s.Answer is Answer.Fails).Select(s => $"{v.Number}: {s.Text}"))
            )
        );
        Assert.All(verified, v => Assert.Contains(v.Statements, s => s is { Question: "print", Answer: Answer.Holds }));
    }

    /// <summary>One record has its withdrawal, its release and a later examination: the last one counts.</summary>
    [Fact]
    public void An_item_released_and_examined_again_in_one_record_is_in_service()
    {
        var register = Path.Combine(Path.GetDirectoryName(example.Folder)!, "register.db");
        Assert.Equal(Standing.InService, Assert.Single(FindItems.ByMarking(register, "ADJ-01", new(2026, 5, 13))).Standing);
    }
}
