using System.Text;
using System.Text.Json;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.OwnList.Words;
using ExamDocs.Intake.RuleFiles;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>Reads and writes a map in its file, format examdocs-map/1.</summary>
public static class MapFile
{
    /// <summary>More words than anybody settles; the rest stays as the program knows it.</summary>
    private const int MostWords = 400;

    private static readonly string[] Surenesses = ["no", "likely", "yes"];

    private static readonly string[] Meanings = ["remark", "stored", "lost", "withdrawn", "destroyed"];

    /// <returns>The map, or what is wrong with the file, a sentence each.</returns>
    public static (ListMap? Map, IReadOnlyList<string> Faults) Read(ReadOnlyMemory<byte> utf8, KnownRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        var (file, faults) = RuleFile.Map(utf8);
        if (file is null)
            return (null, faults);
        var unknown = file
            .Kinds.Select((k, n) => (k.Category, n))
            .Where(k => k.Category is not null && rules.FindCategory(k.Category) is null)
            .Select(k =>
                $"/kinds/{k.n}/category: '{k.Category}' is not a category; type one of "
                + $"{string.Join(", ", rules.Categories.Select(c => c.Id))}, or null"
            )
            .ToList();
        return unknown.Count > 0 ? (null, unknown) : (Of(file), []);
    }

    public static byte[] Write(ListMapping mapping)
    {
        ArgumentNullException.ThrowIfNull(mapping);
        var map = mapping.Map;
        var file = new ListMapFile
        {
            Format = ListMap.FormatName,
            List = Samples.Visible(mapping.Book.FileName),
            ToSettle = [.. ListToSettle.Necessary(mapping).Concat(ListToSettle.Other(mapping))],
            Dates = map.Dates is { } order ? DateOrders.Word(order) : null,
            Columns =
            [
                .. map.Columns.Select(c => new ListMapColumn(
                    c.Heading,
                    c.To is { } to ? ListFields.NameOf(to) : null,
                    ListFields.NameOf(c.Proposed),
                    Surenesses[(int)c.Sure],
                    c.Samples
                )),
            ],
            Makers = map.Makers,
            Kinds =
            [
                .. map
                    .Kinds.Take(MostWords)
                    .Select(k => new ListMapKind(k.Word, k.Category, k.Proposed, Surenesses[(int)k.Sure], k.Rows, k.Samples)),
            ],
            Words = [.. map.Words.Take(MostWords).Select(w => new ListMapWord(w.Word, NameOf(w.Means), w.Rows, w.Samples))],
            Colours = [.. map.Colours.Select(c => new ListMapColour(c.Colour, NameOf(c.Means), c.Rows))],
        };
        return Bytes(file);
    }

    /// <summary>What somebody has settled, and no proposal.</summary>
    public static byte[] Write(ListMap settled)
    {
        ArgumentNullException.ThrowIfNull(settled);
        var file = new ListMapFile
        {
            Format = ListMap.FormatName,
            Dates = settled.Dates is { } order ? DateOrders.Word(order) : null,
            Columns = [.. settled.Columns.Select(c => new ListMapColumn(c.Heading, c.To is { } to ? ListFields.NameOf(to) : null))],
            Makers = settled.Makers,
            Kinds = [.. settled.Kinds.Select(k => new ListMapKind(k.Word, k.Category))],
            Words = [.. settled.Words.Select(w => new ListMapWord(w.Word, NameOf(w.Means)))],
            Colours = [.. settled.Colours.Select(c => new ListMapColour(c.Colour, NameOf(c.Means)))],
        };
        return Bytes(file);
    }

    private static byte[] Bytes(ListMapFile file) => Encoding.UTF8.GetBytes(JsonSerializer.Serialize(file, RuleJson.Options) + "\n");

    private static string? NameOf(UseMeaning? means) => means is { } known ? Meanings[(int)known] : null;

    private static ListMap Of(ListMapFile file) =>
        new()
        {
            Dates = file.Dates is { } order ? DateOrders.Find(order) : null,
            Columns = [.. file.Columns.Select(c => new ColumnMap(c.Heading, c.To is { } to ? ListFields.Named(to) : null))],
            Makers = file.Makers,
            Kinds = [.. file.Kinds.Select(k => new KindMap(k.Word, k.Category))],
            Words = [.. file.Words.Select(w => new WordMap(w.Word, Means(w.Means)))],
            Colours = [.. file.Colours.Select(c => new ColourMap(c.Colour, Means(c.Means)))],
        };

    private static UseMeaning? Means(string? word) => word is null ? null : (UseMeaning)Array.IndexOf(Meanings, word);
}
