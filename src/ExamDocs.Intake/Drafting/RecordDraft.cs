using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Workbook.Writing;

namespace ExamDocs.Intake.Drafting;

/// <summary>
/// A record that somebody is still typing: every value as it was typed, readable or not. One value is set at a time, and all that
/// stands beside it is kept. Whether it can be read is for the reader to say.
/// </summary>
public sealed class RecordDraft
{
    private readonly ObjectNode _root;

    private RecordDraft(ObjectNode root) => _root = root;

    /// <summary>What of an earlier record still holds at the next visit, with its examinations as history; nothing is answered.</summary>
    /// <param name="last">The earlier record; null for an empty visit.</param>
    public static RecordDraft ForNextVisit(ExaminationRecord? last)
    {
        var next = last is null ? new ExaminationRecord() : NextVisit.Of(last);
        return new(
            RecordTree.Of(
                next with
                {
                    Format = ExaminationRecord.FormatName,
                    // One without a day would pass for an examination of this visit, with answers that nobody gave.
                    Examinations = [.. next.Examinations.Where(e => e.ExaminedOn is not null)],
                }
            )
        );
    }

    /// <returns>The draft, or a sentence saying why the file holds none.</returns>
    public static (RecordDraft? Draft, string? Unreadable) Read(ReadOnlyMemory<byte> utf8)
    {
        var (root, unreadable) = JsonTree.Parse(utf8, isRecord: true);
        return root is not ObjectNode record ? (null, unreadable ?? "the file holds no record")
            : EmbeddedRecord.IsPartOfVisit(record) ? (null, EmbeddedRecord.IsPart)
            : (new(record), null);
    }

    /// <returns>UTF-8, in the format examdocs/1.</returns>
    public byte[] Write() => JsonRecordWriter.Write(_root);

    /// <summary>As the reader of records reads it.</summary>
    public ExaminationRecord Record => JsonRecordReader.Read(Write(), "").Record ?? new ExaminationRecord();

    /// <summary>What the reader finds wrong with values as they were typed.</summary>
    public IReadOnlyList<Finding> Findings => JsonRecordReader.Read(Write(), "").Findings;

    /// <summary>The value as somebody would type it; empty where there is none.</summary>
    /// <param name="pointer">Of the value, for example /items/3/serial.</param>
    public string Text(string pointer) => DraftValue.Text(DraftTree.Find(_root, Steps(pointer)));

    /// <summary>How many elements the list has; 0 where there is no list.</summary>
    public int Count(string pointer) => (DraftTree.Find(_root, Steps(pointer)) as ListNode)?.Elements.Count ?? 0;

    /// <summary>Place of the first element of a list whose member has this text; null where none has.</summary>
    public int? IndexOf(string list, string member, string text)
    {
        for (var n = 0; n < Count(list); n++)
        {
            if (string.Equals(Text(FormattableString.Invariant($"{list}/{n}/{member}")), text, StringComparison.Ordinal))
                return n;
        }
        return null;
    }

    /// <summary>Whether an object holds nothing besides these members.</summary>
    public bool HoldsOnly(string pointer, params string[] members) =>
        DraftTree.Find(_root, Steps(pointer)) is ObjectNode o
        && o.Members.All(m => members.Contains(m.Key, StringComparer.Ordinal) || m.Value is ListNode { Elements.Count: 0 });

    /// <summary>The draft with this value; what it stands in is made where it is missing.</summary>
    /// <param name="pointer">Of the value; the place after the last element of a list adds one.</param>
    /// <param name="typed">As it was typed; blank for no value.</param>
    public RecordDraft With(string pointer, string? typed)
    {
        var steps = Steps(pointer);
        return new((ObjectNode)(DraftTree.Set(_root, steps, DraftValue.Of(steps[^1], typed)) ?? new ObjectNode("", [])));
    }

    /// <summary>The draft without this element of a list, or this member.</summary>
    public RecordDraft Without(string pointer) => new((ObjectNode)(DraftTree.Set(_root, Steps(pointer), null) ?? new ObjectNode("", [])));

    /// <summary>A number as a draft keeps it; what is no number stays as it was typed.</summary>
    public static string NumberAsKept(string typed) => DraftValue.Text(DraftValue.Of("positionMm", typed));

    private static string[] Steps(string pointer) => pointer.Split('/')[1..];
}
