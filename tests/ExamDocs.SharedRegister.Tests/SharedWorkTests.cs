using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using ExamDocs.Register.Work;
using Npgsql;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>Who gets which part of which job, and when.</summary>
public sealed class SharedWorkTests : WorkplaceOfWork
{
    [Fact]
    public void Two_workers_get_different_parts_and_a_stage_begins_once_the_one_before_is_done()
    {
        using var one = Work();
        using var other = SharedWork.Open(Database);
        var job = one.Enqueue(AJob());
        var decide = one.Claim(Version, Long)!;
        Assert.Equal(new JobPart(job, 0, 0, 1), decide.Part);
        Assert.Null(other.Claim(Version, Long));
        Divide(one, decide, slices: 2);
        var (first, second) = (one.Claim(Version, Long)!, other.Claim(Version, Long)!);
        Assert.Equal([0, 1], new[] { first.Part.Slice, second.Part.Slice }.Order());
        Assert.Null(one.Claim(Version, Long));
        Assert.True(one.Finish(first, Gave("R-2026-000001")));
        Assert.Null(one.Claim(Version, Long));
        Assert.True(other.Finish(second, Gave("R-2026-000002")));
        var end = one.Claim(Version, Long)!;
        Assert.Equal(2, end.Part.Stage);
        Assert.Equal(["R-2026-000001", "R-2026-000002"], one.DocumentsOf(job));
        Assert.False(one.IsIdle(Version));
        Assert.True(one.Finish(end, Gave()));
        Assert.True(one.IsIdle(Version));
        var listed = one.Listed(job)!;
        Assert.Equal((JobState.Done, 2, 3), (listed.State, listed.Documents, listed.PartsDone));
        Assert.Empty(one.Files(job));
    }

    [Fact]
    public void What_a_worker_had_that_is_gone_is_taken_over_at_once()
    {
        using var left = Work();
        left.Enqueue(AJob());
        var gone = SharedWork.Open(Database);
        Assert.Equal(1, gone.Claim(Version, Long)!.Attempts);
        Assert.Null(left.Claim(Version, Long));
        gone.Dispose();
        Assert.Equal(2, left.Claim(Version, Long)!.Attempts);
    }

    [Fact]
    public void A_lease_that_ends_frees_the_part_and_what_its_worker_says_afterwards_no_longer_counts()
    {
        using var slow = Work();
        using var other = SharedWork.Open(Database);
        slow.Enqueue(AJob());
        var claimed = slow.Claim(Version, Long)!;
        Later("lease_until = clock_timestamp() + interval '1 second'");
        Assert.True(slow.Renew(claimed, Long));
        Assert.Null(other.Claim(Version, Long));
        Later("lease_until = clock_timestamp() - interval '1 second'");
        Assert.NotNull(other.Claim(Version, Long));
        Assert.False(slow.Renew(claimed, Long));
        Assert.False(slow.Finish(claimed, Gave("R-2026-000001")));
        slow.PutBack(claimed, "too late", TimeSpan.Zero, counts: true);
        slow.Fail(claimed, "too late");
        slow.Refuse(claimed, "too late");
        Assert.Equal((JobState.Running, 0), (other.Listed(1)!.State, other.Listed(1)!.Said.Count));
    }

    [Fact]
    public void A_part_that_takes_its_workers_along_is_begun_five_times_and_then_waits_for_somebody_to_ask_for_it()
    {
        using var work = Work();
        var job = work.Enqueue(AJob());
        for (var attempt = 1; attempt <= SharedWork.MostAttempts; attempt++)
        {
            using var killed = SharedWork.Open(Database);
            Assert.Equal(attempt, killed.Claim(Version, Long)?.Attempts);
        }
        Assert.Null(work.Claim(Version, Long));
        Assert.Equal(JobState.Failed, work.Listed(job)!.State);
        Assert.Equal(
            "it was begun 5 times, and each time its worker was gone before a document came out",
            Assert.Single(work.Listed(job)!.Said)
        );
        Assert.True(work.IsIdle(Version));
        Assert.True(work.Retry(job));
        Assert.Equal(1, work.Claim(Version, Long)!.Attempts);
    }

    [Fact]
    public void A_part_that_goes_on_each_time_may_be_begun_as_often_as_it_takes()
    {
        using var work = Work();
        work.Enqueue(AJob());
        for (var attempt = 0; attempt < 2 * SharedWork.MostAttempts; attempt++)
        {
            using var killed = SharedWork.Open(Database);
            var claimed = killed.Claim(Version, Long);
            Assert.NotNull(claimed);
            killed.Advance(claimed);
        }
        Assert.Equal(2, work.Claim(Version, Long)!.Attempts);
    }

    [Fact]
    public void A_machine_that_fails_gives_the_part_back_for_a_while_and_five_times_at_most()
    {
        using var work = Work();
        var job = work.Enqueue(AJob());
        work.PutBack(work.Claim(Version, Long)!, "stopped by the user", TimeSpan.Zero, counts: false);
        work.PutBack(work.Claim(Version, Long)!, "no browser", TimeSpan.FromHours(1), counts: true);
        Assert.Null(work.Claim(Version, Long));
        Assert.False(work.IsIdle(Version));
        for (var attempt = 2; attempt <= SharedWork.MostAttempts; attempt++)
        {
            Later("not_before = '-infinity'");
            var again = work.Claim(Version, Long)!;
            Assert.Equal(attempt, again.Attempts);
            work.PutBack(again, "no browser", TimeSpan.Zero, counts: true);
        }
        Assert.Null(work.Claim(Version, Long));
        Assert.Equal((JobState.Failed, "no browser"), (work.Listed(job)!.State, Assert.Single(work.Listed(job)!.Said)));
    }

