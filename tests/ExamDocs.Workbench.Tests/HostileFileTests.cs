using System.Net;
using ExamDocs.Intake.Tests.Hostile;
using ExamDocs.UseCases.Tests;

namespace ExamDocs.Workbench.Tests;

/// <summary>Workbooks made to do harm, dropped on the desk: a selection, all with EXAMDOCS_PROOF=full.</summary>
public sealed class HostileFileTests
{
    private const int Kept = 2_000_000;

    /// <summary>Each is kept as it came and answered in words; nothing else is written, nothing is decided, and the desk goes on.</summary>
    [Fact]
    public async Task Each_is_answered_and_none_stops_the_desk()
    {
        var ct = TestContext.Current.CancellationToken;
        await using var open = await OpenedWorkbench.StartAsync();
        using var client = await open.EnterAsync();
        Directory.CreateDirectory(Path.GetDirectoryName(open.Desk)!);
        await File.WriteAllTextAsync(Path.Combine(Path.GetDirectoryName(open.Desk)!, "who.json"), "{}", ct);
        var token = await GuardTests.TokenAsync(client);
        var folder = Directory.CreateTempSubdirectory("hostile-");
        try
        {
            var (dropped, silent) = (0, new List<string>());
            foreach (var input in Effort.OneIn(8, HostileWorkbooks.All))
            {
                var path = Path.Combine(folder.FullName, input.File);
                input.Make(path);
                var bytes = await File.ReadAllBytesAsync(path, ct);
                File.Delete(path);
                if (bytes.Length > Kept)
                    continue;
                var before = open.Files;
                using var answer = await GuardTests.PostAsync(client, "same-origin", null, token, bytes, input.File);
                dropped++;
                if (answer.StatusCode is HttpStatusCode.UnprocessableEntity)
                {
                    Assert.Equal(before, open.Files);
                    Assert.Contains("is empty", await TextAsync(answer), StringComparison.Ordinal);
                    continue;
                }
                Assert.True(answer.StatusCode is HttpStatusCode.SeeOther, $"{input}: {answer.StatusCode}");
                using var page = await client.GetAsync(answer.Headers.Location, ct);
                Assert.True(page.StatusCode is HttpStatusCode.OK, $"{input}: {page.StatusCode}");
                if (input.Says != HostileInput.Read && !(await TextAsync(page)).Contains(input.Says, StringComparison.Ordinal))
                    silent.Add($"{input}: \"{input.Says}\" {answer.Headers.Location}");
                var visit = $"/{Path.GetFileName(answer.Headers.Location!.ToString())}/";
                var written = open.Files.Except(before).ToList();
                Assert.All(written, f => Assert.Contains(visit, f, StringComparison.Ordinal));
                Assert.Contains(written, f =>
                    f.EndsWith(input.File, StringComparison.Ordinal) && File.ReadAllBytes(f).SequenceEqual(bytes)
                );
            }
            Assert.Empty(silent);
            Assert.True(dropped > 10, $"only {dropped} were dropped");
            using var still = await client.GetAsync("/find", ct);
            Assert.Equal(HttpStatusCode.OK, still.StatusCode);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<string> TextAsync(HttpResponseMessage answer) =>
        WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
}
