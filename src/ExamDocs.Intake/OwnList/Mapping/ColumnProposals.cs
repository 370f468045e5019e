using ExamDocs.Core.Findings;
using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Proposes what each column is, from its heading and from what stands below it.</summary>
internal static class ColumnProposals
{
    public static IReadOnlyList<ColumnMap> Of(IReadOnlyList<ListTable> tables, KindPhrases kinds)
    {
        var columns = ColumnValues.Of(tables, kinds);
        var proposed = columns.Select(c => (Values: c, Seems: Seems(c))).ToList();
        var byHeading = proposed.ToDictionary(p => p.Values.Heading, p => p.Seems, StringComparer.OrdinalIgnoreCase);
        foreach (var table in tables)
            MissingRoles.Fill(table, proposed.Select(p => p.Values).Where(v => Has(table, v.Heading)).ToList(), byHeading);
        foreach (var table in tables)
            KeepOneOfEach(table, byHeading);
        return [.. proposed.Select(p => Map(p.Values, byHeading[p.Values.Heading]))];
    }

    private static ColumnMap Map(ColumnValues values, Seeming seems) =>
        new(values.Heading, seems.Sure is Sureness.Yes ? seems.Field : null)
        {
            Proposed = seems.Field,
            Sure = seems.Sure,
            Samples = Samples.Of(values.Texts),
        };

    private static bool Has(ListTable table, string heading) => table.Headings.Values.Contains(heading, StringComparer.OrdinalIgnoreCase);

    private static Seeming Seems(ColumnValues column)
    {
        var byHeading = ByHeading(column.Heading);
        return byHeading is { } known ? ValuesAgree.Checked(known, column) : ByValues(column);
    }

    private static Seeming? ByHeading(string heading)
    {
        var found = HeadingPhrases.Book.In(heading);
        if (found.Count == 0)
            return UseWords.OfState(heading) is >= UseMeaning.Lost ? new Seeming(ListField.OutOfUse, Sureness.Yes) : NearHeading(heading);
        if (found is [{ IsWhole: true } whole])
            return new Seeming(whole.Meaning.Field, whole.Meaning.Sure);
        var best = found.MaxBy(f => (f.Length, f.Meaning.Sure));
        var isOne = found.All(f => f.Meaning.Field == best.Meaning.Field || f.Length < best.Length);
        return new Seeming(best.Meaning.Field, isOne && best.Meaning.Sure is Sureness.Yes ? Sureness.Yes : Sureness.Likely);
    }

    /// <summary>A heading that is mistyped.</summary>
    private static Seeming? NearHeading(string heading)
    {
        var stems = string.Join(' ', PlainWords.Stems(heading));
        return
            stems.Length >= 5
            && SpellingSuggestion.Of(stems, HeadingPhrases.Book.All.Select(p => p.Key).Where(k => k.Length >= 5)) is { } near
            && HeadingPhrases.Book.Whole(near) is { } found
            ? new Seeming(found.Meaning.Field, found.Meaning.Field is ListField.Remark ? Sureness.Yes : Sureness.Likely)
            : null;
    }

    private static Seeming ByValues(ColumnValues column) =>
        column switch
        {
            { IsEmpty: true } => new(ListField.Remark, Sureness.Yes),
            { UsesInWords: >= 0.6 } when column.Distinct <= 20 => new(ListField.State, Sureness.Yes),
            // What a yes and a no are about can only be asked.
            { Uses: >= 0.6 } when column.Distinct <= 6 => new(ListField.Remark, Sureness.No),
            { StandardNumbers: >= 0.6 } => new(ListField.Standards, Sureness.Yes),
            { Kinds: >= 0.8 } when column.Variety <= 0.5 => new(ListField.Category, Sureness.Likely),
            _ => new(ListField.Remark, Sureness.Yes),
        };

    /// <summary>Of two columns for one thing the surer one has it; the other is kept as a remark.</summary>
    private static void KeepOneOfEach(ListTable table, Dictionary<string, Seeming> proposed)
    {
        var rivals = table
            .Headings.OrderBy(h => h.Key)
            .Select(h => h.Value)
            .Where(h => !ListFields.MayRepeat(proposed[h].Field))
            .GroupBy(h => proposed[h].Field)
            .Where(g => g.Count() > 1);
        foreach (var group in rivals.ToList())
        {
            var kept = group.MaxBy(h => proposed[h].Sure);
            foreach (var other in group.Where(h => !ReferenceEquals(h, kept)))
                proposed[other] = new Seeming(ListField.Remark, Sureness.Yes);
        }
    }
}

/// <summary>What a column seems to be.</summary>
internal sealed record Seeming(ListField Field, Sureness Sure);
