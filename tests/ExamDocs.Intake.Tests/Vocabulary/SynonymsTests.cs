using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Reading;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Tests.Vocabulary;

/// <summary>The table of synonyms: each is read as one word, and nothing bad is a slip of the finger away from something good.</summary>
public sealed class SynonymsTests
{
    /// <summary>Every list of words that a column of the workbook may hold, and those that have no drop-down list.</summary>
    private static IReadOnlyList<IReadOnlyList<string>> Lists { get; } =
    [
        Words.States.All,
        .. WorkbookShape
            .Known.SelectMany(s => s.Columns)
            .Where(c => c.Words.Count > 0 && c.Group is not ColumnGroup.Criterion)
            .Select(c => c.Words)
            .DistinctBy(w => string.Join('|', w), StringComparer.Ordinal),
        ["arduous", "hand-powered", "power-driven"],
    ];

    public static TheoryData<string, string> Adverse
    {
        get
        {
            TheoryData<string, string> data = [];
            foreach (var word in (string[])["defect", "doubt", "withdraw"])
            {
                data.Add(word, word);
                foreach (var other in Synonyms.All.Where(s => s.Word == word).SelectMany(s => s.Others))
                    data.Add(word, other);
            }
            return data;
        }
    }

    [Fact]
    public void No_synonym_belongs_to_two_words_of_a_column() => Assert.Empty(Lists.SelectMany(TwoWords));

    [Fact]
    public void A_planted_synonym_of_two_words_is_named() =>
        Assert.Equal(["ok"], Doubled([("clear", "OK"), ("clear", "ok"), ("defect", "Ok")]));

    [Fact]
    public void Every_row_is_of_a_word_that_some_column_holds() =>
        Assert.Empty(Synonyms.All.Select(s => s.Word).Except(Lists.SelectMany(l => l), StringComparer.Ordinal));

    [Fact]
    public void Every_drop_down_word_but_a_unit_or_a_general_word_has_a_synonym_in_each_language()
    {
        var missing = Lists
            .SelectMany(l => l)
            .Distinct(StringComparer.Ordinal)
            .SelectMany(word =>
                Enum.GetValues<Language>()
                    .Where(language => !Synonyms.All.Any(s => s.Word == word && s.Language == language))
                    .Select(language => $"{word} {language}")
            )
            .Order(StringComparer.Ordinal)
            .ToList();
        // "lost" and "other" are themselves what an English speaker types; "t" and "kN" are written alike everywhere.
        Assert.Equal(
            [
                "kN French",
                "kN German",
                "lost English",
                "other English",
                "power-driven English",
                "power-driven French",
                "power-driven German",
                "t French",
            ],
            missing
        );
    }

    [Fact]
    public void Every_synonym_is_read_as_its_word_in_any_letter_case()
    {
        foreach (var list in Lists)
        {
            foreach (var row in Synonyms.All.Where(s => list.Contains(s.Word, StringComparer.Ordinal)))
            {
                foreach (var other in row.Others)
                {
                    Assert.Equal(new ReadWord(row.Word, IsListed: true), Synonyms.Find(other, list));
                    Assert.Equal(row.Word, Synonyms.Find($" {other.ToUpperInvariant()} ", list)?.Word);
                }
            }
        }
    }

    [Theory]
    [InlineData("Clear", "clear", false)]
    [InlineData("NOT  APPLICABLE", "not-applicable", false)]
    [InlineData("no sign", "no-sign", false)]
    [InlineData("OK", "clear", true)]
    [InlineData("n. a.", "not-applicable", true)]
    [InlineData("claer", null, false)]
    [InlineData("- clear", null, false)]
    [InlineData("clear?", null, false)]
    [InlineData("cl ear", null, false)]
    [InlineData("yes", null, false)]
    [InlineData("ja", null, false)]
    [InlineData("pass", null, false)]
    [InlineData("✓", null, false)]
    public void An_answer_is_a_listed_word_or_none(string typed, string? word, bool isListed) =>
        Assert.Equal(word is null ? null : new ReadWord(word, isListed), Synonyms.Find(typed, Words.States.All));

    /// <summary>No letter left out, doubled, swapped or replaced makes a good answer of a bad one.</summary>
    [Theory]
    [MemberData(nameof(Adverse))]
    public void No_respelling_of_a_bad_answer_is_read_as_a_better_one(string word, string typed)
    {
        foreach (var list in (IReadOnlyList<string>[])[Words.States.All, Words.Conclusions.All])
        {
            var wrong = Respelt(typed).Where(r => Synonyms.Find(r, list) is { } read && IsBetter(read.Word)).ToList();
            Assert.True(wrong.Count == 0, $"{word}: {string.Join(", ", wrong)}");
        }
    }

    /// <summary>The same, two slips of the finger away from the words themselves, in every table of answers.</summary>
    [Theory]
    [InlineData("defect")]
    [InlineData("doubt")]
    public void Nothing_two_slips_away_is_read_as_clear(string word)
    {
        foreach (var respelt in Respelt(word).SelectMany(Respelt))
            Assert.NotEqual("clear", Synonyms.Find(respelt, Words.States.All)?.Word);
        Assert.All(Synonyms.All.Where(s => s.Word == "clear").SelectMany(s => s.Others).Append("clear"), good =>
            Assert.Null(SpellingSuggestion.Of(good, [word]))
        );
    }

    [Fact]
    public void Categories_are_known_by_their_names_in_each_language()
    {
        var words = ColumnWords.Of(Core.Regimes.KnownRules.BuiltIn);
        var column = Column.Id("category", "category", "");
        foreach (
            var (typed, id) in ((string, string)[])
                [
                    ("harness", "harness"),
                    ("Harnesses", "harness"),
                    ("Gurt", "harness"),
                    ("rope bridge", "rope-bridge"),
                    ("Rope bridges", "rope-bridge"),
                    ("Seilbrücke", "rope-bridge"),
                    ("KLETTERSEIL", "climbing-rope"),
                    ("Helm", "helmet"),
                ]
        )
            Assert.Equal(id, words.Find(column, typed)?.Word);
        Assert.Null(words.Find(column, "harnes"));
    }

    private static bool IsBetter(string word) => word is not ("defect" or "doubt" or "withdraw");

    private static IEnumerable<string> TwoWords(IReadOnlyList<string> list) =>
        Doubled(
            Synonyms
                .All.Where(s => list.Contains(s.Word, StringComparer.Ordinal))
                .SelectMany(s => s.Others.Select(other => (s.Word, other)))
                .Concat(list.Select(word => (word, word)))
        );

    private static IEnumerable<string> Doubled(IEnumerable<(string Word, string Other)> rows) =>
        rows.GroupBy(r => Synonyms.Key(r.Other), StringComparer.Ordinal)
            .Where(g => g.Select(r => r.Word).Distinct(StringComparer.Ordinal).Count() > 1)
            .Select(g => g.Key);

    private static IEnumerable<string> Respelt(string text)
    {
        for (var n = 0; n < text.Length; n++)
        {
            yield return text.Remove(n, 1);
            yield return text.Insert(n, text[n..(n + 1)]);
            if (n + 1 < text.Length)
                yield return text[..n] + text[n + 1] + text[n] + text[(n + 2)..];
            foreach (var letter in "aeinorstxk. -")
                yield return text[..n] + letter + text[(n + 1)..];
        }
    }
}
