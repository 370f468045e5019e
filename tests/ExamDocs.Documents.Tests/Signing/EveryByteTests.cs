using System.Security.Cryptography;
using ExamDocs.Documents.Signing;

namespace ExamDocs.Documents.Tests.Signing;

/// <summary>No byte of a signed file can be another, come to it or go from it, without being found by the check alone.</summary>
public sealed class EveryByteTests
{
    internal static bool IsFull => Environment.GetEnvironmentVariable("EXAMDOCS_PROOF") is "full";

    private static readonly TestAuthority Authority = TestAuthority.One;

    /// <summary>
    /// The lowest bit of each byte, and of every fifth the one between capital and small letters; with EXAMDOCS_PROOF=full
    /// that of each byte, the highest and all of them too.
    /// </summary>
    public static TheoryData<byte, int> Patterns =>
        IsFull ? new([(0x01, 1), (0x20, 1), (0x80, 1), (0xFF, 1)]) : new([(0x01, 1), (0x20, 5)]);

    [Theory]
    [MemberData(nameof(Patterns))]
    public async Task Each_byte_changed_is_found(byte pattern, int step)
    {
        var signed = await SignedAsync();
        Assert.Empty(Unfound(signed, pattern, f => IsFound(f), step));
    }

    [Fact]
    public async Task Each_digit_of_the_signature_changed_to_any_other_character_is_found()
    {
        var signed = await SignedAsync();
        var (from, to) = Contents(signed);
        var unfound = new List<string>();
        var file = (byte[])signed.Clone();
        foreach (var at in Enumerable.Range(from, to - from).Where(at => at % 29 == 0))
        {
            foreach (var other in "0123456789ABCDEFabcdef <>%\0\n"u8.ToArray().Where(c => c != signed[at]))
            {
                file[at] = other;
                if (!IsFound(file))
                    unfound.Add($"{at}: {(char)other}");
            }
            file[at] = signed[at];
        }
        Assert.Empty(unfound);
    }

    [Theory]
    [InlineData("\n")]
    [InlineData(" ")]
    [InlineData("\0")]
    [InlineData("%%EOF\n")]
    [InlineData("xref\n0 0\ntrailer\n<</Prev 9>>\nstartxref\n0\n%%EOF\n")]
    public async Task Bytes_at_the_end_are_found(string more) =>
        Assert.True(IsFound([.. await SignedAsync(), .. System.Text.Encoding.ASCII.GetBytes(more)]));

    [Fact]
    public async Task Bytes_gone_from_the_end_are_found()
    {
        var signed = await SignedAsync();
        for (var less = 1; less < 400; less++)
            Assert.True(IsFound(signed[..^less]), $"{less} bytes gone");
    }

    [Fact]
    public async Task A_byte_put_in_or_taken_out_anywhere_is_found()
    {
        var signed = await SignedAsync();
        for (var at = 0; at < signed.Length; at += 11)
        {
            Assert.True(IsFound([.. signed[..at], (byte)' ', .. signed[at..]]), $"put in at {at}");
            Assert.True(IsFound([.. signed[..at], .. signed[(at + 1)..]]), $"taken out at {at}");
        }
    }

    /// <summary>
    /// The test can fail: so does a check that takes the signature as PDF readers do, without looking at what follows it.
    /// </summary>
    [Fact]
    public async Task A_check_that_does_not_look_at_the_padding_would_be_caught()
    {
        var signed = await SignedAsync();
        var unfound = Unfound(signed, 0x01, IsFoundWithoutLookingAtThePadding);
        Assert.Contains(Contents(signed).To - 1, unfound);
        Assert.All(unfound, at => Assert.InRange(at, Contents(signed).From - 1, Contents(signed).To));
    }

    private static bool IsFoundWithoutLookingAtThePadding(byte[] file)
    {
        try
        {
            var (signed, cms) = SignatureTool.Parts(file);
            var read = new System.Security.Cryptography.Pkcs.SignedCms(new(signed), detached: true);
            var length = 4 + (cms[2] << 8) + cms[3];
            read.Decode(cms.AsSpan(0, length));
            read.CheckSignature(verifySignatureOnly: true);
            return false;
        }
        catch (Exception e) when (e is CryptographicException or FormatException or ArgumentException or IndexOutOfRangeException)
        {
            return true;
        }
    }

    private static List<int> Unfound(byte[] signed, byte pattern, Func<byte[], bool> isFound, int step = 1)
    {
        var unfound = new List<int>();
        for (var at = 0; at < signed.Length; at += step)
        {
            signed[at] ^= pattern;
            if (!isFound(signed))
                unfound.Add(at);
            signed[at] ^= pattern;
        }
        return unfound;
    }

    private static bool IsFound(byte[] file) =>
        SignatureCheck.Of(file, Authority.Trust, TestAuthority.Now) is not { IsSigned: true, IsIntact: true, Faults.Count: 0 };

    private static (int From, int To) Contents(byte[] signed)
    {
        var from = signed.AsSpan().IndexOf("/Contents <3"u8) + "/Contents <".Length;
        return (from, from + signed.AsSpan(from).IndexOf((byte)'>'));
    }

    private static async Task<byte[]> SignedAsync()
    {
        var signed = await SmallPdf.SignedAsync(new DocumentSigner(Authority.Key()));
        Assert.False(IsFound(signed));
        return signed;
    }
}
