using System.Net;
using System.Security.Cryptography;
using Amazon.Runtime;
using Amazon.S3;
using Amazon.S3.Model;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Register.Contents;

/// <summary>
/// A bucket of an S3-compatible service. Each document is written with If-None-Match, so that nothing there is ever written over, and
/// locked until its last day where the bucket locks objects.
/// </summary>
internal sealed class BucketStore(ContentAddress address) : ContentStore(address)
{
    private readonly BucketPlace _bucket = address.Bucket();
    private readonly Lock _once = new();
    private AmazonS3Client? _client;
    private (ObjectLockMode? Mode, bool IsKnown) _lock;

    public override bool Locks => Mode is not null;

    public override void Prepare(string register)
    {
        _ = Locks;
        var marker = MarkerOf(register);
        Put(Marker, marker, null);
        if (Find(Marker) is not { } there || !marker.AsSpan().SequenceEqual(there))
            throw OfAnother();
    }

    public override void Put(string sha256, byte[] bytes, LocalDate? keepUntil)
    {
        var mode = keepUntil is null ? null : Mode;
        var isNew = Asked(
            "written",
            async () =>
            {
                using var body = new MemoryStream(bytes, writable: false);
                var request = new PutObjectRequest
                {
                    BucketName = _bucket.Name,
                    Key = KeyOf(sha256),
                    InputStream = body,
                    ContentType = sha256 is Marker ? "text/plain" : "application/pdf",
                    IfNoneMatch = "*",
                    // The service compares what arrives.
                    ChecksumSHA256 = Convert.ToBase64String(SHA256.HashData(bytes)),
                    UseChunkEncoding = false,
                };
                if (mode is not null)
                {
                    request.ObjectLockMode = mode;
                    request.ObjectLockRetainUntilDate = keepUntil!.Value.PlusDays(1).AtMidnight().InUtc().ToDateTimeUtc();
                }
                await Client.PutObjectAsync(request);
                return true;
            },
            // There already, or another run is writing the very same.
            HttpStatusCode.PreconditionFailed,
            HttpStatusCode.Conflict
        );
        if (!isNew && sha256 is not Marker && !Has(sha256))
            throw new ContentStoreException(
                $"{Place} refused {sha256} as there already, and does not give it. Run the command again in a moment."
            );
    }

    public override byte[]? Find(string sha256) =>
        Asked<byte[]?>(
            "read",
            async () =>
            {
                using var found = await Client.GetObjectAsync(_bucket.Name, KeyOf(sha256));
                using var bytes = new MemoryStream();
                await found.ResponseStream.CopyToAsync(bytes);
                return bytes.ToArray();
            },
            HttpStatusCode.NotFound
        );

    public override void Delete(string sha256) =>
        Asked(
            "written",
            async () =>
            {
                await Client.DeleteObjectAsync(_bucket.Name, KeyOf(sha256));
                return true;
            },
            HttpStatusCode.NotFound
        );

    private string KeyOf(string name) => _bucket.Prefix.Length == 0 ? name : $"{_bucket.Prefix}/{name}";

    /// <summary>How it locks what is written; null where it does not.</summary>
    private ObjectLockMode? Mode
    {
        get
        {
            lock (_once)
            {
                if (!_lock.IsKnown)
                    _lock = (Asked(), true);
                return _lock.Mode;
            }
        }
    }

    private ObjectLockMode? Asked() =>
        _bucket.Lock switch
        {
            "off" => null,
            "compliance" => ObjectLockMode.Compliance,
            "governance" => ObjectLockMode.Governance,
            // A bucket that does not know of locks says that it is not found or not implemented.
            _ => Asked(
                "read",
                async () =>
                {
                    var asked = new GetObjectLockConfigurationRequest { BucketName = _bucket.Name };
                    var found = (await Client.GetObjectLockConfigurationAsync(asked)).ObjectLockConfiguration;
                    if (found?.ObjectLockEnabled != ObjectLockEnabled.Enabled)
                        return null;
                    return found.Rule?.DefaultRetention?.Mode is { } mode ? new ObjectLockMode(mode.Value) : ObjectLockMode.Governance;
                },
                HttpStatusCode.NotFound,
                HttpStatusCode.NotImplemented,
                HttpStatusCode.MethodNotAllowed,
                HttpStatusCode.BadRequest
            ),
        };

    private AmazonS3Client Client
    {
        get
        {
            lock (_once)
                return _client ??= BucketClient.Of(_bucket, Place);
        }
    }

    /// <summary>What the service answers; the default where it answers with one of these.</summary>
    private T? Asked<T>(string what, Func<Task<T>> ask, params HttpStatusCode[] none)
    {
        try
        {
            return ask().GetAwaiter().GetResult();
        }
        // A bucket that is not there is not an object that is not there.
        catch (AmazonServiceException answer) when (none.Contains(answer.StatusCode) && answer.ErrorCode is not "NoSuchBucket")
        {
            return default;
        }
        // Its message may hold a key, and is not repeated.
        catch (AmazonServiceException answer)
        {
            throw new ContentStoreException(
                $"{Place}, where the documents are kept, cannot be {what}: {BucketClient.Words(answer)}. Nothing is lost; run the command "
                    + "again once that is mended."
            );
        }
        catch (Exception failure) when (BucketClient.IsUnreachable(failure))
        {
            throw new ContentStoreException(
                $"{Place}, where the documents are kept, cannot be reached: {BucketClient.Cause(failure)}. Nothing is lost; run the "
                    + "command again once it can."
            );
        }
    }
}
