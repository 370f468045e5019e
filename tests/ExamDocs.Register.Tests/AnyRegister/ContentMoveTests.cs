using ExamDocs.Register.Contents;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Tests;

/// <summary>The bytes of documents are moved to a folder and back; stopped after each step, nothing is lost and it is run again.</summary>
public sealed class ContentMoveTests : Workplace
{
    private string Kept => Path.Combine(Root, "kept");

    private string ToFolder => $"folder:{Kept}";

    [Fact]
    public void Moved_to_a_folder_and_back_every_document_is_as_it_was()
    {
        using var register = Open();
        var numbers = Some(register);
        var moved = register.MoveContent(ToFolder);
        Assert.Equal((3, 0, 0), (moved.Copied, moved.Faults.Count, moved.Stayed.Count));
        AssertAt(ToFolder, register, numbers);
        numbers.Add(Issue(register, "after").Number, "after");
        AssertAt(ToFolder, register, numbers);
        register.MoveContent("database");
        AssertAt("database", register, numbers);
        numbers.Add(Issue(register, "last").Number, "last");
        AssertAt("database", register, numbers);
    }

    [Theory]
    [InlineData("prepared")]
    [InlineData("lot copied")]
    [InlineData("copied")]
    [InlineData("switched")]
    [InlineData("lot dropped")]
    [InlineData("dropped")]
    public void Stopped_after_a_step_nothing_is_lost_and_it_is_run_again(string step)
    {
        Dictionary<string, string> numbers;
        using (var register = Open())
            numbers = Some(register);
        foreach (var to in new[] { ToFolder, "database" })
        {
            using (var register = Open())
                StopAfter(step, register, to);
            using (var next = Open())
            {
                AssertWhole(next, numbers);
                var job = $"{step} {to}";
                numbers.Add(Issue(next, job).Number, job);
                AssertWhole(next, numbers);
            }
            using (var again = Open())
            {
                Assert.Empty(again.MoveContent(to).Faults);
                AssertAt(to, again, numbers);
            }
        }
    }

    [Theory]
    [InlineData("copied")]
    [InlineData("switched")]
    [InlineData("dropped")]
    public void A_run_that_goes_on_issuing_loses_nothing(string step)
    {
        using var register = Open();
        var numbers = Some(register);
        foreach (var to in new[] { ToFolder, "database" })
        {
            using var other = Open();
            var taken = Take(other, $"taken {to}");
            At(step, register, to, () =>
            {
                numbers.Add(other.Publish(taken, Pdf($"taken {to}"), 1, "{}").Number, $"taken {to}");
                numbers.Add(Issue(other, $"meanwhile {to}").Number, $"meanwhile {to}");
            });
            AssertAt(to, other, numbers);
        }
    }

    [Fact]
    public void Bytes_put_where_they_were_kept_a_moment_ago_are_put_where_they_are_kept_now()
    {
        using var register = Open();
        var numbers = Some(register);
        register.MoveContent(ToFolder);
        using var other = Open();
        var (elsewhere, isFirst) = ($"folder:{Path.Combine(Root, "elsewhere")}", true);
        other.Rows.Contents.AfterPut = () =>
        {
            if (!isFirst)
                return;
            isFirst = false;
            register.MoveContent(elsewhere);
        };
        numbers.Add(Issue(other, "between").Number, "between");
        Assert.Equal(elsewhere, other.ContentPlace);
        AssertWhole(other, numbers);
        Assert.True(File.Exists(Path.Combine(Root, "elsewhere", Name("between")[..2], Name("between"))));
    }

    [Theory]
    [InlineData("copied")]
    [InlineData("switched")]
    [InlineData("lot dropped")]
    public void Two_that_move_at_once_lose_nothing(string step)
    {
        using var register = Open();
        var numbers = Some(register);
        using var other = Open();
        var elsewhere = $"folder:{Path.Combine(Root, "elsewhere")}";
        try
        {
            At(step, register, ToFolder, () => other.MoveContent(elsewhere));
        }
        catch (RegisterRefusedException refused)
        {
            Assert.Contains("Another run is moving the documents", refused.Message, StringComparison.Ordinal);
        }
        AssertWhole(other, numbers);
        Assert.Empty(other.MoveContent(ToFolder).Faults);
        AssertAt(ToFolder, other, numbers);
    }

