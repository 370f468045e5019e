using ExamDocs.Templates.Label.Wording;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.DueLabel.Wording;

/// <inheritdoc />
internal sealed class English : DueLabelPhrases
{
    public override string Kind => "Next-examination label";
    public override string NextBy => "Next examination by";
    public override string NotAfter => "Not to be used after";
    public override string ShortNextBy => "Examine by";
    public override string ShortNotAfter => "Do not use after";
    public override string SignLabel => "A calendar's page";
    public override string PageOne => "Page 1 of 1";

    public override string Title(string number) => $"{Kind} {number}";

    public override string IssuedOn(LocalDate day) => $"{CommonPhrases.Languages.English.Issued} {Printed.Day(day)}";

    public override string ShortDay(LocalDate day) => Printed.Day(day);

    public override string Origin(string visit, LocalDate? examined, string law) =>
        $"Visit {visit}. Examined {Printed.Day(examined)} under {law}.";

    public override string Caution(string? regime) =>
        $"Check the number against the issuer's register. {LabelPhrases.Languages.English.Caution(regime)}";
}
