using System.Text;
using System.Text.Json;
using ExamDocs.Intake.Tests.Photos;

namespace ExamDocs.Intake.Tests.Hostile;

/// <summary>Records whose photos are made to do harm; the record lies in a folder of its own.</summary>
internal static class HostilePhotos
{
    public static IEnumerable<HostileInput> All =>
        [
            Album(
                "A picture that says it is sixty thousand a side",
                "INT045",
                Pictures.PngOf(60_000, 60_000, 1, 0, 0, ("IDAT", [0x78, 0x9C, 3, 0, 0, 0, 0, 1]))
            ),
            Album("A whole picture of thirty thousand a side in one colour", "INT045", () => Pictures.Png(30_000, 30_000)),
            Album("A whole picture of ten thousand a side in one colour", HostileInput.Read, () => Pictures.Png(10_000, 10_000)),
            Album("A picture in passes of five thousand a side", HostileInput.Read, () => Interlaced(5_000)),
            Album("A picture with texts that unpack to gigabytes", HostileInput.Read, () =>
                Pictures.Png(8, 8, others: [.. Enumerable.Repeat(("zTXt", Packed()), 1_000)])
            ),
            Album("A HEIC picture called .jpg", "INT044", [0, 0, 0, 24, .. "ftypheic"u8, .. new byte[12]]),
            Album("A text called .jpg", "INT044", "The strap is worn.\n"u8.ToArray()),
            Album("A picture cut short", "INT044", () => Pictures.Corners(640, 480)[..^40]),
            Named("A photo above the folder", "INT043", "../../../etc/hostname"),
            Named("A photo by its whole path", "INT043", "/dev/zero"),
            Named("Ten thousand photos that are not there", "INT046", [.. Enumerable.Range(0, 10_000).Select(n => $"{n}.jpg")]),
            new(
                "A link to a device",
                "visit.json",
                path =>
                {
                    File.CreateSymbolicLink(Path.Combine(Path.GetDirectoryName(path)!, "a.jpg"), "/dev/zero");
                    File.WriteAllBytes(path, Record(["a.jpg"]));
                },
                "INT043"
            ),
        ];

    private static HostileInput Album(string name, string says, byte[] photo) => Album(name, says, () => photo);

    private static HostileInput Album(string name, string says, Func<byte[]> photo) =>
        new(
            name,
            "visit.json",
            path =>
            {
                File.WriteAllBytes(Path.Combine(Path.GetDirectoryName(path)!, "a.jpg"), photo());
                File.WriteAllBytes(path, Record(["a.jpg"]));
            },
            says
        );

    private static HostileInput Named(string name, string says, params string[] photos) =>
        HostileInput.Of(name, "visit.json", () => Record(photos), says);

    private static byte[] Record(IEnumerable<string> photos) =>
        Encoding.UTF8.GetBytes(
            "{\"format\":\"examdocs/1\",\"items\":[{\"id\":\"A\"}],\"examinations\":[{\"item\":\"A\",\"observations\":["
                + string.Join(
                    ',',
                    photos.Select(p => $"{{\"criterion\":\"cover-cut\",\"state\":\"clear\",\"photo\":{JsonSerializer.Serialize(p)}}}")
                )
                + "]}]}"
        );

    /// <summary>Each pass has its own lines: ISO/IEC 15948, 8.2.</summary>
    private static byte[] Interlaced(int side)
    {
        using var packed = new MemoryStream();
        using (var zlib = new System.IO.Compression.ZLibStream(packed, System.IO.Compression.CompressionLevel.Fastest, leaveOpen: true))
        {
            foreach (
                var (x, y, dx, dy) in new[]
                {
                    (0, 0, 8, 8),
                    (4, 0, 8, 8),
                    (0, 4, 4, 8),
                    (2, 0, 4, 4),
                    (0, 2, 2, 4),
                    (1, 0, 2, 2),
                    (0, 1, 1, 2),
                }
            )
            {
                for (var line = y; line < side; line += dy)
                    zlib.Write(new byte[1 + ((((side - x + dx - 1) / dx) + 7) / 8)]);
            }
        }
        return Pictures.PngOf(side, side, 1, 0, 1, ("IDAT", packed.ToArray()));
    }

    private static byte[] Packed()
    {
        using var packed = new MemoryStream();
        packed.Write("c\0\0"u8);
        using (
            var zlib = new System.IO.Compression.ZLibStream(packed, System.IO.Compression.CompressionLevel.SmallestSize, leaveOpen: true)
        )
            zlib.Write(new byte[7_000_000]);
        return packed.ToArray();
    }
}
