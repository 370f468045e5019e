namespace ExamDocs.Intake.Tests.Hostile;

/// <summary>Folders of files of separated values.</summary>
internal static class HostileFolders
{
    public static IEnumerable<HostileInput> All =>
        [
            new(
                "A folder of ten thousand files",
                "visit",
                folder =>
                {
                    Directory.CreateDirectory(folder);
                    for (var n = 0; n < 10_000; n++)
                        File.WriteAllText(Path.Combine(folder, $"{n}.csv"), "");
                },
                "more than 200"
            ),
            new(
                "A folder of nothing that we read",
                "visit",
                folder =>
                {
                    Directory.CreateDirectory(Path.Combine(folder, "People.csv"));
                    File.WriteAllText(Path.Combine(folder, "readme.txt"), "x");
                },
                "no .csv file"
            ),
            new(
                "A folder of unknown files",
                "visit",
                folder =>
                {
                    Directory.CreateDirectory(folder);
                    File.WriteAllText(Path.Combine(folder, "things.csv"), "colour;weight\nred;7\n");
                },
                "not the sheets of a capture workbook"
            ),
        ];
}
