using System.Text;
using ExamDocs.Intake.Csv;

namespace ExamDocs.Intake.Tests.Csv;

/// <summary>Files of separated values: what they may be, and what is refused with its line.</summary>
public sealed class CsvRecordReaderTests
{
    private const string People = "id;name;address;qualifications;self-employed\nex1;Jörg Ålmann;1 Öst Lane;Zehn Jahre;yes\n";

    public static TheoryData<string, byte[]> Encodings =>
        new()
        {
            { "UTF-8", new UTF8Encoding(false).GetBytes(People) },
            { "UTF-8", [0xEF, 0xBB, 0xBF, .. new UTF8Encoding(false).GetBytes(People)] },
            { "UTF-16", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(People)] },
            { "UTF-16", [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(People)] },
            { "UTF-16", Encoding.Unicode.GetBytes(People) },
            { "Windows-1252", CodePagesEncodingProvider.Instance.GetEncoding(1252)!.GetBytes(People) },
        };

    [Theory]
    [MemberData(nameof(Encodings))]
    public void The_encoding_is_found_and_said(string encoding, byte[] bytes)
    {
        var read = CsvRecordReader.Read([new("People.csv", bytes)], "");

        Assert.Equal(
            ("Jörg Ålmann", "1 Öst Lane", true),
            (read.Record!.People[0].Name, read.Record.People[0].Address, read.Record.People[0].SelfEmployed)
        );
        Assert.Contains(
            $"read as {encoding}, its values separated by semicolons",
            Assert.Single(read.Findings, f => f.Code == "INT040").Message.Text,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("id,name\nex1,\"Elm, Ash\"\n", "commas", "Elm, Ash")]
    [InlineData("id\tname\nex1\tElm; Ash\n", "tabs", "Elm; Ash")]
    [InlineData("id;name\r\nex1;\"Elm \"\"and\"\" Ash\"\r\n", "semicolons", "Elm \"and\" Ash")]
    [InlineData("name;id\n\nElm;ex1\n", "semicolons", "Elm")]
    [InlineData("\"i;d\",id,name\n,ex1,Elm\n", "commas", "Elm")]
    public void The_separator_is_found_and_said(string text, string separated, string name)
    {
        var read = Read("People.csv", text);

        Assert.Equal(("ex1", name), (read.Record!.People[0].Id, read.Record.People[0].Name));
        Assert.Contains(
            $"separated by {separated}",
            Assert.Single(read.Findings, f => f.Code == "INT040").Message.Text,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("id;name\nex1;\"Elm\nex2;Ash\n", "line 2")]
    [InlineData("id;name\nex1;Elm\nex2\n", "line 3")]
    [InlineData("id;name\nex1;Elm;more\n", "line 2")]
    [InlineData("id;name\nex1;El\"m\n", "line 2")]
    [InlineData("id;name\n\"ex1\"x;Elm\n", "line 2")]
    public void What_breaks_the_rules_is_refused_with_its_line(string text, string line)
    {
        var read = Read("People.csv", text);

        Assert.Null(read.Record);
        Assert.Contains("People.csv: " + line, read.Unreadable, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("People.csv", "people")]
    [InlineData("spring visit-People.csv", "people")]
    [InlineData("export 7.csv", "people")]
    [InlineData("Renewals.csv", "renewals")]
    public void The_name_or_the_headings_tell_the_sheet(string name, string list)
    {
        var read = Read(name, list is "people" ? People : "item;removed part;fitted part;done on\nH;B0;B1;2026-05-11\n");

        Assert.DoesNotContain(read.Findings, f => f.Code == "INT041");
        Assert.Equal(1, list is "people" ? read.Record!.People.Count : read.Record!.Renewals.Count);
    }

    [Theory]
    [InlineData("things.csv", "colour;weight\nred;7\n")]
    [InlineData("half.csv", "id;colour;weight;age\nx;red;7;8\n")]
    public void A_file_that_is_no_sheet_is_an_error_at_its_place(string name, string text)
    {
        var read = CsvRecordReader.Read(
            [new("People.csv", Encoding.UTF8.GetBytes(People)), new(name, Encoding.UTF8.GetBytes(text))],
            "kit"
        );

        var finding = Assert.Single(read.Findings, f => f.Code == "INT041");
        Assert.Equal($"kit/{name}!A1", read.Sources.Locate(finding.Path));
        Assert.Single(read.Record!.People);
    }

    [Fact]
    public void A_fault_is_at_its_cell()
    {
        var read = CsvRecordReader.Read([new("Renewals.csv", "item;done on\nH;11.5.2026\n"u8.ToArray())], "kit");

        var finding = Assert.Single(read.Findings, f => f.Code == "INT004");
        Assert.Equal("kit/Renewals.csv!B2", read.Sources.Locate(finding.Path));
        Assert.Equal(
            "Renewals.csv!B2",
            CsvRecordReader.Read([new("Renewals.csv", "item;done on\nH;11.5.2026\n"u8.ToArray())], "").Sources.Locate(finding.Path)
        );
    }

    /// <summary>Each costs little and gives a sentence or a finding; none is half read.</summary>
    [Fact]
    public void Hostile_files_are_refused_or_reported()
    {
        foreach (
            var bytes in new[]
            {
                [],
                [0xFF, 0xFE],
                [0xEF, 0xBB, 0xBF, 0xFF],
                new byte[1000],
                Enumerable.Repeat((byte)'"', 100_000).ToArray(),
                Enumerable.Repeat((byte)';', 3_000_000).ToArray(),
                Encoding.UTF8.GetBytes("id;name\n" + new string('x', 3_000_000) + ";y\n"),
                Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("x\n", 1_200_000))),
                Encoding.UTF8.GetBytes("id;name\nex1;=cmd|' /C calc'!A0\n"),
            }
        )
        {
            var read = CsvRecordReader.Read([new("People.csv", bytes)], "");
            Assert.True(read.Unreadable is not null || read.Record is not null);
        }
        Assert.Equal("=cmd|' /C calc'!A0", Read("People.csv", "id;name\nex1;=cmd|' /C calc'!A0\n").Record!.People[0].Name);
    }

    private static ReadResult Read(string name, string text) => CsvRecordReader.Read([new(name, Encoding.UTF8.GetBytes(text))], "");
}
