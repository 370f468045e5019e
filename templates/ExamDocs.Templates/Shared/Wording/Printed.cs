using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording;

/// <summary>How recorded values are written on paper. A missing value is always said to be missing.</summary>
public static class Printed
{
    public static string Text(string? text) => string.IsNullOrWhiteSpace(text) ? Phrases.Common.NotRecorded : text;

    public static string Day(LocalDate? day) => day is { } d ? Notation.Day(d) : Phrases.Common.NotRecorded;

    /// <summary>The date at the precision recorded: 2 May 2024, May 2024 or 2024.</summary>
    public static string Day(PartialDate? date) => date is null ? Phrases.Common.NotRecorded : Notation.Day(date);

    /// <summary>The same with a short month, for columns.</summary>
    public static string ShortDay(LocalDate? day) => day is { } d ? Notation.ShortDay(d) : Phrases.Common.NotRecorded;

    /// <inheritdoc cref="ShortDay(LocalDate?)" />
    public static string ShortDay(PartialDate? date) => date is null ? Phrases.Common.NotRecorded : Notation.ShortDay(date);

    /// <summary>The number with the decimals it was typed with.</summary>
    public static string Number(decimal value) => Notation.Number(value);

    /// <summary>The text with a capital at its start.</summary>
    public static string Sentence(string text) =>
        text.Length == 0 ? text : string.Create(CultureInfo.InvariantCulture, $"{char.ToUpperInvariant(text[0])}{text[1..]}");

    public static string Count(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>At most three decimals, at least two, so that a mean never looks rounder than it is.</summary>
    public static string Millimetres(decimal value) => Notation.Number(value, "0.00#");

    public static string Load(Load? load) =>
        load switch
        {
            { Value: { } value } => Join(Notation.Unbroken, Number(value), Unit(value, load.Unit)) + Basis(load.Basis),
            { NotMarked: true } => Phrases.Common.LoadNotMarked + Basis(load.Basis, Phrases.Common.NotRecorded),
            _ => Phrases.Common.NotRecorded,
        };

    /// <summary>An identifier of the catalogue as words: cover-cut becomes Cover cut.</summary>
    public static string Criterion(string? id)
    {
        if (string.IsNullOrWhiteSpace(id))
            return Phrases.Common.NotRecorded;
        return Sentence(Language.Current.Terms.Criterion(id));
    }

    /// <summary>The parts that are not blank, joined.</summary>
    public static string Join(string separator, params string?[] parts) =>
        string.Join(separator, parts.Where(p => !string.IsNullOrWhiteSpace(p)));

    /// <summary>The parts with a semicolon between them, as the language writes it.</summary>
    public static string List(IEnumerable<string> parts) => string.Join(Notation.Semicolon, parts);

    /// <summary>A subject and what is said of it, with a colon between them as the language writes it; blank parts are left out.</summary>
    public static string Of(string? what, string? said) => Join(Notation.Colon, what, said);

    private static Notation Notation => Language.Current.Notation;

    private static string Unit(decimal value, string? unit) =>
        (value, unit) switch
        {
            (1, "persons") => Phrases.Common.OnePerson,
            (_, "persons") => Phrases.Common.Persons,
            (_, null) => Phrases.Common.UnitNotRecorded,
            _ => unit,
        };

    private static string Basis(string? basis, string? missing = null)
    {
        var text = string.IsNullOrWhiteSpace(basis) ? missing : basis;
        return text is null ? "" : $" ({Phrases.Common.LoadBasis} {text})";
    }
}
