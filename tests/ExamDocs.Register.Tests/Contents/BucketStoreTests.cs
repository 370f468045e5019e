using System.Net;
using ExamDocs.Register.Contents;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Register.Tests.Contents;

/// <summary>Documents in a bucket: what is asked of the service, and what becomes of documents where it fails.</summary>
public sealed class BucketStoreTests : Workplace
{
    private readonly BucketStub _bucket = new();

    public BucketStoreTests()
    {
        Environment.SetEnvironmentVariable("AWS_ACCESS_KEY_ID", "stub-key");
        Environment.SetEnvironmentVariable("AWS_SECRET_ACCESS_KEY", "stub-secret");
        BucketClient.Patience = TimeSpan.FromSeconds(20);
    }

    [Fact]
    public void Documents_are_written_once_under_their_hash_and_moved_back_whole()
    {
        using var register = InBucket("a");
        Issue(register, "b");
        foreach (var job in new[] { "a", "b" })
        {
            var headers = _bucket.Headers[KeyOf(job)];
            Assert.Equal(Pdf(job), _bucket.Objects[KeyOf(job)]);
            Assert.Equal("*", headers["If-None-Match"]);
            Assert.Equal("application/pdf", headers["Content-Type"]);
            Assert.DoesNotContain(headers.Keys, h => h.StartsWith("x-amz-object-lock", StringComparison.OrdinalIgnoreCase));
            Assert.Equal(Pdf(job), register.Content(register.FindIssued(job)!));
        }
        Assert.Empty(register.Check());
        Assert.Empty(register.MoveContent("database").Stayed);
        Assert.Equal($"kit/documents/{BucketStore.Marker}", Assert.Single(_bucket.Objects.Keys));
        Assert.Equal(Pdf("b"), register.Content(register.FindIssued("b")!));
        Assert.Empty(register.Check());
    }

