using System.IO.Compression;
using System.Text;
using ExamDocs.UseCases.Company.Packing;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Company.Packing;

/// <summary>What is written is a bag by RFC 8493; changed by one byte anywhere it is none any more.</summary>
public sealed class BagWriterTests
{
    private static readonly LocalDate Day = new(2026, 5, 12);

    [Fact]
    public void It_is_valid_and_the_same_each_time()
    {
        Assert.Empty(Bag.Faults(Written()));
        Assert.Equal(Written(), Written());
    }

    [Fact]
    public void Any_file_changed_by_one_byte_or_taken_away_or_added_is_found()
    {
        var names = Bag.Files(Written()).Keys.ToList();
        Assert.Contains("bag-info.txt", names);
        foreach (var name in names)
        {
            Assert.True(Bag.Faults(Changed(name, bytes => [(byte)(bytes[0] ^ 1), .. bytes[1..]])).Count > 0, $"{name} changed");
            Assert.True(Bag.Faults(Changed(name, null)).Count > 0, $"{name} taken away");
        }
        Assert.NotEmpty(Bag.Faults(Changed("data/added.txt", _ => [1])));
        Assert.NotEmpty(Bag.Faults(Changed("data/../../out.txt", _ => [1])));
    }

    [Fact]
    public void A_value_of_several_lines_stays_on_one()
    {
        var info = Encoding.UTF8.GetString(Bag.Files(Written("Alder\r\nPayload-Oxum: 1.1\n"))["bag-info.txt"]);
        Assert.Contains("External-Description: Alder Payload-Oxum: 1.1\n", info, StringComparison.Ordinal);
        Assert.Single(info.Split('\n'), line => line.StartsWith("Payload-Oxum", StringComparison.Ordinal));
    }

    private static byte[] Written(string description = "Alder Vale")
    {
        using var zip = new MemoryStream();
        using (var bag = new BagWriter(zip, "pack"))
        {
            bag.Add("documents/R-2026-000001.pdf", "%PDF one"u8.ToArray());
            bag.Add("evidence/\u05D0\u05D1 \u00E9.pdf", "%PDF two"u8.ToArray());
            bag.Finish([("External-Description", description)], Day);
        }
        return zip.ToArray();
    }

    private static byte[] Changed(string name, Func<byte[], byte[]>? change)
    {
        var files = Bag.Files(Written()).ToDictionary(f => f.Key, f => f.Value, StringComparer.Ordinal);
        if (change is null)
            files.Remove(name);
        else
            files[name] = change(files.GetValueOrDefault(name, [0]));
        using var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (file, bytes) in files)
            {
                using var stream = archive.CreateEntry($"pack/{file}").Open();
                stream.Write(bytes);
            }
        }
        return zip.ToArray();
    }
}
