using System.Globalization;
using System.Text.RegularExpressions;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Vocabulary;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>
/// Reads a number typed as text, with the column's unit behind it or another that is exactly so many of it. Any other unit is
/// refused by its name, and so is a number that can be read in two ways.
/// </summary>
internal sealed partial class NumberTexts(ReadingNotes notes, ReadAsNotes readings)
{
    private readonly List<(string Pointer, string Typed)> _pointsBeforeThree = [];
    private string? _decimalComma;

    /// <summary>The unit of a load that stood with the number read last; null where none did.</summary>
    public string? LoadUnit { get; private set; }

    /// <returns>Null where the value counts as missing, which has then been reported.</returns>
    public SourceNode? Read(string text, Column column, JsonPlace pointer)
    {
        LoadUnit = null;
        var number = TypedNumber.Of(text);
        var unit = "";
        if (number.Kind is TypedNumberKind.None && WithUnit().Match(text) is { Success: true } match)
            (number, unit) = (TypedNumber.Of(match.Groups["number"].Value.TrimEnd()), match.Groups["unit"].Value);
        if (number.Kind is TypedNumberKind.CommaBeforeThree)
            return Refuse(
                CellFindings.NumberReadTwoWays,
                pointer,
                $"{CellReading.Shown(text)} may be a thousand or more, or a number with three decimals"
            );
        if (number.Plain is not { } plain)
            return new TextNode(pointer, text);
        Remember(number.Kind, text, pointer);
        var converted = unit.Length == 0 ? plain : Converted(plain, unit, column);
        if (converted is null)
            return Refuse(IntakeRules.WrongType, pointer, Wrong(text, unit, column));
        if (unit.Length > 0 || !string.Equals(plain, WithoutBlanks(text), StringComparison.Ordinal))
            readings.Add(ReadAsKind.Number, column.Heading, pointer, text, LoadUnit is null ? converted : $"{converted} {LoadUnit}");
        return new NumberNode(pointer, converted);
    }

    /// <summary>What can be said only when all is read: whether decimals were typed in two ways.</summary>
    public void Finish()
    {
        foreach (var (pointer, typed) in _decimalComma is null ? [] : _pointsBeforeThree)
            notes.Report(
                CellFindings.NumberReadTwoWays,
                pointer,
                $"{CellReading.Shown(typed)} has a point, and {CellReading.Shown(_decimalComma!)} elsewhere a comma before its decimals"
            );
    }

    private void Remember(TypedNumberKind kind, string text, JsonPlace pointer)
    {
        if (kind is TypedNumberKind.DecimalComma)
            _decimalComma ??= text;
        else if (kind is TypedNumberKind.PointBeforeThree)
            _pointsBeforeThree.Add((pointer.ToString(), text));
    }

    /// <summary>In the unit of the column; null where that is not exact, or the unit another.</summary>
    private string? Converted(string plain, string unit, Column column)
    {
        if (Unit.OfMember(column.Path) is not { } wanted)
            return null;
        Unit? found;
        if (wanted is Unit.Load)
            (LoadUnit, found) = Unit.Loads.FirstOrDefault(l => l.Unit.IsNamed(unit));
        else
            found = Unit.All.FirstOrDefault(u => string.Equals(u.Column, wanted, StringComparison.Ordinal) && u.IsNamed(unit));
        if (found is null || !decimal.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
            return null;
        if (found is { Times: 1, Per: 1 })
            return plain;
        var exact = number * found.Times / found.Per;
        return exact * found.Per == number * found.Times && (wanted is not Unit.Years || exact == decimal.Truncate(exact))
            ? exact.ToString("0.############################", CultureInfo.InvariantCulture)
            : null;
    }

    private static Message Wrong(string text, string unit, Column column) =>
        Unit.OfMember(column.Path) is { } wanted and not Unit.Count
            ? (Message)$"'{CellReading.Shown(text)}' is in '{CellReading.Shown(unit)}'; type a number in {Said(wanted)}"
            : $"'{CellReading.Shown(text)}' has '{CellReading.Shown(unit)}' behind it; type the number alone";

    private static Message Said(string unit) =>
        unit switch
        {
            Unit.Years => $"years",
            Unit.Months => $"months",
            Unit.Load => $"kg, t, kN or persons",
            _ => Message.AsIs(unit),
        };

    private static string WithoutBlanks(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private SourceNode? Refuse(RuleInfo rule, JsonPlace pointer, Message message)
    {
        notes.Report(rule, pointer.ToString(), message);
        return null;
    }

    [GeneratedRegex(
        @"\A(?<number>[+-]?[0-9.,'\u2019 \u00A0\u2009\u202F]*[0-9])[ \u00A0\u2009\u202F]*(?<unit>%|\p{L}[\p{L}. ]{0,20})\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex WithUnit();
}
