using System.Text;
using ExamDocs.Register.Storage;
using ExamDocs.Register.Work;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>Who prints which page for whom.</summary>
public sealed class SharedPagesTests : WorkplaceOfWork
{
    private static readonly byte[] Page = "<p>word"u8.ToArray();

    private static readonly byte[] Print = "%PDF-1.7 one"u8.ToArray();

    private SharedPages Pages()
    {
        Work().Dispose();
        return SharedPages.Open(Database);
    }

    private static Guid Asked(SharedPages asker, byte[]? page = null)
    {
        var id = Guid.NewGuid();
        asker.Ask(id, page ?? Page, Version);
        return id;
    }

    [Fact]
    public void Each_page_is_printed_by_one_worker_and_told_to_whoever_asked_for_it_once()
    {
        using var asker = Pages();
        using var other = SharedPages.Open(Database);
        using var one = SharedPages.Open(Database);
        using var two = SharedPages.Open(Database);
        var (first, second, third) = (Asked(asker), Asked(asker), Asked(other));
        var claimed = new[] { one.Claim(Version, Long)!, two.Claim(Version, Long)!, one.Claim(Version, Long)! };
        Assert.Equal([first, second, third], claimed.Select(c => c.Id));
        Assert.All(claimed, c => Assert.Equal(Page, c.Html));
        Assert.Null(two.Claim(Version, Long));
        one.Answer(claimed[0], Print);
        two.Refuse(claimed[1], "it is too large");
        one.Answer(claimed[2], Print);
        Assert.Equal(
            new[] { (first, true, null), (second, false, "it is too large") }.ToHashSet(),
            asker.Answers(asker.Asker).Select(a => (a.Id, a.Pdf is not null, a.Why)).ToHashSet()
        );
        Assert.Empty(asker.Answers(asker.Asker));
        Assert.Equal(Print, Assert.Single(asker.Answers(other.Asker)).Pdf);
    }

    [Fact]
    public void A_page_of_another_version_is_left_alone()
    {
        using var asker = Pages();
        using var worker = SharedPages.Open(Database);
        Asked(asker);
        Assert.Null(worker.Claim("0.9.9", Long));
        Assert.NotNull(worker.Claim(Version, Long));
    }

    [Fact]
    public void What_a_worker_had_that_is_gone_another_prints_and_three_times_at_most()
    {
        using var asker = Pages();
        var id = Asked(asker);
        for (var attempt = 1; attempt <= SharedPages.MostAttempts; attempt++)
        {
            using var killed = SharedPages.Open(Database);
            Assert.Equal(id, killed.Claim(Version, Long)?.Id);
        }
        using var left = SharedPages.Open(Database);
        Assert.Null(left.Claim(Version, Long));
        Assert.Contains("each time its worker was gone", Assert.Single(asker.Answers(asker.Asker)).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lease_that_ends_frees_the_page_and_what_its_worker_gives_afterwards_does_not_count()
    {
        using var asker = Pages();
        using var slow = SharedPages.Open(Database);
        using var other = SharedPages.Open(Database);
        Asked(asker);
        var claimed = slow.Claim(Version, TimeSpan.FromSeconds(-1))!;
        var again = other.Claim(Version, Long)!;
        Assert.Equal(claimed.Id, again.Id);
        slow.Answer(claimed, "%PDF-1.7 other"u8.ToArray());
        Assert.Empty(asker.Answers(asker.Asker));
        other.Answer(again, Print);
        Assert.Equal(Print, Assert.Single(asker.Answers(asker.Asker)).Pdf);
    }

    [Fact]
    public void Nobody_prints_what_nobody_waits_for()
    {
        using var worker = Pages();
        using (var gone = SharedPages.Open(Database))
            Asked(gone);
        Assert.Null(worker.Claim(Version, Long));
        using var asker = SharedPages.Open(Database);
        asker.TakeBack(Asked(asker));
        Assert.Null(worker.Claim(Version, Long));
        using var connection = Connect();
        Assert.Equal(0, connection.Number("SELECT count(*) FROM examdocs_work.page"));
    }

    [Fact]
    public async Task Whoever_waits_is_told_of_a_page_and_of_its_print()
    {
        using var asker = Pages();
        using var worker = SharedPages.Open(Database);
        Assert.Null(worker.Claim(Version, Long));
        var waiting = worker.WaitAsync(Long, TestContext.Current.CancellationToken);
        Asked(asker, Encoding.UTF8.GetBytes("<p>Grüße"));
        await waiting;
        var claimed = worker.Claim(Version, Long)!;
        Assert.Equal("<p>Grüße", Encoding.UTF8.GetString(claimed.Html));
        Assert.Empty(asker.Answers(asker.Asker));
        var told = asker.WaitAsync(Long, TestContext.Current.CancellationToken);
        worker.Answer(claimed, Print);
        await told;
        Assert.Single(asker.Answers(asker.Asker));
    }

    [Fact]
    public void A_list_of_work_without_pages_is_brought_up_to_date_and_keeps_its_jobs()
    {
        int job;
        using (var work = Work())
            job = work.Enqueue(AJob());
        ByHand("DROP TABLE examdocs_work.page; UPDATE examdocs_work.layout SET version = 1");
        var old = Assert.Throws<ExamDocs.Register.Model.RegisterRefusedException>(() => SharedPages.Open(Database));
        Assert.Contains("register update", old.Message, StringComparison.Ordinal);
        SharedWork.Make(Database);
        using var asker = SharedPages.Open(Database);
        Asked(asker);
        using var again = SharedWork.Open(Database);
        Assert.NotNull(again.Find(job));
    }
}
