using System.Text;
using ExamDocs.Register.Log;
using NodaTime;

namespace ExamDocs.Register.Tests.Log;

public sealed class LogEntryTests
{
    private const string IssuedJson =
        """{"day":"2026-05-12","items":["HB-014","HB-014-B"],"kind":"report","number":"R-2026-000001","position":0,"sha256":"6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d","what":"issued"}""";

    public static TheoryData<string> Written =>
        [
            IssuedJson,
            """{"day":"2026-05-12","items":[],"kind":"report","number":"R-2026-000001","position":9007199254740991,"reason":"nobody asked","what":"void"}""",
            """{"day":"1900-01-01","items":["Öse \"A\" \\ 7\u0001\n\té\u001f","😀"],"kind":"notice","number":"N-2026-1000000","position":12,"reason":"x","what":"withdrawn"}""",
            """{"by":"R-2026-000003","day":"9999-12-31","items":["HB-014"],"kind":"report","number":"R-2026-000002","position":4,"reason":"an address was wrong","what":"replaced"}""",
        ];

    [Theory]
    [MemberData(nameof(Written))]
    public void An_entry_is_read_and_written_octet_for_octet(string json) =>
        Assert.Equal(json, Encoding.UTF8.GetString(LogEntry.Parse(Encoding.UTF8.GetBytes(json)).Bytes()));

    [Fact]
    public void An_entry_is_written_as_documented_and_its_leaf_is_the_hash_behind_a_nought()
    {
        var entry = LogEntry.Issued(
            0,
            Entries.Document(1),
            "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
            Entries.Day
        );
        Assert.Equal(IssuedJson, Encoding.UTF8.GetString(entry.Bytes()));
        Assert.Equal(System.Security.Cryptography.SHA256.HashData([0, .. Encoding.UTF8.GetBytes(IssuedJson)]), entry.LeafHash());
    }

    public static TheoryData<string, string> Loosened =>
        new()
        {
            { "{\"day\"", "{ \"day\"" },
            { "{\"day\"", "\uFEFF{\"day\"" },
            { "\"}", "\"}\n" },
            { "\"}", "\",\"who\":\"me\"}" },
            { "\"position\":0", "\"position\":00" },
            { "\"position\":0", "\"position\":0.0" },
            { "\"position\":0", "\"position\":-1" },
            { "\"position\":0", "\"position\":\"0\"" },
            { "\"position\":0", "\"position\":9007199254740992" },
            { "\"position\":0", "\"position\":99999999999999999999" },
            { "\"position\":0", "\"position\":0,\"position\":0" },
            { "\"position\":0,", "" },
            { "HB-014-B", "HB\\u002d014-B" },
            { "HB-014-B", "\\ud800" },
            { "\"HB-014-B\"", "null" },
            { "\"HB-014-B\"", "7" },
            { "[\"HB-014\",\"HB-014-B\"]", "\"HB-014\"" },
            { "R-2026-000001", "R-2026-1" },
            { "R-2026-000001", "r-2026-000001" },
            { "6e340b", "6E340B" },
            { "6e340b", "6e340" },
            { "2026-05-12", "2026-5-12" },
            { "2026-05-12", "2026-02-30" },
            { "2026-05-12", "0001-01-01" },
            { "\"issued\"", "\"void\"" },
            { "\"issued\"", "\"printed\"" },
            { "\"issued\"", "null" },
            { "\"kind\":\"report\"", "\"kind\":\"\"" },
            { "\"day\":\"2026-05-12\",\"items\":[\"HB-014\",\"HB-014-B\"]", "\"items\":[\"HB-014\",\"HB-014-B\"],\"day\":\"2026-05-12\"" },
        };

    [Theory]
    [MemberData(nameof(Loosened))]
    public void Nothing_looser_is_read(string part, string instead)
    {
        Assert.Contains(part, IssuedJson, StringComparison.Ordinal);
        var other = Encoding.UTF8.GetBytes(IssuedJson.Replace(part, instead, StringComparison.Ordinal));
        Assert.Throws<FormatException>(() => LogEntry.Parse(other));
    }

    [Fact]
    public void No_octet_can_be_altered_dropped_or_doubled_without_another_entry_coming_out_or_none()
    {
        foreach (var position in Enumerable.Range(0, 7))
        {
            var bytes = Entries.At(position).Bytes();
            for (var index = 0; index < bytes.Length; index++)
            {
                AssertOther(bytes, [.. bytes[..index], (byte)(bytes[index] ^ 1), .. bytes[(index + 1)..]]);
                AssertOther(bytes, [.. bytes[..index], .. bytes[(index + 1)..]]);
                AssertOther(bytes, [.. bytes[..(index + 1)], .. bytes[index..]]);
                AssertOther(bytes, bytes[..index]);
            }
        }
    }

    [Fact]
    public void What_cannot_be_written_is_not_made()
    {
        var (document, hash, day) = (Entries.Document(1), new string('a', 64), Entries.Day);
        Assert.Throws<ArgumentOutOfRangeException>(() => LogEntry.Issued(-1, document, hash, day));
        Assert.Throws<ArgumentException>(() => LogEntry.Issued(0, document, hash[1..], day));
        Assert.Throws<ArgumentException>(() => LogEntry.Issued(0, document, hash.ToUpperInvariant(), day));
        Assert.Throws<ArgumentOutOfRangeException>(() => LogEntry.Issued(0, document, hash, new LocalDate(-5, 1, 1)));
        Assert.Throws<ArgumentException>(() => LogEntry.Void(0, document, " ", day));
        Assert.Throws<ArgumentException>(() => LogEntry.Void(0, document, "\ud83d", day));
        Assert.Throws<ArgumentException>(() => LogEntry.Replaced(0, document, "the other one", "why", day));
        Assert.Throws<ArgumentException>(() => new LoggedDocument("R-1", "report", []));
        Assert.Throws<ArgumentException>(() => new LoggedDocument("R-2026-000001", " ", []));
        Assert.Throws<ArgumentException>(() => new LoggedDocument("R-2026-000001", "report", ["\udc00"]));
    }

    private static void AssertOther(byte[] bytes, byte[] altered)
    {
        try
        {
            var read = LogEntry.Parse(altered);
            Assert.Equal(altered, read.Bytes());
            Assert.NotEqual(bytes, altered);
        }
        catch (FormatException)
        {
            Assert.NotEqual(bytes, altered);
        }
    }
}
