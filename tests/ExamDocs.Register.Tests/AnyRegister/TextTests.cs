namespace ExamDocs.Register.Tests;

/// <summary>
/// Text that no database takes as it is: the character zero, and half of a pair of surrogates (an attribute cannot hold one).
/// </summary>
public sealed class TextTests : Workplace
{
    [Theory]
    [InlineData(0)]
    [InlineData(0xD83E)]
    [InlineData(0xDD14)]
    public void Such_an_id_is_numbered_remembered_and_found_again(int letter)
    {
        var id = $"HB{(char)letter}014";
        using var register = Open();
        register.Visits.Remember(SampleVisit.Of(id, id: id));
        var pending = register.Take(new('R', 2026, "report", $"job of {id}", [id, "HB-015"], Out));
        register.Publish(pending, Pdf("a"), 1, "{}");
        Assert.Single(register.Visits.OutcomesOf(id));
        Assert.Equal(["HB\uFFFD014", "HB-015"], register.FindIssued($"job of {id}")!.Items);
        Assert.Empty(register.Check());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0xD83E)]
    public void Such_a_reason_is_listed_and_logged(int letter)
    {
        var reason = $"no room{(char)letter} left";
        using var register = Open();
        register.Void(Take(register, "a"), reason);
        Issue(register, "b");
        Assert.True(register.Withdraw("R-2026-000002", reason));
        Assert.Equal("no room\uFFFD left", Assert.Single(register.Voided()).Reason);
        Assert.Equal("no room\uFFFD left", register.Find("R-2026-000002")!.EndedReason);
        Assert.Empty(register.Check());
    }

    [Fact]
    public void Long_text_and_text_of_every_script_is_kept()
    {
        var random = new Random(7);
        var id =
            string.Concat(Enumerable.Range(0, 6_000).Select(_ => char.ConvertFromUtf32(random.Next(0x4E00, 0x9FA5))))
            + " Gurtgröße ΑΒΓ عربي 🧗";
        using var register = Open();
        register.Visits.Remember(SampleVisit.Of(id, id: id));
        var pending = register.Take(new('R', 2026, "report", "a", [id], Out));
        Assert.Equal(id, Assert.Single(register.Publish(pending, Pdf("a"), 1, "{}").Items));
        Assert.Equal(id, Assert.Single(register.Visits.OutcomesOf(id)).Outcome.Item);
        Assert.Empty(register.Check());
    }
}
