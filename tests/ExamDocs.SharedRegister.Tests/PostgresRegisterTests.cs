using ExamDocs.Register.Opening;
using ExamDocs.Register.Tests;

namespace ExamDocs.SharedRegister.Tests;

public sealed class PostgresRegisterTests : Workplace
{
    [Fact]
    public void A_run_has_ended_as_soon_as_it_gives_up_its_lock_and_not_before()
    {
        using var one = PostgresOpening.Open(Database, new(2026, 5, 12));
        using var other = PostgresOpening.Open(Database, new(2026, 5, 12));
        string run;
        using (var hold = one.Hold())
        {
            run = hold.Run;
            Assert.False(other.HasEnded(run));
        }
        Assert.True(other.HasEnded(run));
    }

    [Fact]
    public void Giving_up_the_lock_of_a_lost_connection_is_no_fault()
    {
        using var other = PostgresOpening.Open(Database, new(2026, 5, 12));
        var one = PostgresOpening.Open(Database, new(2026, 5, 12));
        var hold = one.Hold();
        one.Dispose();
        hold.Dispose();
        Assert.True(SpinWait.SpinUntil(() => other.HasEnded(hold.Run), TimeSpan.FromSeconds(30)));
    }
}
