using ExamDocs.Intake.OwnList.Mapping;
using ExamDocs.Intake.OwnList.Words;
using ExamDocs.Intake.Vocabulary;

namespace ExamDocs.Intake.Tests.OwnList.Mapping;

/// <summary>Only what is not sure is asked, and never more than a few questions.</summary>
public sealed class ListQuestionsTests
{
    [Fact]
    public void A_clear_list_asks_nothing() =>
        Assert.Null(new ListQuestions(Lists.Mapping("Asset;Type;Made", "K-1;Helm;2020", "K-2;Gurt;25.03.2021")).Next());

    [Fact]
    public void The_order_of_dates_is_asked_once_and_only_where_no_date_shows_it()
    {
        var asked = Ask(Lists.Mapping("Asset;Type;Bought;Made", "K-1;Helm;03/04/2024;05/06/2024"), 1, out var mapping);
        Assert.Contains("In which order", Assert.Single(asked).Text, StringComparison.Ordinal);
        Assert.Equal(DateOrder.MonthFirst, mapping.Map.Dates);
        Assert.Empty(Ask(Lists.Mapping("Asset;Type;Bought", "K-1;Helm;03/04/2024", "K-2;Helm;25/04/2024"), 0, out mapping));
        Assert.Equal(DateOrder.DayFirst, mapping.Map.Dates);
    }

    [Fact]
    public void Dates_that_show_two_orders_are_asked_about() =>
        Assert.Single(
            Ask(Lists.Mapping("Asset;Type;Bought", "K-1;Helm;03/25/2024", "K-2;Helm;25/04/2024", "K-3;Helm;03/04/2024"), 0, out _)
        );

    [Fact]
    public void A_kind_that_is_not_sure_is_asked_about_and_may_stay_unknown()
    {
        var asked = Ask(Lists.Mapping("Asset;Type", "K-1;Rope", "K-2;Throw bag"), null, out var mapping);
        Assert.Equal(2, asked.Count);
        Assert.StartsWith("Climbing rope", asked[0].Choices[asked[0].Proposed], StringComparison.Ordinal);
        Assert.StartsWith("none of these", asked[1].Choices[asked[1].Proposed], StringComparison.Ordinal);
        Assert.Equal(["climbing-rope", null], mapping.Map.Kinds.OrderBy(k => k.Word, StringComparer.Ordinal).Select(k => k.Category));
    }

    [Fact]
    public void However_much_is_unsure_nine_questions_are_the_most()
    {
        string[] rows =
        [
            .. Enumerable.Range(1, 40).Select(n => $"K-{n};thing {(char)('a' + (n % 26))}{(char)('a' + n / 26)}x;03/04/2024;odd{n};yes;no"),
        ];
        var asked = Ask(Lists.Mapping(["Plate;Type;Bought;Status;Weg;Fort", .. rows]), null, out _);
        Assert.Equal(ListQuestions.Most, asked.Count);
        Assert.Equal(asked.Count, asked.Select(q => q.Text).Distinct(StringComparer.Ordinal).Count());
    }

    private static List<ListQuestion> Ask(ListMapping mapping, int? choice, out ListMapping settled)
    {
        var (questions, asked) = (new ListQuestions(mapping), new List<ListQuestion>());
        while (questions.Next() is { } question)
        {
            asked.Add(question);
            questions.Answer(question, choice ?? question.Proposed);
        }
        settled = mapping;
        return asked;
    }
}
