using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Codes;

namespace ExamDocs.Templates.Shared;

/// <summary>What is marked on the item itself, in one line: its serial, else the owner's mark, else that neither was recorded.</summary>
public static class SerialLine
{
    public static string Of(Item item) =>
        !string.IsNullOrWhiteSpace(item.Serial) ? CodePhrases.Current.Serial(item.Serial)
        : !string.IsNullOrWhiteSpace(item.OwnersMark) ? CodePhrases.Current.Mark(item.OwnersMark)
        : CodePhrases.Current.Serial(Phrases.Common.NotRecorded);

    /// <summary>The same in fewer letters, for a label on which that has no room.</summary>
    public static string Short(Item item) =>
        !string.IsNullOrWhiteSpace(item.Serial) ? CodePhrases.ShortSerial(item.Serial)
        : !string.IsNullOrWhiteSpace(item.OwnersMark) ? CodePhrases.Current.ShortMark(item.OwnersMark)
        : CodePhrases.ShortSerial("–");
}
