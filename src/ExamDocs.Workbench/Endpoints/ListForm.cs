using ExamDocs.Core.Regimes;
using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Words;
using ExamDocs.Intake.Vocabulary;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Primitives;

namespace ExamDocs.Workbench.Endpoints;

/// <summary>
/// What came back of the page of a list. Each answer comes with the heading, word or colour that it is about, so that a page which is out
/// of date settles nothing else.
/// </summary>
internal static class ListForm
{
    /// <summary>The answer that a column of maker and model is not split.</summary>
    public const string TakeWhole = "whole";

    /// <returns>What was settled; null where the form is not one that the page made.</returns>
    public static ListMap? Read(IFormCollection form, KnownRules rules)
    {
        var (columns, kinds) = (Pairs(form["column"], form["column-to"]), Pairs(form["kind"], form["kind-to"]));
        var (words, colours) = (Pairs(form["word"], form["word-to"]), Pairs(form["colour"], form["colour-to"]));
        return
            columns is null
            || words is null
            || colours is null
            || kinds?.TrueForAll(k => k.To.Length == 0 || rules.FindCategory(k.To) is not null) is not true
            ? null
            : new ListMap
            {
                Dates = One<DateOrder>(form["dates"].ToString()),
                Columns = [.. columns.Select(c => new ColumnMap(c.About, One<ListField>(c.To)))],
                // Left unsettled, it is split after the makers that the list shows.
                Makers = form["makers"] == TakeWhole ? [] : null,
                Kinds = [.. kinds.Select(k => new KindMap(k.About, k.To.Length == 0 ? null : k.To))],
                Words = [.. words.Select(w => new WordMap(w.About, One<UseMeaning>(w.To)))],
                Colours = [.. colours.Select(c => new ColourMap(c.About, One<UseMeaning>(c.To)))],
            };
    }

    private static List<(string About, string To)>? Pairs(StringValues about, StringValues to) =>
        about.Count == to.Count ? [.. about.Zip(to, (a, t) => (a ?? "", t ?? "")).Where(p => p.Item1.Length > 0)] : null;

    private static T? One<T>(string typed)
        where T : struct, Enum => Enum.TryParse<T>(typed, out var one) && Enum.IsDefined(one) ? one : null;
}
