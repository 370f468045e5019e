using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using System.Text.Json.Nodes;
using NodaTime;

namespace ExamDocs.Cli.Tests;

/// <summary><c>--sign</c>, <c>--timestamp</c> and <c>--key-password-file</c>.</summary>
public sealed class SigningTests : IDisposable
{
    private const string PasswordVariable = "EXAMDOCS_KEY_PASSWORD";

    private readonly Examdocs _examdocs = new();

    [Fact]
    public async Task Every_document_is_signed_and_the_second_run_finds_them_issued()
    {
        var visit = Records.Cut().Write(_examdocs, "visit.json");
        WriteKey("key.p12", "open sesame");
        File.WriteAllText(_examdocs.At("password"), "open sesame\nnot this\n");

        var first = await _examdocs.RunAsync("issue", visit, "--out", "out", "--sign", "key.p12", "--key-password-file", "password");
        _examdocs.With(PasswordVariable, "open sesame");
        var second = await _examdocs.RunAsync("issue", visit, "--out", "out", "--sign", "key.p12");

        Assert.Equal((0, 0), (first.ExitCode, second.ExitCode));
        Assert.Contains("the key is of Ada Invented: both names are printed", first.Err, StringComparison.Ordinal);
        Assert.Equal(3, second.Out.Split("(issued before)").Length - 1);
        Assert.Equal(3, Files().Count);
        Assert.All(Files(), f =>
            Assert.Contains("ETSI.CAdES.detached", Encoding.Latin1.GetString(File.ReadAllBytes(f)), StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("wrong", "key.p12: the password does not open it")]
    [InlineData(null, "key.p12: it is locked, and no password was given")]
    public async Task A_key_that_does_not_open_is_2_and_nothing_is_issued(string? password, string said)
    {
        var visit = Records.Cut().Write(_examdocs, "visit.json");
        WriteKey("key.p12", "right");
        if (password is not null)
            _examdocs.With(PasswordVariable, password);

        string[][] calls =
        [
            ["issue", visit, "--out", "out", "--sign", "key.p12"],
            ["label", visit, "--out", "l.pdf", "--sign", "key.p12"],
            ["blank", "--from", visit, "--out", "s.pdf", "--sign", "key.p12"],
        ];
        foreach (var call in calls)
        {
            var run = await _examdocs.RunAsync(call);
            Assert.Equal((2, said), (run.ExitCode, run.Err.Trim()));
        }
        Assert.Equal(["key.p12", "key.p12.pem", "visit.json"], _examdocs.Files());
    }

    [Theory]
    [InlineData("--timestamp and --key-password-file need a key", "--timestamp", "http://127.0.0.1:9/")]
    [InlineData("an address is one", "--sign", "key.p12", "--timestamp", "ftp://x/")]
    [InlineData("a key is there", "--sign", "nowhere.p12")]
    public async Task A_wrong_call_is_2(string why, params string[] options)
    {
        var visit = Records.Cut().Write(_examdocs, "visit.json");
        WriteKey("key.p12", "");
        var run = await _examdocs.RunAsync(["issue", visit, "--out", "out", .. options]);
        Assert.True(run.ExitCode == 2 && run.Err.Length > 0, why);
        Assert.False(Directory.Exists(_examdocs.At("out")));
    }

    [Fact]
    public async Task Without_a_timestamp_it_is_3_nothing_is_out_and_the_next_run_goes_on()
    {
        var visit = Records.Cut().Write(_examdocs, "visit.json");
        WriteKey("key.p12", "");

        var stopped = await _examdocs.RunAsync("issue", visit, "--out", "out", "--sign", "key.p12", "--timestamp", "http://127.0.0.1:9/");
        Assert.True(stopped.ExitCode == 3, $"{stopped.ExitCode} {stopped.Out} {stopped.Err}");
        Assert.Contains("stopped: no timestamp from http://127.0.0.1:9/: ", stopped.Err, StringComparison.Ordinal);
        Assert.Contains("without one the document is not issued", stopped.Err, StringComparison.Ordinal);
        Assert.Empty(Files());

        var wentOn = await _examdocs.RunAsync("issue", visit, "--out", "out", "--sign", "key.p12");
        Assert.Equal(0, wentOn.ExitCode);
        Assert.Equal(3, Files().Count);
        var numbers = JsonNode.Parse(File.ReadAllText(_examdocs.At(Path.Combine("out", "documents.json"))))!["documents"]!
            .AsArray()
            .Select(d => (string)d!["number"]!);
        Assert.Contains(numbers, n => n.StartsWith("Q-", StringComparison.Ordinal) && n.EndsWith("-000002", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Signed_documents_are_valid_by_the_register_and_by_the_signature_alone_whether_they_still_hold_cannot_be_told()
    {
        var visit = Records.Cut().Write(_examdocs, "visit.json");
        WriteKey("key.p12", "");
        await _examdocs.RunAsync("issue", visit, "--out", "out", "--sign", "key.p12");
        Assert.Equal(3, Files().Count);

        var known = await _examdocs.RunAsync(["verify", .. Files()]);
        Assert.True(known.ExitCode == 0, known.Out);
        File.Delete(_examdocs.DefaultRegister);
        var trusted = await _examdocs.RunAsync(["verify", .. Files(), "--trust", "key.p12.pem"]);
        Assert.True(trusted.ExitCode == 4, trusted.Out + trusted.Err);
        Assert.Contains("CANNOT TELL: whether it still holds, only the issuer's register tells", trusted.Out, StringComparison.Ordinal);
        Assert.Contains("signed by Ada Invented", trusted.Out, StringComparison.Ordinal);
        var alone = await _examdocs.RunAsync(["verify", .. Files()]);
        Assert.Equal(4, alone.ExitCode);
        Assert.Contains(
            "CANNOT TELL: ask the issuer, by a telephone number that you know from elsewhere",
            alone.Out,
            StringComparison.Ordinal
        );
        var own = Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(Files()[0])));
        Assert.Contains(own, alone.Out, StringComparison.Ordinal);
        File.AppendAllText(Files()[0], "\n");
        Assert.Equal(1, (await _examdocs.RunAsync(["verify", .. Files()])).ExitCode);
        Assert.False(File.Exists(_examdocs.DefaultRegister));
    }

    private List<string> Files() => Directory.Exists(_examdocs.At("out")) ? [.. Directory.GetFiles(_examdocs.At("out"), "*.pdf")] : [];

    private void WriteKey(string name, string password)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=Ada Invented", key, HashAlgorithmName.SHA256);
        var now = SystemClock.Instance.GetCurrentInstant();
        using var certificate = request.CreateSelfSigned(
            (now - Duration.FromDays(1)).ToDateTimeOffset(),
            (now + Duration.FromDays(9)).ToDateTimeOffset()
        );
        File.WriteAllBytes(_examdocs.At(name), certificate.Export(X509ContentType.Pkcs12, password));
        File.WriteAllText(_examdocs.At($"{name}.pem"), certificate.ExportCertificatePem());
    }

    public void Dispose() => _examdocs.Dispose();
}
