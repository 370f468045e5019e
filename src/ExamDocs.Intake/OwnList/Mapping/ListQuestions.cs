using System.Globalization;
using ExamDocs.Intake.OwnList.Words;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>
/// Asks what is not sure, the most important first, and never more than a few questions: what is not asked stays as it is safe,
/// an unknown kind unknown and a word not understood against the item.
/// </summary>
public sealed class ListQuestions(ListMapping mapping)
{
    /// <summary>Nobody answers more for one list.</summary>
    public const int Most = 9;

    private const int MostColumns = 4;

    private static readonly string[] DateOrderNames = ["day, month, year", "month, day, year", "year, month, day"];

    /// <summary>An order of dates, for whoever is asked.</summary>
    public static string NameOf(DateOrder order) => DateOrderNames[(int)order];

    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);

    /// <summary>The next question; null where nothing is left to ask.</summary>
    public ListQuestion? Next()
    {
        if (_asked.Count >= Most)
            return null;
        // Columns come first: what the others ask about depends on them.
        var next = Columns().Take(MostColumns).Concat(Dates()).Concat(Makers()).Concat(Uses()).Concat(Colours()).Concat(Kinds());
        return next.FirstOrDefault(q => !_asked.Contains(q.Key));
    }

    /// <param name="question">As it was asked.</param>
    /// <param name="choice">Counted from 0.</param>
    public void Answer(ListQuestion question, int choice)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentOutOfRangeException.ThrowIfNegative(choice);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(choice, question.Choices.Count);
        _asked.Add(question.Key);
        question.Settle(mapping, choice);
    }

    private IEnumerable<ListQuestion> Columns() =>
        _asked.Count(k => k.StartsWith("column ", StringComparison.Ordinal)) >= MostColumns
            ? []
            : mapping.Map.Columns.Where(c => c.To is null).OrderByDescending(c => c.IsNecessary).Select(ColumnQuestion.Of);

    private IEnumerable<ListQuestion> Dates()
    {
        if (mapping.Map.Dates is not null || mapping.AmbiguousDates.Count == 0)
            yield break;
        var orders = mapping.DateOrders;
        yield return new ListQuestion(
            $"In which order are the dates typed? For example: {string.Join("; ", Samples.Of(mapping.AmbiguousDates))}",
            [.. orders.Select(NameOf)],
            0
        )
        {
            Key = "dates",
            Settle = (m, choice) => m.Settle(map => map with { Dates = orders[choice] }),
        };
    }

    private IEnumerable<ListQuestion> Makers()
    {
        if (mapping.Map.Makers is not null || mapping.MakersSeen is not { } makers)
            yield break;
        yield return new ListQuestion(
            $"Are these the makers in the column of maker and model? {string.Join("; ", makers)}",
            ["yes: split maker and model after them", "no: take each value whole as the model"],
            makers.Count > 0 ? 0 : 1
        )
        {
            Key = "makers",
            Settle = (m, choice) => m.Settle(map => map with { Makers = choice == 0 ? makers : [] }),
        };
    }

    private IEnumerable<ListQuestion> Uses()
    {
        var unknown = mapping.Map.Words.Where(w => w.Means is null).ToList();
        if (unknown.Count == 0)
            yield break;
        yield return new ListQuestion(
            "These words about the use of items are not known. Do they say that an item is out of use? "
                + string.Join("; ", unknown.Take(8).Select(w => $"'{w.Samples[0]}' ({Rows(w.Rows)})")),
            ["yes, or I am not sure: the items come in withdrawn, to be released", "no: they are remarks"],
            0
        )
        {
            Key = "uses",
            Settle = (m, choice) =>
                m.Settle(map =>
                    map with
                    {
                        Words =
                        [
                            .. map.Words.Select(w =>
                                w.Means is null ? w with { Means = choice == 0 ? UseMeaning.Withdrawn : UseMeaning.Remark } : w
                            ),
                        ],
                    }
                ),
        };
    }

    private IEnumerable<ListQuestion> Colours() =>
        mapping
            .Map.Colours.Where(c => c.Means is null)
            .Select(colour => new ListQuestion(
                $"Some rows have a colour of their own ({colour.Colour}): {string.Join("; ", colour.Rows)}. "
                    + "Does it say that they are out of use?",
                ["yes, or I am not sure: the items come in withdrawn, to be released", "no: the colour says nothing about that"],
                0
            )
            {
                Key = $"colour {colour.Colour}",
                Settle = (m, choice) =>
                    m.Settle(map =>
                        map with
                        {
                            Colours =
                            [
                                .. map.Colours.Select(c =>
                                    string.Equals(c.Colour, colour.Colour, StringComparison.Ordinal)
                                        ? c with
                                        {
                                            Means = choice == 0 ? UseMeaning.Withdrawn : UseMeaning.Remark,
                                        }
                                        : c
                                ),
                            ],
                        }
                    ),
            });

    private IEnumerable<ListQuestion> Kinds() =>
        mapping.Map.Kinds.Where(k => k is { Category: null, IsSettled: false }).Select(k => KindQuestion.Of(k, mapping.Rules));

    internal static string Rows(int rows) => rows == 1 ? "1 row" : string.Create(CultureInfo.InvariantCulture, $"{rows} rows");
}
