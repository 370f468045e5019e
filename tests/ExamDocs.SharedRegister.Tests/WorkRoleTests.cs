using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using ExamDocs.Register.Work;
using Npgsql;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>Who may put jobs on the list and work at them, set up word for word as the pages say.</summary>
public sealed class WorkRoleTests : WorkplaceOfWork
{
    private const string NoPermission = "42501";

    [Fact]
    public void An_examiner_may_put_jobs_on_the_list_and_work_at_them_and_change_neither_their_files_nor_the_tables()
    {
        Work().Dispose();
        ByHand(RoleTests.GrantsOf("shared-register.md"));
        ByHand(RoleTests.GrantsOf("work.md"));
        OnTheServer($"CREATE ROLE anna_{DatabaseName} LOGIN PASSWORD '{Server.Password}' IN ROLE examiner");
        var anna = Server.AddressOf(DatabaseName, $"anna_{DatabaseName}");
        using (var work = SharedWork.Open(anna))
        {
            var job = work.Enqueue(AJob("v-1"));
            work.PutBack(work.Claim(Version, Long)!, "stopped by the user", TimeSpan.Zero, counts: false);
            Divide(work, work.Claim(Version, Long)!, slices: 2);
            Assert.True(work.Retry(job));
            Divide(work, work.Claim(Version, Long)!, slices: 1);
            var print = work.Claim(Version, Long)!;
            Assert.True(work.Renew(print, Long));
            work.Advance(print);
            Assert.True(work.Finish(print, Gave("R-2026-000001")));
            Assert.True(work.Finish(work.Claim(Version, Long)!, Gave()));
            Assert.Equal((JobState.Done, $"anna_{DatabaseName}"), (work.Listed(job)!.State, work.Listed(job)!.AskedBy));
            Assert.True(work.Cancel(work.Enqueue(AJob())));
            work.Refuse(Claimed(work), "unreadable");
            work.Fail(Claimed(work), "a fault");
        }
        using (var pages = SharedPages.Open(anna))
        {
            pages.Ask(Guid.NewGuid(), [1], Version);
            pages.Answer(pages.Claim(Version, Long)!, [2]);
            Assert.Single(pages.Answers(pages.Asker));
        }
        using var connection = Connect(DatabaseName, $"anna_{DatabaseName}", Server.Password);
        string[] forbidden =
        [
            "UPDATE examdocs_work.file SET bytes = ''",
            "DELETE FROM examdocs_work.job",
            "UPDATE examdocs_work.layout SET version = 3",
            "TRUNCATE examdocs_work.part",
            "DROP TABLE examdocs_work.part",
            "CREATE TABLE examdocs_work.mine (x int)",
        ];
        Assert.All(forbidden, statement =>
            Assert.Equal(NoPermission, Assert.Throws<PostgresException>(() => connection.Execute(statement)).SqlState)
        );
    }

    [Fact]
    public void Whoever_may_use_the_register_alone_is_told_that_the_list_is_not_granted_and_makes_none()
    {
        Open().Dispose();
        OnTheServer($"CREATE ROLE berta_{DatabaseName} LOGIN PASSWORD '{Server.Password}'");
        ByHand(
            $"GRANT USAGE ON SCHEMA examdocs TO berta_{DatabaseName}; GRANT SELECT ON ALL TABLES IN SCHEMA examdocs TO berta_{DatabaseName}"
        );
        var berta = Server.AddressOf(DatabaseName, $"berta_{DatabaseName}");
        Assert.Contains(
            "this user may not make one",
            Assert.Throws<RegisterRefusedException>(() => SharedWork.Make(berta)).Message,
            StringComparison.Ordinal
        );
        SharedWork.Make(Database);
        Assert.Contains(
            "this user may not use it",
            Assert.Throws<RegisterRefusedException>(() => SharedWork.Open(berta)).Message,
            StringComparison.Ordinal
        );
    }

    private static ClaimedPart Claimed(SharedWork work)
    {
        work.Enqueue(AJob());
        return work.Claim(Version, Long)!;
    }
}
