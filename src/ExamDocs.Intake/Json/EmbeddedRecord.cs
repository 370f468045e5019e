using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Rules;

namespace ExamDocs.Intake.Json;

/// <summary>
/// A record together with what reading it first found wrong. What could not be read is no longer in the record, and
/// without the finding it would look as if nobody had typed it. Where there is such a finding, the file is no plain
/// examdocs/1: whoever checks it as one gets an error for a member that does not belong there, and nothing comes out fit.
/// </summary>
public static class EmbeddedRecord
{
    /// <summary>Why a part is no record to go on with: what it leaves out would count as removed from the visit.</summary>
    internal const string IsPart =
        "it holds only that part of its visit which bears on the items of one document; give the record of the whole visit, or ask "
        + "verify whether the document is right";

    private const string Reading = "reading";

    private const string PartOf = "partOf";

    private static readonly Dictionary<string, RuleInfo> ByCode = ReadingRules.All.ToDictionary(r => r.Code, StringComparer.Ordinal);

    /// <param name="record">As it was determined.</param>
    /// <param name="reading">What reading it had found.</param>
    /// <param name="partOf">The visit that it is a part of; null for a whole record.</param>
    public static byte[] Write(ExaminationRecord record, IReadOnlyList<Finding> reading, PartOfVisit? partOf = null)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var tree = RecordTree.Of(record);
        List<KeyValuePair<string, SourceNode>> members = [.. tree.Members];
        if (partOf is not null)
            members.Insert(0, KeyValuePair.Create<string, SourceNode>(PartOf, Node(partOf)));
        if (reading.Count > 0)
            members.Add(new(Reading, new ListNode($"/{Reading}", [.. reading.Select(Node)])));
        return JsonRecordWriter.Write(members.Count == tree.Members.Count ? tree : new ObjectNode("", members));
    }

    /// <summary>Reads a whole record; a part of one is refused.</summary>
    /// <param name="utf8">The bytes.</param>
    /// <param name="fileName">The name that findings give.</param>
    public static ReadResult Read(ReadOnlyMemory<byte> utf8, string fileName)
    {
        var read = ReadWithin(utf8, fileName);
        return read.PartOf is null ? read : new ReadResult(null, [], read.Sources, IsPart);
    }

    /// <summary>Reads what a document of ours holds: a whole record, or the part that bears on it.</summary>
    /// <inheritdoc cref="Read"/>
    public static ReadResult ReadWithin(ReadOnlyMemory<byte> utf8, string fileName)
    {
        var sources = SourceMap.ForJson(fileName);
        var (root, unreadable) = JsonTree.Parse(utf8);
        if (root is not ObjectNode whole)
            return new ReadResult(null, [], sources, unreadable ?? "what is in it is not a record");
        try
        {
            var earlier = whole
                .Members.Where(m => IsReading(m.Key))
                .SelectMany(m => (m.Value as ListNode)?.Elements ?? [])
                .Select(Finding)
                .ToList();
            var parts = whole.Members.Where(m => IsPartOf(m.Key)).Select(m => Part(m.Value)).ToList();
            if (earlier.Contains(null) || parts.Contains(null) || parts.Count > 1)
                return new ReadResult(null, [], sources, "the record within was written by another version");
            var (record, findings) = RecordBinder.Bind(
                new ObjectNode("", [.. whole.Members.Where(m => !IsReading(m.Key) && !IsPartOf(m.Key))])
            );
            var known = earlier.Select(f => (f!.Code, f.Path)).ToHashSet();
            var places = earlier.Select(f => f!.Path).ToHashSet(StringComparer.Ordinal);
            // What stands for a value that could not be read is no placeholder that somebody typed.
            bool IsKnown(Finding f) =>
                known.Contains((f.Code, f.Path))
                || (string.Equals(f.Code, PlaceholderRules.ValueIsAsked.Code, StringComparison.Ordinal) && places.Contains(f.Path));
            return new ReadResult(record, [.. earlier!, .. findings.Where(f => !IsKnown(f))], sources, null)
            {
                PhotosAreElsewhere = true,
                PartOf = parts.SingleOrDefault(),
            };
        }
        catch (UnreadableWorkbookException e)
        {
            return new ReadResult(null, [], sources, e.Message);
        }
    }

    /// <summary>True where a tree says that it is a part of a visit's record.</summary>
    internal static bool IsPartOfVisit(SourceNode root) => root is ObjectNode o && o.Members.Any(m => IsPartOf(m.Key));

    // However it is written: a member that somebody respelt would make a record of a part.
    private static bool IsPartOf(string member) => string.Equals(member, PartOf, StringComparison.OrdinalIgnoreCase);

    private static ObjectNode Node(PartOfVisit part) =>
        new TreeMembers($"/{PartOf}").Number("items", part.Items).Text("sha256", part.Sha256).Node;

    /// <summary>Null where a number of items or the hash is missing or no such value.</summary>
    private static PartOfVisit? Part(SourceNode node) =>
        node is ObjectNode o
        && o.Text("sha256") is { } sha256
        && o.Find("items") is NumberNode number
        && int.TryParse(number.Raw, NumberStyles.None, CultureInfo.InvariantCulture, out var items)
            ? new PartOfVisit(items, sha256)
            : null;

    private static bool IsReading(string member) => string.Equals(member, Reading, StringComparison.Ordinal);

    private static ObjectNode Node(Finding finding, int index) =>
        new TreeMembers($"/{Reading}/{index.ToString(CultureInfo.InvariantCulture)}")
            .Text("code", finding.Code)
            .Text("path", finding.Path)
            .Text("message", finding.Message.Text)
            .Text("hint", finding.Hint.Text)
            .Add("said", at => EmbeddedMessage.Node(finding.Message, at))
            .Add("advised", at => EmbeddedMessage.Node(finding.Hint, at))
            .Text("item", finding.Item)
            .Node;

    /// <summary>Null where the rule is not known, or the finding does not say where and what.</summary>
    private static Finding? Finding(SourceNode node)
    {
        if (node is not ObjectNode o || o.Text("code") is not { } code || !ByCode.TryGetValue(code, out var rule))
            return null;
        return o.Text("path") is { } path && o.Text("message") is { } message
            ? rule.At(
                path,
                EmbeddedMessage.Read(o.Find("said"), message),
                o.Text("hint") is { } hint ? EmbeddedMessage.Read(o.Find("advised"), hint) : null,
                o.Text("item")
            )
            : null;
    }
}
