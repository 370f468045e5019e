using ExamDocs.Register.Log;

namespace ExamDocs.Register.Tests.Log;

public sealed class CheckpointTests
{
    private const string Origin = "examdocs-register/00112233445566778899aabbccddeeff";

    private const string Root = "XcnaeacGWamtVZy3Ad7ZoqudgjqtL0lgz+Nw7/RgQyg=";

    private static readonly string Body = Entries.Checkpointed(Entries.Log(12)).Body();

    [Fact]
    public void The_body_is_three_lines_each_ended()
    {
        var root = Convert.FromHexString("5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328");
        Assert.Equal($"{Origin}\n8\n{Convert.ToBase64String(root)}\n", new Checkpoint(Entries.Origin, 8, root).Body());
    }

    [Fact]
    public void A_body_is_read_back()
    {
        Assert.True(Checkpoint.TryParse(Body, out var read));
        Assert.Equal((Origin, 12, Body), (read.Origin, read.Size, read.Body()));
    }

    [Theory]
    [InlineData("\n12\n", "\n012\n")]
    [InlineData("\n12\n", "\n+12\n")]
    [InlineData("\n12\n", "\n-12\n")]
    [InlineData("\n12\n", "\n12 \n")]
    [InlineData("\n12\n", "\n12\r\n")]
    [InlineData("\n12\n", "\n99999999999999999999\n")]
    [InlineData("\n12\n", "\n١٢\n")]
    [InlineData("\n12\n", "\n")]
    [InlineData("=\n", "=")]
    [InlineData("=\n", "\n")]
    [InlineData("=\n", "=\nmore\n")]
    [InlineData("=\n", " =\n")]
    [InlineData("ff\n", "FF\n")]
    [InlineData("ff\n", "f\n")]
    [InlineData("register", "Register")]
    public void Nothing_looser_is_read(string part, string instead)
    {
        Assert.Contains(part, Body, StringComparison.Ordinal);
        Assert.False(Checkpoint.TryParse(Body.Replace(part, instead, StringComparison.Ordinal), out var read));
        Assert.Null(read);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("\n\n\n")]
    public void Nothing_is_no_checkpoint(string? body) => Assert.False(Checkpoint.TryParse(body, out _));

    [Fact]
    public void Base64_with_bits_to_spare_is_not_read()
    {
        Assert.True(Checkpoint.TryParse($"{Origin}\n8\n{Root}\n", out _));
        // The last letter holds two bits that must be nought.
        Assert.False(Checkpoint.TryParse($"{Origin}\n8\n{Root[..^2]}h=\n", out _));
    }

    [Fact]
    public void What_cannot_be_written_is_not_made()
    {
        Assert.Throws<ArgumentException>(() => new Checkpoint("somewhere", 0, new byte[32]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Checkpoint(Origin, -1, new byte[32]));
        Assert.Throws<ArgumentException>(() => new Checkpoint(Origin, 0, new byte[31]));
    }
}
