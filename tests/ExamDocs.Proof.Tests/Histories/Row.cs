using System.Text.Json;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>One item as one record has it: what it says the thing is, and what the record by itself says of it.</summary>
internal sealed class Row
{
    private Row(Sheet sheet, Kit kit, IReadOnlySet<string> codes)
    {
        var e = kit.Element;
        (Sheet, Kit, Own) = (sheet, kit, codes);
        (Id, Maker, Model) = (Spelling.Of(kit.Id), Spelling.Of(e.Text("maker")), Spelling.Of(e.Text("model")));
        (MakerFirm, Owner) = (Spelling.Firm(e.Text("maker")), sheet.Owner);
        (PartNumber, Serial, Mark) = (
            Spelling.Of(e.Text("partNumber")),
            Spelling.OfSerial(e.Text("serial")),
            Spelling.Of(e.Text("ownersMark"))
        );
        Category = Spelling.Of(e.Text("category"));
        Made = e.Dates("manufactured");
        Formerly = Spelling.Of(e.Text("formerly"));
        FittedTo = sheet.FittedTo.GetValueOrDefault(kit.Position);
        Destroyed =
            e.Text("status") == "destroyed"
            || sheet.Record.List("disposals").Any(d => d.Text("item") == kit.Id && d.Text("action") == "destroyed");
    }

    public Sheet Sheet { get; }

    public Kit Kit { get; }

    /// <summary>W, U codes that the record gives it apart from parts, wholes and the past.</summary>
    public IReadOnlySet<string> Own { get; }

    public Spelling? Id { get; }

    public Spelling? Category { get; }

    public Spelling? Maker { get; }

    public string? MakerFirm { get; }

    public Spelling? Model { get; }

    public Spelling? PartNumber { get; }

    public Spelling? Serial { get; }

    public Spelling? Mark { get; }

    public Span? Made { get; }

    public string? Owner { get; }

    public Spelling? Formerly { get; }

    /// <summary>As typed.</summary>
    public string? FittedTo { get; }

    public bool Destroyed { get; }

    public bool Examined => Kit.Examination is not null;

    public DateOnly Day => Kit.On;

    /// <summary>That of its record, where it was examined before that.</summary>
    public DateOnly LastDay => Day > Sheet.Day ? Day : Sheet.Day;

    public IReadOnlyList<JsonElement> Answers => Kit.Element.List("notTheSameAs");

    /// <summary>Its examination found a defect that becomes dangerous later.</summary>
    public bool HasLaterDefect => Kit.Examination?.List("defects").Any(d => d.Text("danger") == "later") == true;

    /// <summary>What was said of it last; null before anything was.</summary>
    public Said? Said { get; set; }

    public static IEnumerable<Row> Of(Sheet sheet) =>
        Assembling.Of(sheet.Stripped).Select(kit => new Row(sheet, kit, Alone.Codes(kit, sheet.Stripped)));
}

/// <summary>What is said of one item of one record.</summary>
/// <param name="Item">Its id as typed.</param>
/// <param name="Outcome">withdraw, undetermined, fit-until or fit.</param>
/// <param name="Until">The last day of use; null unless fit-until.</param>
/// <param name="Next">The next examination by; null where there is none.</param>
/// <param name="Codes">Its reasons.</param>
/// <param name="Unsure">The written rules leave it open: the programme may be stricter.</param>
public sealed record Said(string Item, string Outcome, DateOnly? Until, DateOnly? Next, IReadOnlySet<string> Codes, bool Unsure = false)
{
    /// <summary>No release but one for an error ends the withdrawal.</summary>
    public bool Never { get; init; }

    /// <summary>It was asked which item it is, and the record does not say.</summary>
    public bool Asked { get; init; }

    /// <summary>The parts that a withdrawal by W9 comes from, each by the rows that name it.</summary>
    internal IReadOnlyList<IReadOnlyList<Row>> BadParts { get; init; } = [];

    /// <summary>The label that was put on it.</summary>
    public string? Label { get; init; }

    /// <summary>What was found wrong with it, in words.</summary>
    public string Words { get; init; } = "";

    public bool Withdrawn => Outcome == "withdraw";

    public bool IsForUse => Outcome is "fit" or "fit-until";

    /// <summary>The reasons of the kind that decides.</summary>
    public string Deciding =>
        string.Join(
            ' ',
            Codes
                .Where(c =>
                    c[0]
                    == (
                        Withdrawn ? 'W'
                        : Outcome == "undetermined" ? 'U'
                        : 'D'
                    )
                )
                .Order(StringComparer.Ordinal)
        );
}
