using System.Text.Json;
using ExamDocs.Core.Identity;
using ExamDocs.Register;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Which visits recorded an owner's mark. A register has keys of ids and serial numbers, none of marks: every record is looked
/// through for its marks once, without binding it.
/// </summary>
internal sealed class OwnersMarks
{
    private readonly ILookup<string, int> _visits;

    /// <exception cref="InvalidDataException">A record is not as it was stored.</exception>
    public OwnersMarks(DocumentRegister register) =>
        _visits = register
            .Visits.All()
            .SelectMany(
                v => In(register.Visits.Record(v.Visit)).SelectMany(Folded.Keys).Distinct(StringComparer.Ordinal),
                (v, key) => (v.Visit, key)
            )
            .ToLookup(k => k.key, k => k.Visit, StringComparer.Ordinal);

    /// <summary>The visits in which an item bears this mark, however it is spelt.</summary>
    public IReadOnlyList<int> VisitsOf(string mark) => [.. Folded.Keys(mark).SelectMany(k => _visits[k]).Distinct()];

    private static List<string> In(byte[] record)
    {
        var marks = new List<string>();
        var json = new Utf8JsonReader(record);
        while (json.Read())
        {
            if (json.TokenType is JsonTokenType.PropertyName && json.ValueTextEquals("ownersMark"u8) && json.Read())
                marks.Add(json.TokenType is JsonTokenType.String ? json.GetString()! : "");
        }
        return marks;
    }
}