    [Theory]
    [InlineData("", "", "GOVERNANCE")]
    [InlineData("COMPLIANCE", "", "COMPLIANCE")]
    [InlineData("GOVERNANCE", "&lock=compliance", "COMPLIANCE")]
    [InlineData("GOVERNANCE", "&lock=off", null)]
    [InlineData(null, "", null)]
    public void What_the_bucket_locks_is_kept_until_the_end_of_its_last_day(string? bucket, string setting, string? mode)
    {
        _bucket.LockMode = bucket;
        using var register = Open();
        var visit = register.Visits.Remember(SampleVisit.Of("V-1")).Visit;
        register.KeepContentUntil(v => v == visit ? new LocalDate(2028, 5, 11) : null);
        Give(register, "before", visit);
        register.MoveContent(_bucket.Address + setting);
        Give(register, "after", visit);
        Give(register, "of no visit", null);
        foreach (var job in new[] { "before", "after" })
        {
            Assert.Equal(mode, _bucket.Headers[KeyOf(job)].GetValueOrDefault("x-amz-object-lock-mode"));
            var until = _bucket.Headers[KeyOf(job)].GetValueOrDefault("x-amz-object-lock-retain-until-date");
            Assert.Equal(mode is null, until is null);
            if (until is not null)
                Assert.StartsWith("2028-05-12T00:00:00", until, StringComparison.Ordinal);
        }
        Assert.DoesNotContain("x-amz-object-lock-mode", _bucket.Headers[KeyOf("of no visit")].Keys, StringComparer.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("other bytes")]
    [InlineData("one byte changed")]
    [InlineData("cut")]
    [InlineData("gone")]
    public void Bytes_that_are_not_those_that_were_issued_are_never_used(string harm)
    {
        using var register = InBucket("a");
        var bytes = _bucket.Objects[KeyOf("a")];
        if (harm is "gone")
            _bucket.Objects.TryRemove(KeyOf("a"), out _);
        else
            _bucket.Objects[KeyOf("a")] =
                harm is "other bytes" ? Pdf("b")
                : harm is "cut" ? bytes[..^1]
                : [.. bytes[..^1], (byte)(bytes[^1] ^ 1)];
        var lost = Assert.Throws<InvalidDataException>(() => register.Content(register.FindIssued("a")!)).Message;
        Assert.StartsWith(
            $"The register no longer holds R-2026-000001 as it was issued. {_bucket.Address} has ",
            lost,
            StringComparison.Ordinal
        );
        Assert.Equal([lost], register.Check());
    }

    [Fact]
    public void What_breaks_off_is_not_taken_for_a_document()
    {
        using var register = InBucket("a");
        _bucket.BreaksOff = true;
        var failure = Record.Exception(() => register.Content(register.FindIssued("a")!));
        Assert.True(failure is ContentStoreException or InvalidDataException, failure?.ToString());
    }

    [Fact]
    public void What_is_there_already_is_compared_and_never_written_over()
    {
        _bucket.Objects[KeyOf("a")] = Pdf("a");
        _bucket.Objects[KeyOf("b")] = Pdf("somebody's");
        using var register = InBucket("a");
        Assert.Equal(Pdf("a"), register.Content(register.FindIssued("a")!));
        Assert.Contains(
            "Other bytes are at",
            Assert.Throws<ContentStoreException>(() => Issue(register, "b")).Message,
            StringComparison.Ordinal
        );
        Assert.Equal(Pdf("somebody's"), _bucket.Objects[KeyOf("b")]);
    }

    [Fact]
    public void A_service_that_fails_once_is_asked_again()
    {
        var failed = 0;
        using var register = InBucket("a");
        _bucket.Fault = (method, _) =>
            method is "PUT" && Interlocked.Increment(ref failed) == 1 ? (HttpStatusCode.ServiceUnavailable, "SlowDown") : null;
        Assert.Equal("R-2026-000002", Issue(register, "b").Number);
        Assert.True(failed > 1);
    }

    [Fact]
    public void A_service_that_fails_in_the_middle_of_a_move_leaves_all_where_it_was_and_the_move_is_run_again()
    {
        using var register = Open();
        foreach (var job in new[] { "a", "b", "c" })
            Issue(register, job);
        _bucket.Fault = (method, key) =>
            method is "PUT" && key == KeyOf("b") ? (HttpStatusCode.InternalServerError, "InternalError") : null;
        var failed = Assert.Throws<ContentStoreException>(() => register.MoveContent(_bucket.Address)).Message;
        Assert.Contains("the service failed (500 InternalError)", failed, StringComparison.Ordinal);
        Assert.Equal("database", register.ContentPlace);
        Assert.Empty(register.Check());
        _bucket.Fault = static (_, _) => null;
        Assert.Empty(register.MoveContent(_bucket.Address).Faults);
        Assert.Empty(register.Check());
        Assert.Equal(4, _bucket.Objects.Count);
    }

    [Fact]
    public void While_the_service_fails_nothing_is_issued_and_no_number_is_lost()
    {
        using (var register = InBucket("a"))
        {
            _bucket.Fault = static (_, _) => (HttpStatusCode.InternalServerError, "InternalError");
            Assert.Throws<ContentStoreException>(() => Issue(register, "b"));
            Assert.Contains("were not all looked at", Assert.Single(register.Check()), StringComparison.Ordinal);
        }
        _bucket.Fault = static (_, _) => null;
        using var next = Open();
        Assert.StartsWith("R-2026-000002 is void", Assert.Single(next.Recover()), StringComparison.Ordinal);
        Assert.Equal("R-2026-000003", Issue(next, "b").Number);
        AssertNoNumberLostOrReused(next, 3);
        AssertFolderEqualsRegister(next, Out);
    }

    [Fact]
    public void A_service_that_does_not_answer_is_given_up_in_plain_words()
    {
        BucketClient.Patience = TimeSpan.FromMilliseconds(300);
        _bucket.IsSilent = true;
        using var register = Open();
        var failed = Assert.Throws<ContentStoreException>(() => register.MoveContent(_bucket.Address)).Message;
        Assert.Contains("cannot be reached: it did not answer in time", failed, StringComparison.Ordinal);
        _bucket.Dispose();
        failed = Assert.Throws<ContentStoreException>(() => Open().MoveContent(_bucket.Address)).Message;
        Assert.Contains("cannot be reached", failed, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(HttpStatusCode.Forbidden, "SignatureDoesNotMatch", "its keys are wrong or not enough (403 SignatureDoesNotMatch)")]
    [InlineData(HttpStatusCode.Forbidden, "InvalidAccessKeyId", "its keys are wrong or not enough (403 InvalidAccessKeyId)")]
    [InlineData(HttpStatusCode.NotFound, "NoSuchBucket", "there is no such bucket")]
    public void A_refusal_is_told_in_plain_words_without_a_key(HttpStatusCode status, string code, string words)
    {
        _bucket.Fault = (_, _) => (status, code);
        using var register = Open();
        var refused = Assert.Throws<ContentStoreException>(() => register.MoveContent(_bucket.Address)).Message;
        Assert.Contains(words, refused, StringComparison.Ordinal);
        Assert.DoesNotContain("stub-", refused, StringComparison.Ordinal);
        Assert.Equal("database", register.ContentPlace);
    }

    [Fact]
    public void Without_keys_nothing_is_asked()
    {
        using var register = Open();
        var refused = Assert.Throws<ContentStoreException>(() => register.MoveContent($"{_bucket.Address}&profile=examdocs-none")).Message;
        Assert.Contains("There are no keys for", refused, StringComparison.Ordinal);
        Assert.Equal(0, _bucket.Asked);
    }

    [Fact]
    public void What_a_bucket_refuses_to_delete_stays_and_is_said()
    {
        using var register = InBucket("a");
        _bucket.Fault = static (method, _) => method is "DELETE" ? (HttpStatusCode.Forbidden, "AccessDenied") : null;
        Assert.Contains("403 AccessDenied", Assert.Single(register.MoveContent("database").Stayed), StringComparison.Ordinal);
        Assert.Equal(Pdf("a"), register.Content(register.FindIssued("a")!));
        Assert.Empty(register.Check());
        _bucket.Fault = static (_, _) => null;
        Assert.Empty(register.MoveContent("database").Stayed);
        Assert.False(_bucket.Objects.ContainsKey(KeyOf("a")));
    }

    [Fact]
    public void Another_address_of_the_same_bucket_drops_nothing()
    {
        using var register = InBucket("a");
        var moved = register.MoveContent($"{_bucket.Address}&region=eu-west-2");
        Assert.Equal((0, 0, 0), (moved.Copied, moved.Faults.Count, moved.Stayed.Count));
        Assert.Equal(2, _bucket.Objects.Count);
        Assert.Equal(Pdf("a"), register.Content(register.FindIssued("a")!));
        using var other = DocumentRegister.Open(Path.Combine(Root, "other.db"));
        Assert.Contains(
            "has the documents of another register",
            Assert.Throws<ContentStoreException>(() => other.MoveContent(_bucket.Address)).Message,
            StringComparison.Ordinal
        );
    }

    private static string KeyOf(string job) => $"kit/documents/{Sha256Hex.Of(Pdf(job))}";

    private DocumentRegister InBucket(string job)
    {
        var register = Open();
        Issue(register, job);
        register.MoveContent(_bucket.Address);
        return register;
    }

    private static void Give(DocumentRegister register, string job, int? visit) =>
        register.Publish(register.Take(new('R', 2026, "report", job, ["HB-014"], null) { Visit = visit }), Pdf(job), 1, "{}");

    protected override void Dispose(bool disposing)
    {
        _bucket.Dispose();
        base.Dispose(disposing);
    }
}
