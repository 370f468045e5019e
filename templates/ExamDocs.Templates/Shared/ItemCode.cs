using System.Text;
using ExamDocs.Core.Records;

namespace ExamDocs.Templates.Shared;

/// <summary>The QR code that leads from a paper to its item: EXAMDOCS, the document's number and the item's id, between colons.</summary>
public sealed class ItemCode
{
    // More modules than these at half a millimetre would crowd out the words beside them.
    private const int MostModules = 73;

    private const int MostBytes = 400;

    private ItemCode(string text) =>
        (Text, Matrix) = (text, Encoding.UTF8.GetByteCount(text) > MostBytes ? null : Readable(new QrMatrix(text)));

    /// <summary>What the code says.</summary>
    public string Text { get; }

    /// <summary>Null where the id is too long for a code of readable size; it is then printed in words alone.</summary>
    public QrMatrix? Matrix { get; }

    public static ItemCode Of(DocumentIdentity identity, Item item) => new($"EXAMDOCS:{identity.Number}:{item.Id}");

    private static QrMatrix? Readable(QrMatrix matrix) => matrix.Modules <= MostModules ? matrix : null;
}
