using ExamDocs.Core.Calendar;
using NodaTime;

namespace ExamDocs.Core.Tests.Calendar;

/// <summary>Every expectation follows from reg 9(1) as in SR 1999/304 (Northern Ireland), whose numbering GB shares.</summary>
public sealed class FirstServiceTests
{
    private static readonly LocalDate Enters = new(2026, 5, 20);

    [Theory]
    [InlineData(2025, 4, 20, true)] // thirteen months old
    [InlineData(2025, 5, 19, true)] // twelve months and a day
    [InlineData(2025, 5, 20, false)] // twelve months
    [InlineData(2026, 5, 20, false)] // the same day
    [InlineData(2026, 5, 21, true)] // not yet made
    public void New_kit_with_a_declaration_of_the_last_twelve_months_needs_no_examination(int year, int month, int day, bool needed) =>
        Assert.Equal(needed, FirstService.NeedsExamination(new(Enters, UsedBefore: false, new(year, month, day))));

    [Fact]
    public void New_kit_without_a_declaration_is_examined_first_unless_none_could_exist()
    {
        Assert.True(FirstService.NeedsExamination(new(Enters, UsedBefore: false, null)));
        Assert.False(FirstService.NeedsExamination(new(Enters, UsedBefore: false, null, DeclarationCouldExist: false)));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(null)]
    public void Kit_that_may_have_been_used_is_examined_first_whatever_its_declaration(bool? usedBefore) =>
        Assert.True(FirstService.NeedsExamination(new(Enters, usedBefore, new(2026, 5, 1))));

    [Fact]
    public void Used_kit_from_another_undertaking_needs_its_evidence()
    {
        var entry = new EntryIntoService(Enters, UsedBefore: true, null, FromOtherUndertaking: true);
        Assert.True(FirstService.NeedsExamination(entry));
        Assert.False(FirstService.NeedsExamination(entry with { TransferEvidence = true }));
    }

    [Fact]
    public void Evidence_without_a_transfer_does_not_count() =>
        Assert.True(FirstService.NeedsExamination(new(Enters, UsedBefore: true, null, TransferEvidence: true)));

    [Fact]
    public void A_missing_entry_is_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentNullException>(() => FirstService.NeedsExamination(null!));
}
