using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Register.Log;
using FsCheck.Xunit;
using NodaTime;

namespace ExamDocs.Register.Tests.Log;

public sealed class CheckpointFileTests
{
    private static readonly Checkpoint Checkpoint = Entries.Checkpointed(Entries.Log(12));

    private static readonly X509Certificate2 Signer = Certificate("CN=Alder Vane");

    private static readonly byte[] Signed = CheckpointFile.Write(Checkpoint, Entries.Day, Signer);

    [Fact]
    public void An_unsigned_file_is_read_back()
    {
        var read = CheckpointFile.Read(CheckpointFile.Write(Checkpoint, Entries.Day, signer: null));
        Assert.Empty(read.Faults);
        Assert.Equal((Checkpoint.Body(), Entries.Day, null), (read.Checkpoint!.Body(), read.Day, read.SignedBy));
    }

    [Fact]
    public void A_signed_file_names_its_signer()
    {
        var read = CheckpointFile.Read(Signed);
        Assert.Empty(read.Faults);
        Assert.Equal(Checkpoint.Body(), read.Checkpoint!.Body());
        Assert.Equal(Signer.Thumbprint, read.SignedBy!.Thumbprint);
    }

    [Fact]
    public void A_key_on_a_curve_signs_too()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        using var signer = SelfSigned(new CertificateRequest("CN=Rowan Field", key, HashAlgorithmName.SHA256));
        var read = CheckpointFile.Read(CheckpointFile.Write(Checkpoint, Entries.Day, signer));
        Assert.Empty(read.Faults);
        Assert.Equal(signer.Thumbprint, read.SignedBy!.Thumbprint);
    }

    [Fact]
    public void A_body_put_in_place_of_the_signed_one_is_found()
    {
        var shorter = Entries.Checkpointed(Entries.Log(11)).Body();
        AssertNotSigned(Changed(Signed, json => json["body"] = shorter));
    }

    [Fact]
    public void A_signature_that_brings_its_own_content_signs_nothing_here()
    {
        var cms = new SignedCms(new ContentInfo(Encoding.ASCII.GetBytes("something else")));
        cms.ComputeSignature(new CmsSigner(Signer) { IncludeOption = X509IncludeOption.EndCertOnly });
        AssertNotSigned(Changed(Signed, json => json["signature"] = Convert.ToBase64String(cms.Encode())));
    }

    [Fact]
    public void Two_signers_or_a_weak_digest_are_none()
    {
        var body = new ContentInfo(Encoding.ASCII.GetBytes(Checkpoint.Body()));
        var two = new SignedCms(body, detached: true);
        two.ComputeSignature(new CmsSigner(Signer) { IncludeOption = X509IncludeOption.EndCertOnly });
        two.ComputeSignature(new CmsSigner(Certificate("CN=Rowan Field")) { IncludeOption = X509IncludeOption.EndCertOnly });
        AssertNotSigned(Changed(Signed, json => json["signature"] = Convert.ToBase64String(two.Encode())));
        var weak = new SignedCms(body, detached: true);
        weak.ComputeSignature(
            new CmsSigner(Signer) { IncludeOption = X509IncludeOption.EndCertOnly, DigestAlgorithm = new Oid("1.3.14.3.2.26") }
        );
        AssertNotSigned(Changed(Signed, json => json["signature"] = Convert.ToBase64String(weak.Encode())));
    }

    [Fact]
    public void No_octet_of_the_signature_can_be_altered_and_still_name_the_signer_of_another_body()
    {
        var cms = Convert.FromBase64String((string)JsonNode.Parse(Signed)!["signature"]!);
        for (var index = 0; index < cms.Length; index++)
        {
            var altered = cms.ToArray();
            altered[index] ^= 0x10;
            var read = CheckpointFile.Read(Changed(Signed, json => json["signature"] = Convert.ToBase64String(altered)));
            // Some octets say nothing about the body; what is read is then the same body, never another one.
            Assert.Equal(Checkpoint.Body(), read.Checkpoint!.Body());
            Assert.True(read.Faults.Count > 0 || read.SignedBy is not null);
        }
    }

    [Theory]
    [InlineData("""{"format":"examdocs-checkpoint/2"}""", "its format is not examdocs-checkpoint/1")]
    [InlineData("[]", "its format is not")]
    [InlineData("null", "its format is not")]
    [InlineData("", "cannot be read as JSON")]
    [InlineData("{", "cannot be read as JSON")]
    [InlineData("""{"format":"examdocs-checkpoint/1","format":"examdocs-checkpoint/1"}""", "cannot be read as JSON")]
    [InlineData("""{"format":"\ud800"}""", "cannot be read as JSON")]
    [InlineData("[[[[[[[]]]]]]]", "cannot be read as JSON")]
    public void What_is_no_checkpoint_file_is_said_to_be_none(string text, string fault)
    {
        var read = CheckpointFile.Read(Encoding.UTF8.GetBytes(text));
        Assert.Contains(fault, Assert.Single(read.Faults), StringComparison.Ordinal);
        Assert.Null(read.Checkpoint);
    }

    [Fact]
    public void Each_member_missing_wrong_or_too_many_is_named()
    {
        Assert.Contains("Its body is not", Fault(json => json["body"] = 7), StringComparison.Ordinal);
        Assert.Contains("Its day is not", Fault(json => json["day"] = "12 May"), StringComparison.Ordinal);
        Assert.Contains("not base64", Fault(json => json["signature"] = "!"), StringComparison.Ordinal);
        Assert.Contains("does not hold", Fault(json => json["signature"] = "AAAA"), StringComparison.Ordinal);
        Assert.Contains("whether it is signed", Fault(json => json.Remove("signature")), StringComparison.Ordinal);
        Assert.Contains("has a member", Fault(json => json["note"] = "x"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_too_long_is_not_looked_at() =>
        Assert.Contains(
            "too long",
            Assert.Single(CheckpointFile.Read(new byte[CheckpointFile.GreatestLength + 1]).Faults),
            StringComparison.Ordinal
        );

    [Property(MaxTest = 2000)]
    public bool No_octets_make_it_throw(byte[] hostile) => CheckpointFile.Read(hostile).Faults.Count > 0;

    [Property(MaxTest = 2000)]
    public bool No_signature_makes_it_throw(byte[] hostile)
    {
        var read = CheckpointFile.Read(Changed(Signed, json => json["signature"] = Convert.ToBase64String(hostile)));
        return read.Faults.Count == 1 && read.SignedBy is null;
    }

    [Property(MaxTest = 2000)]
    public void No_file_spoilt_in_one_place_makes_it_throw(ushort place, byte instead)
    {
        var spoilt = Signed.ToArray();
        spoilt[place % spoilt.Length] = instead;
        var read = CheckpointFile.Read(spoilt);
        Assert.True(read.Faults.Count > 0 || string.Equals(read.Checkpoint!.Body(), Checkpoint.Body(), StringComparison.Ordinal));
    }

    private static string Fault(Action<JsonObject> change)
    {
        var read = CheckpointFile.Read(Changed(CheckpointFile.Write(Checkpoint, Entries.Day, signer: null), change));
        return Assert.Single(read.Faults);
    }

    private static void AssertNotSigned(byte[] file)
    {
        var read = CheckpointFile.Read(file);
        Assert.Equal("Its signature does not hold.", Assert.Single(read.Faults));
        Assert.Null(read.SignedBy);
    }

    private static byte[] Changed(byte[] file, Action<JsonObject> change)
    {
        var json = JsonNode.Parse(file)!.AsObject();
        change(json);
        return Encoding.UTF8.GetBytes(json.ToJsonString());
    }

    private static X509Certificate2 Certificate(string name)
    {
        using var key = RSA.Create(2048);
        return SelfSigned(new CertificateRequest(name, key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1));
    }

    private static X509Certificate2 SelfSigned(CertificateRequest request) =>
        request.CreateSelfSigned(
            Instant.FromUtc(2026, 1, 1, 0, 0).ToDateTimeOffset(),
            Instant.FromUtc(2036, 1, 1, 0, 0).ToDateTimeOffset()
        );
}
