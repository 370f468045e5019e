using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Text;

namespace ExamDocs.Register.Tests.Contents;

/// <summary>
/// As much of an S3-compatible service as documents need, on loopback: it refuses to write over an object, keeps the headers it was
/// asked with, and fails as it is told to.
/// </summary>
internal sealed class BucketStub : IDisposable
{
    private readonly HttpListener _listener = new();

    public BucketStub()
    {
        using (var free = new TcpListener(IPAddress.Loopback, 0))
        {
            free.Start();
            Endpoint = FormattableString.Invariant($"http://127.0.0.1:{((IPEndPoint)free.LocalEndpoint).Port}");
        }
        _listener.Prefixes.Add($"{Endpoint}/");
        _listener.Start();
        _ = Task.Run(ServeAsync);
    }

    public string Endpoint { get; }

    public string Address => $"s3://kit/documents?endpoint={Endpoint}";

    /// <summary>By bucket and key, for example kit/documents/ab12.</summary>
    public ConcurrentDictionary<string, byte[]> Objects { get; } = new(StringComparer.Ordinal);

    /// <summary>What each object was written with.</summary>
    public ConcurrentDictionary<string, IReadOnlyDictionary<string, string>> Headers { get; } = new(StringComparer.Ordinal);

    /// <summary>GOVERNANCE or COMPLIANCE where the bucket locks objects and has that for all; empty where it has none for all.</summary>
    public string? LockMode { get; set; }

    /// <summary>Answers in place of the service: a status and a code for a method and key, or null.</summary>
    public Func<string, string, (HttpStatusCode Status, string Code)?> Fault { get; set; } = static (_, _) => null;

    /// <summary>Leaves every question without an answer.</summary>
    public bool IsSilent { get; set; }

    /// <summary>Gives only half of each object.</summary>
    public bool BreaksOff { get; set; }

    /// <summary>Counts every question.</summary>
    public int Asked => _asked;

    private int _asked;

    public void Dispose() => _listener.Close();

    private async Task ServeAsync()
    {
        while (_listener.IsListening)
        {
            try
            {
                var context = await _listener.GetContextAsync();
                _ = Task.Run(() => AnswerAsync(context));
            }
            catch (Exception closed) when (closed is HttpListenerException or ObjectDisposedException or InvalidOperationException)
            {
                return;
            }
        }
    }

    private async Task AnswerAsync(HttpListenerContext context)
    {
        Interlocked.Increment(ref _asked);
        var (request, response) = (context.Request, context.Response);
        var key = Uri.UnescapeDataString(request.Url!.AbsolutePath).TrimStart('/');
        using var body = new MemoryStream();
        await request.InputStream.CopyToAsync(body);
        if (IsSilent)
            return;
        try
        {
            if (Fault(request.HttpMethod, key) is { } fault)
                Refuse(response, fault.Status, fault.Code);
            else if (!key.StartsWith("kit/", StringComparison.Ordinal) && key is not "kit")
                Refuse(response, HttpStatusCode.NotFound, "NoSuchBucket");
            else if (request.Url.Query.Contains("object-lock", StringComparison.Ordinal))
                Lock(response);
            else
                Answer(request, response, key, body.ToArray());
            response.Close();
        }
        catch (Exception gone) when (gone is HttpListenerException or ObjectDisposedException or InvalidOperationException)
        {
            response.Abort();
        }
    }

    private void Answer(HttpListenerRequest request, HttpListenerResponse response, string key, byte[] body)
    {
        switch (request.HttpMethod)
        {
            case "PUT":
                Put(request, response, key, body);
                break;
            case "GET" when Objects.TryGetValue(key, out var bytes):
                response.ContentLength64 = bytes.Length;
                response.OutputStream.Write(BreaksOff ? bytes.AsSpan(0, bytes.Length / 2) : bytes);
                if (BreaksOff)
                    response.Abort();
                break;
            case "DELETE":
                Objects.TryRemove(key, out _);
                response.StatusCode = (int)HttpStatusCode.NoContent;
                break;
            default:
                Refuse(response, HttpStatusCode.NotFound, "NoSuchKey");
                break;
        }
    }

    private void Put(HttpListenerRequest request, HttpListenerResponse response, string key, byte[] body)
    {
        if (request.Headers["x-amz-checksum-sha256"] != Convert.ToBase64String(SHA256.HashData(body)))
            Refuse(response, HttpStatusCode.BadRequest, "BadDigest");
        else if (request.Headers["If-None-Match"] != "*")
            Refuse(response, HttpStatusCode.BadRequest, "WouldWriteOver");
        else if (!Objects.TryAdd(key, body))
            Refuse(response, HttpStatusCode.PreconditionFailed, "PreconditionFailed");
        else
            Headers[key] = request.Headers.AllKeys.ToDictionary(k => k!, k => request.Headers[k]!, StringComparer.OrdinalIgnoreCase);
    }

    private void Lock(HttpListenerResponse response)
    {
        if (LockMode is null)
        {
            Refuse(response, HttpStatusCode.NotFound, "ObjectLockConfigurationNotFoundError");
            return;
        }
        var rule = LockMode.Length == 0 ? "" : $"<Rule><DefaultRetention><Mode>{LockMode}</Mode><Days>1</Days></DefaultRetention></Rule>";
        Say(
            response,
            "<ObjectLockConfiguration xmlns=\"http://s3.amazonaws.com/doc/2006-03-01/\"><ObjectLockEnabled>Enabled</ObjectLockEnabled>"
                + $"{rule}</ObjectLockConfiguration>"
        );
    }

    private static void Refuse(HttpListenerResponse response, HttpStatusCode status, string code)
    {
        response.StatusCode = (int)status;
        Say(response, $"<Error><Code>{code}</Code><Message>key stub-key</Message><AWSAccessKeyId>stub-key</AWSAccessKeyId></Error>");
    }

    private static void Say(HttpListenerResponse response, string xml)
    {
        response.ContentType = "application/xml";
        response.OutputStream.Write(Encoding.UTF8.GetBytes($"<?xml version=\"1.0\" encoding=\"UTF-8\"?>{xml}"));
    }
}
