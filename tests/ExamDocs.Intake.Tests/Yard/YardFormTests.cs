using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ExamDocs.Core.Criteria;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Yard;

namespace ExamDocs.Intake.Tests.Yard;

/// <summary>Whatever is filled in, the form's page is the same page: its data stay data.</summary>
public sealed partial class YardFormTests
{
    [Theory]
    [InlineData("</script><script>alert(1)</script>")]
    [InlineData("<!--<script>")]
    [InlineData("]]></SCRIPT >")]
    [InlineData("a \u2028\u2029\"'`${alert(1)}\\")]
    [InlineData("&lt;/script&gt;")]
    public void Markup_in_every_text_stays_text(string planted)
    {
        var record = JsonNode.Parse(Record)!;
        Plant(record, planted);
        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(record.ToJsonString()), "last.json").Record!;
        Assert.Equal(planted, read.Items[0].Serial);
        var (sound, odd) = (Page(JsonRecordReader.Read(Encoding.UTF8.GetBytes(Record), "last.json").Record!), Page(read));
        // Without its data it is the same page, and what stands between is the text that was typed.
        Assert.Equal(Data().Replace(sound, ""), Data().Replace(odd, ""), StringComparer.Ordinal);
        var data = JsonNode.Parse(Data().Match(odd).Groups["json"].Value)!;
        Assert.Equal(planted, (string)data["record"]!["items"]![0]!["serial"]!, StringComparer.Ordinal);
        Assert.DoesNotContain('<', Data().Match(odd).Groups["json"].Value);
    }

    private const string Record = """
        {"format":"examdocs/1","visit":{"employer":{"name":"a","address":"a"},"premises":{"name":"a","address":"a"}},
        "people":[{"id":"a","name":"a","address":"a","qualifications":"a"}],
        "items":[{"id":"a","category":"connector","description":"a","maker":"a","model":"a","serial":"a","ownersMark":"a","fittedTo":"a"}],
        "limits":[{"maker":"a","model":"a","source":{"title":"a","revision":"a","page":"a"}}],
        "examinations":[{"item":"a","examinedOn":"2025-11-10","observations":[{"criterion":"cracks","state":"noted","note":"a"}],
        "defects":[{"criterion":"cracks","part":"a","description":"a","remedy":"a"}]}]}
        """;

    /// <summary>In the place of each a.</summary>
    private static void Plant(JsonNode node, string text)
    {
        foreach (var (name, value) in node is JsonObject o ? o.ToList() : [])
        {
            if (value is JsonValue v && v.TryGetValue<string>(out var typed) && typed == "a")
                node[name] = text;
            else if (value is not null)
                Plant(value, text);
        }
        foreach (var element in node as JsonArray ?? [])
            Plant(element!, text);
    }

    private static string Page(Core.Records.ExaminationRecord record) => Encoding.UTF8.GetString(YardForm.Write(Catalogue.All, record));

    [GeneratedRegex("""id="data">(?<json>.*?)</script""", RegexOptions.Singleline | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex Data();
}
