using System.Diagnostics;
using System.Security.Cryptography;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Verifying.IssuedForVerifying;

namespace ExamDocs.UseCases.Tests.Verifying;

/// <summary>
/// A page that shows something else than its data say is not valid, even where somebody vouches for the bytes; and one that says
/// it is of another version, whose pages cannot be composed here, neither. Poppler's drawing of each page says that the
/// forgery is one.
/// </summary>
public sealed class ForgeryTests(IssuedForVerifying issued)
{
    public static TheoryData<string> Names => [.. ForgeryCases.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task A_forged_page_is_not_valid(string name)
    {
        var genuine = await File.ReadAllBytesAsync(issued.Label, TestContext.Current.CancellationToken);
        var (change, isSeen) = ForgeryCases.All[name];
        var forged = Forgery.Of(genuine, change);
        Assert.Equal(isSeen, !issued.DrawnLabel.AsSpan().SequenceEqual(Drawn(forged)));
        var verified = await issued.VerifiedAsync(forged);
        Assert.Equal(Verdict.NotValid, verified.Verdict);
        Assert.Contains(verified.Statements, s => s is { Answer: Answer.Fails, Question: "print" or "data" });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Nor_is_one_that_says_it_is_of_another_version(string name)
    {
        // On free paper nothing but the page composed anew tells what belongs there.
        if (name == "letters drawn as lines on free paper")
            return;
        var other = await issued.LabelOfAnotherVersionAsync();
        Assert.Equal(Verdict.NotValid, (await issued.VerifiedAsync(Forgery.Of(other, ForgeryCases.All[name].Do))).Verdict);
    }

    /// <summary>Else the ones above would prove nothing.</summary>
    [Fact]
    public async Task Unforged_one_that_says_it_is_of_another_version_is_not_said_to_be_not_valid() =>
        Assert.NotEqual(Verdict.NotValid, (await issued.VerifiedAsync(await issued.LabelOfAnotherVersionAsync())).Verdict);

    /// <summary>What is appended to a file, or stands between its objects, a reader may take for the newer version.</summary>
    [Theory]
    [InlineData("7 0 obj\n<</Type /Catalog>>\nendobj\n")]
    [InlineData("% a remark\n")]
    [InlineData("\n")]
    public async Task Bytes_added_at_the_end_are_told(string added)
    {
        var genuine = await File.ReadAllBytesAsync(issued.Label, TestContext.Current.CancellationToken);
        Assert.Equal(Verdict.NotValid, (await issued.VerifiedAsync([.. genuine, .. System.Text.Encoding.Latin1.GetBytes(added)])).Verdict);
    }

    /// <summary>The first page as Poppler draws it: its pixels.</summary>
    internal static byte[] Drawn(byte[] pdf)
    {
        var folder = Directory.CreateTempSubdirectory("drawn-").FullName;
        try
        {
            File.WriteAllBytes(Path.Combine(folder, "a.pdf"), pdf);
            using var process = Process.Start(
                new ProcessStartInfo("pdftoppm", ["-r", "60", "-cropbox", "-singlefile", "a.pdf", "a"])
                {
                    WorkingDirectory = folder,
                    RedirectStandardError = true,
                }
            )!;
            process.StandardError.ReadToEnd();
            process.WaitForExit();
            return SHA256.HashData(File.ReadAllBytes(Path.Combine(folder, "a.ppm")));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
