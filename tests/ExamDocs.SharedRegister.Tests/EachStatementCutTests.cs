using System.Data.Common;
using ExamDocs.Proof.Tests;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Tests;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>
/// The session is cut before and after each single statement by which a document is issued that replaces another. The next run finishes
/// what was left: no number is lost or given twice, and no document is there twice.
/// </summary>
public sealed class EachStatementCutTests : Workplace
{
    [Fact]
    public void Wherever_the_connection_is_lost_nothing_is_doubled_and_no_number_is_lost()
    {
        using var next = Open();
        next.Visits.Remember(SampleVisit.Of("V-2026-031"));
        var statements = 0;
        using (var proxy = new CutProxy(Server.Port, 0, isAfter: false))
        using (var whole = DocumentRegister.Open(proxy.Through(Database)))
        {
            proxy.Count();
            IssueOver(whole, "whole", Issue(next, "before").Number);
            statements = proxy.Statements;
        }
        Assert.InRange(statements, 15, 100);
        var (finished, lost) = (0, 0);
        for (var at = 1; at <= statements; at++)
        {
            // After one statement is nearly before the next: each is cut once, on either side in turn.
            foreach (var isAfter in Effort.Of(1, 2) == 2 ? (bool[])[false, true] : [at % 2 == 0])
            {
                var job = FormattableString.Invariant($"job {at} {isAfter}");
                var replaced = Issue(next, $"{job} before").Number;
                Assert.True(IsCut(job, replaced, at, isAfter), $"{job} was not cut.");
                Settle(next);
                if (next.FindIssued(job) is null)
                {
                    lost++;
                    Assert.True(next.Find(replaced)!.IsCurrent);
                    IssueOver(next, job, replaced);
                }
                else
                {
                    finished++;
                }
                Assert.Equal(
                    [next.FindIssued(job)!.Number],
                    next.Documents().Where(d => string.Equals(d.JobKey, job, StringComparison.Ordinal)).Select(d => d.Number)
                );
                Assert.Equal([next.FindIssued(job)!.Number], next.Find(replaced)!.ReplacedBy);
            }
        }
        Assert.True(finished > 5 && lost > 5, FormattableString.Invariant($"{finished} finished, {lost} lost."));
        AssertNoNumberLostOrReused(next, next.Issued().Count + next.Voided().Count);
        AssertFolderEqualsRegister(next, Out);
    }

    private bool IsCut(string job, string replaced, int at, bool isAfter)
    {
        using var proxy = new CutProxy(Server.Port, at, isAfter);
        using var run = DocumentRegister.Open(proxy.Through(Database));
        proxy.Count();
        try
        {
            IssueOver(run, job, replaced);
            return false;
        }
        catch (Exception cut) when (cut is DbException or IOException)
        {
            return true;
        }
    }

    private void IssueOver(DocumentRegister register, string job, string replaced) =>
        register.Publish(
            register.Take(
                new('R', 2026, "report", job, ["HB-014"], Out) { Replaces = [new Replacement(replaced, "a correction")], Visit = 1 }
            ),
            Pdf(job),
            1,
            "{}"
        );
}
