using System.Text;
using ExamDocs.Templates.AuditPack;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>
/// Tells from a file's name what it is about: it begins with the id or the name of an examiner, or with the id of an item or its model.
/// Letter case, blanks and signs make no difference; what the name goes on with begins anew after a sign. The longest match counts.
/// </summary>
internal sealed class EvidenceMatch
{
    private readonly List<(string Key, PackEvidenceKind Kind, string About)> _keys = [];

    /// <param name="examiners">Ids and name of each.</param>
    /// <param name="things">The items of the pack.</param>
    public EvidenceMatch(IReadOnlyList<PackedExaminer> examiners, IReadOnlyList<PackedThing> things)
    {
        foreach (var examiner in examiners)
        {
            foreach (var key in examiner.Keys)
                Add(key, PackEvidenceKind.Competence, examiner.Name);
        }
        foreach (var thing in things)
        {
            var (item, id) = (thing.Shown.Item, thing.Shown.Id);
            foreach (var key in new[] { id, item.Model, $"{item.Maker} {item.Model}" })
                Add(key, PackEvidenceKind.Equipment, id);
        }
    }

    /// <returns>What a file is about, each once; other evidence where nothing matches.</returns>
    public (PackEvidenceKind Kind, IReadOnlyList<string> About) Of(string fileName)
    {
        var name = Plain(Path.GetFileNameWithoutExtension(fileName));
        var found = _keys
            .Where(k => string.Equals(name, k.Key, StringComparison.Ordinal) || name.StartsWith($"{k.Key} ", StringComparison.Ordinal))
            .ToList();
        if (found.Count == 0)
            return (PackEvidenceKind.Other, []);
        var longest = found.Max(k => k.Key.Length);
        var kind = found.Where(k => k.Key.Length == longest).Min(k => k.Kind);
        return (
            kind,
            [.. found.Where(k => k.Key.Length == longest && k.Kind == kind).Select(k => k.About).Distinct(StringComparer.Ordinal)]
        );
    }

    private void Add(string? key, PackEvidenceKind kind, string about)
    {
        if (Plain(key) is { Length: > 0 } plain)
            _keys.Add((plain, kind, about));
    }

    /// <summary>Letters and figures in small letters, one blank for whatever stands between them.</summary>
    private static string Plain(string? text)
    {
        var plain = new StringBuilder();
        foreach (var rune in (text ?? "").EnumerateRunes().Where(r => r != Rune.ReplacementChar))
            plain.Append(Rune.IsLetterOrDigit(rune) ? rune.ToString() : " ");
        return string.Join(
            ' ',
            plain.ToString().Normalize(NormalizationForm.FormKC).ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries)
        );
    }
}