    [Fact]
    public void Jobs_of_one_visit_are_decided_in_the_order_asked_for_and_others_beside_them()
    {
        using var one = Work();
        using var other = SharedWork.Open(Database);
        var (first, second, third) = (one.Enqueue(AJob("v-1")), one.Enqueue(AJob("v-2", "v-1")), one.Enqueue(AJob("v-3")));
        var decide = one.Claim(Version, Long)!;
        Assert.Equal(first, decide.Part.Job);
        Assert.Equal(third, other.Claim(Version, Long)!.Part.Job);
        Assert.Null(other.Claim(Version, Long));
        Divide(one, decide, slices: 1, visit: 7);
        Assert.Equal(second, other.Claim(Version, Long, second)!.Part.Job);
        Assert.Equal([7], other.StoredByEarlierJobs(second, [6, 7]));
        Assert.Empty(other.StoredByEarlierJobs(first, [6, 7]));
    }

    [Fact]
    public void A_job_that_one_version_decided_is_left_to_it_until_somebody_asks_for_another()
    {
        using var work = Work();
        var job = work.Enqueue(AJob());
        Divide(work, work.Claim(Version, Long)!, slices: 1);
        Assert.Null(work.Claim("2.0.0", Long));
        Assert.True(work.IsIdle("2.0.0"));
        Assert.Equal(Version, work.Listed(job)!.Version);
        Assert.True(work.Retry(job));
        Assert.Equal(0, work.Claim("2.0.0", Long)!.Part.Stage);
    }

    [Fact]
    public async Task Whoever_waits_is_told_and_finds_the_job_also_where_nobody_told()
    {
        using var waits = Work();
        Assert.Null(waits.Claim(Version, Long));
        using var other = SharedWork.Open(Database);
        var told = waits.WaitAsync(TimeSpan.FromMinutes(2), TestContext.Current.CancellationToken);
        var job = other.Enqueue(AJob());
        await told;
        Assert.Equal(job, waits.Claim(Version, Long)!.Part.Job);
        using (var connection = Connect())
        {
            connection.Execute(
                """
                INSERT INTO examdocs_work.job (title, visit_references, options, as_of, known_up_to)
                VALUES ('', '{}', '{}', '2026-05-12', 0);
                INSERT INTO examdocs_work.part (job, stage, slice, slices) VALUES (2, 0, 0, 1)
                """
            );
        }
        await waits.WaitAsync(TimeSpan.FromMilliseconds(50), TestContext.Current.CancellationToken);
        Assert.Equal(2, waits.Claim(Version, Long)!.Part.Job);
    }

    [Fact]
    public void A_job_taken_back_or_refused_is_begun_no_more_and_the_files_of_the_one_are_gone()
    {
        using var work = Work();
        var (cancelled, refused) = (work.Enqueue(AJob()), work.Enqueue(AJob()));
        Assert.Equal([1, 2, 3], Assert.Single(work.Files(cancelled)).Bytes);
        Assert.True(work.Cancel(cancelled));
        Assert.False(work.Cancel(cancelled));
        Assert.False(work.Retry(cancelled));
        Assert.Empty(work.Files(cancelled));
        work.Refuse(work.Claim(Version, Long)!, "visit.json: unreadable");
        Assert.Null(work.Claim(Version, Long));
        Assert.Equal(
            (JobState.Refused, "visit.json: unreadable"),
            (work.Listed(refused)!.State, Assert.Single(work.Listed(refused)!.Said))
        );
        Assert.False(work.Retry(refused));
        Assert.True(work.IsIdle(Version));
    }

    [Fact]
    public void A_file_that_is_not_as_it_was_given_is_not_handed_out_and_the_server_takes_none_that_is_too_large()
    {
        using var work = Work();
        var job = work.Enqueue(AJob());
        using var connection = Connect();
        connection.Execute("UPDATE examdocs_work.file SET bytes = '\\x00'");
        Assert.Contains(
            "no longer as it was given",
            Assert.Throws<InvalidDataException>(() => work.Files(job)).Message,
            StringComparison.Ordinal
        );
        Assert.Throws<PostgresException>(() =>
            connection.Execute("INSERT INTO examdocs_work.file VALUES (1, 5000, 'x', '\\x00', repeat('0', 64))")
        );
        Assert.Throws<PostgresException>(() =>
            connection.Execute(
                "INSERT INTO examdocs_work.job (title, visit_references, options, as_of, known_up_to) "
                    + "VALUES ('', '{}', repeat('x', 200000), '2026-05-12', 0)"
            )
        );
    }

    [Fact]
    public void A_register_without_a_list_of_work_says_who_makes_one_and_one_in_a_file_has_none()
    {
        Open().Dispose();
        Assert.Contains(
            "register update",
            Assert.Throws<RegisterRefusedException>(() => SharedWork.Open(Database)).Message,
            StringComparison.Ordinal
        );
        SharedWork.Make(Database);
        SharedWork.Make(Database);
        using (var connection = Connect())
            connection.Execute("UPDATE examdocs_work.layout SET version = 99");
        Assert.Contains(
            "another version",
            Assert.Throws<RegisterRefusedException>(() => SharedWork.Open(Database)).Message,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "is a file",
            Assert.Throws<RegisterRefusedException>(() => SharedWork.Open("kit.db")).Message,
            StringComparison.Ordinal
        );
    }
}
