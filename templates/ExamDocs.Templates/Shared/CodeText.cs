using ExamDocs.Core.Determination;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Templates.Shared;

/// <summary>What a code says: lines that any phone shows as they are. A program reads the first of them alone.</summary>
/// <param name="First">Which document, and which item.</param>
/// <param name="Says">What the paper says of the item, one sentence a line.</param>
/// <param name="Item">The item, for what is marked on it.</param>
/// <param name="Whom">Whom to ring about it.</param>
public sealed record CodeText(CodeLine First, IReadOnlyList<string> Says, Item Item, WhomToRing Whom)
{
    public static CodeText Of(DocumentIdentity identity, DeterminedVisit visit, DeterminedItem item, params IReadOnlyList<string> says) =>
        new(new CodeLine(identity.Number, item.Item.Id), says, item.Item, WhomToRing.Of(identity, visit, item));

    /// <summary>From the whole text to the first line alone; a smaller label carries a later one.</summary>
    public IReadOnlyList<string> Versions =>
        [
            Lines(Says, SerialLine.Of(Item), Whom.Line),
            Lines(Says, SerialLine.Short(Item), Whom.Line),
            Lines(Says, SerialLine.Short(Item), Whom.ShortLine),
            Lines(Says.Take(1), SerialLine.Short(Item), Whom.ShortLine),
            First.ToString(),
        ];

    private string Lines(IEnumerable<string> says, string serial, string whom) =>
        string.Join('\n', [First.ToString(), .. says.Append(serial).Append(whom).Select(Plain)]);

    /// <summary>A phone breaks lines as it likes: a blank that forbids it only costs room, and some readers show another sign.</summary>
    private static string Plain(string line) => line.Replace('\u00A0', ' ').Replace('\u202F', ' ');
}
