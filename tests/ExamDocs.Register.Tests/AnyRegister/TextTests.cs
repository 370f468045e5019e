namespace ExamDocs.Register.Tests;

/// <summary>Text that no database takes as it is: the character zero, and half of a pair of surrogates.</summary>
public sealed class TextTests : Workplace
{
    [Theory]
    [InlineData("HB\0014")]
    [InlineData("HB\uD83E014")]
    [InlineData("HB\uDD14")]
    public void Such_an_id_is_numbered_remembered_and_found_again(string id)
    {
        using var register = Open();
        register.Visits.Remember(SampleVisit.Of(id, id: id));
        var pending = register.Take(new('R', 2026, "report", $"job of {id}", [id, "HB-015"], Out));
        register.Publish(pending, Pdf("a"), 1, "{}");
        Assert.Single(register.Visits.OutcomesOf(id));
        Assert.Equal(["HB\uFFFD", "HB-015"], register.FindIssued($"job of {id}")!.Items.Select(i => i.Replace("014", "", StringComparison.Ordinal)));
        Assert.Empty(register.Check());
    }

    [Theory]
    [InlineData("no room\0 left")]
    [InlineData("no room\uD83E left")]
    public void Such_a_reason_is_listed_and_logged(string reason)
    {
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
        var id = string.Concat(Enumerable.Range(0, 6_000).Select(_ => char.ConvertFromUtf32(random.Next(0x4E00, 0x9FA5)))) + " Gurtgröße ΑΒΓ عربي 🧗";
        using var register = Open();
        register.Visits.Remember(SampleVisit.Of(id, id: id));
        var pending = register.Take(new('R', 2026, "report", "a", [id], Out));
        Assert.Equal(id, Assert.Single(register.Publish(pending, Pdf("a"), 1, "{}").Items));
        Assert.Equal(id, Assert.Single(register.Visits.OutcomesOf(id)).Outcome.Item);
        Assert.Empty(register.Check());
    }
}