    [Fact]
    public void A_document_that_is_nowhere_as_it_was_issued_is_named_and_left_where_it_was()
    {
        using var register = Open();
        var numbers = Some(register);
        var lost = numbers.Single(n => n.Value is "b").Key;
        TakeAwayGuard("issued_bytes_stay");
        ByHand($"UPDATE content SET bytes = {Empty} WHERE number = $1", lost);
        Assert.Equal([$"The register no longer holds {lost} as it was issued."], register.MoveContent(ToFolder).Faults);
        Assert.Throws<InvalidDataException>(() => register.Content(register.FindByNumber(lost)!));
        numbers.Remove(lost);
        Assert.All(numbers, n => Assert.Equal(Pdf(n.Value), register.Content(register.FindByNumber(n.Key)!)));
        ByHand($"DELETE FROM content WHERE number <> $1 AND number NOT IN (SELECT number FROM document WHERE state <> 'void')", lost);
        Assert.Equal(1, Rows("content"));
    }

    [Fact]
    public void The_register_says_where_its_documents_are_and_the_log_says_it_too()
    {
        using var register = Open();
        Some(register);
        register.MoveContent(ToFolder);
        Assert.Equal(
            [("kept-at", ToFolder), ("cleared", "database")],
            register.Rows.Log.Entries().Select(e => LogEntry.Parse(e)).Where(e => e.Place is not null).Select(e => (e.What, e.Place!))
        );
        TakeAwayGuard("content_place_is_never_changed");
        ByHand("UPDATE content_place SET place = 'folder:/elsewhere' WHERE word = 'kept-at'");
        Assert.Contains(register.Check(), f => f.StartsWith("Where documents are kept: place of content_place", StringComparison.Ordinal));
    }

    private static void StopAfter(string step, DocumentRegister register, string to) =>
        Assert.Throws<OperationCanceledException>(() => At(step, register, to, () => throw new OperationCanceledException()));

    /// <summary>Moves, and does something once after a step.</summary>
    private static void At(string step, DocumentRegister register, string to, Action work)
    {
        var isDone = false;
        new ContentMove(register.Rows, ContentAddress.Read(to))
        {
            After = done =>
            {
                if (isDone || done != step)
                    return;
                isDone = true;
                work();
            },
        }.Run();
        Assert.True(isDone, $"There was no step '{step}'.");
    }

    /// <summary>Two issued, one prepared and not out, one void; the first two by number.</summary>
    private Dictionary<string, string> Some(DocumentRegister register)
    {
        var numbers = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var job in new[] { "a", "b" })
            numbers.Add(Issue(register, job).Number, job);
        register.Void(Take(register, "void"), "the page could not be printed");
        var pending = Take(register, "pending", 'Q');
        register.Rows.Changes.Prepare((pending.Number, Pdf("pending"), 1, "{}"));
        return numbers;
    }

    private static string Name(string job) => Sha256Hex.Of(Pdf(job));

    private static void AssertWhole(DocumentRegister register, Dictionary<string, string> numbers)
    {
        Assert.All(numbers, n => Assert.Equal(Pdf(n.Value), register.Content(register.FindByNumber(n.Key)!)));
        Assert.Empty(register.Check());
    }

    /// <summary>Every document, and the one that is not out yet, is at one place and at no other.</summary>
    private void AssertAt(string place, DocumentRegister register, Dictionary<string, string> numbers)
    {
        AssertWhole(register, numbers);
        Assert.Equal(place, register.ContentPlace);
        var isInside = place is "database";
        var names = numbers.Values.Append("pending").Select(Name).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(isInside ? names.Count : 0, Rows("content"));
        var files = Directory
            .EnumerateFiles(Kept, "*", SearchOption.AllDirectories)
            .Select(f => Path.GetFileName(f))
            .Where(f => f != FolderStore.Marker);
        Assert.Equal(isInside ? [] : names, files.Order(StringComparer.Ordinal));
        using var connection = Connect();
        Assert.True(register.Rows.Database.Triggers().Any(t => t is { Name: "issued_bytes_are_kept", IsOurs: true }));
    }

    private long Rows(string table)
    {
        using var connection = Connect();
        return connection.Number($"SELECT count(*) FROM {table}");
    }
}
