using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;

namespace ExamDocs.Proof.Tests.Recalls;

/// <summary>
/// Things are made with their true markings and written down badly; whether a notice means one is known from its numbers. However
/// badly it was written down, an affected one never comes out as not affected.
/// </summary>
public sealed class RecallProofTests
{
    private static readonly int Tried = Effort.Of(2_000, 100_000);

    [Fact]
    public void No_affected_item_is_ever_not_affected()
    {
        var (affected, missed) = (0, new List<string>());
        for (var n = Effort.After; n < Effort.After + Tried; n++)
        {
            var (meant, thing, form, random) = Case(n);
            if (!meant.Means(thing))
                continue;
            affected++;
            var written = BadlyRecorded.Of(thing.Recorded(form), random);
            if (RecallCheck.Of(meant.Notice, [written]).Verdict is RecallVerdict.NotAffected)
                missed.Add($"{n}: {Shown(written)} by {Shown(meant.Notice)}");
        }
        Assert.True(affected > Tried / 5, $"{affected} of {Tried} affected: too few to show anything");
        Assert.True(missed.Count == 0, $"{missed.Count} of {affected}:\n{string.Join('\n', missed.Take(10))}");
    }

    [Fact]
    public void What_is_recorded_as_it_is_marked_is_told_apart()
    {
        var wrong = new List<string>();
        var (told, open) = (0, 0);
        for (var n = Effort.After; n < Effort.After + Tried; n++)
        {
            var (meant, thing, form, _) = Case(n);
            var written = thing.Recorded(form);
            var verdict = RecallCheck.Of(meant.Notice, [written]).Verdict;
            if (verdict is RecallVerdict.CannotTell)
                open++;
            else if (verdict is RecallVerdict.Affected == meant.Means(thing))
                told++;
            else
                wrong.Add($"{n}: {verdict} {Shown(written)} by {Shown(meant.Notice)}");
        }
        Assert.True(open < Tried / 50, $"{open} of {Tried} left open");
        Assert.True(told > 0 && wrong.Count < Tried / 100, $"{wrong.Count} wrong:\n{string.Join('\n', wrong.Take(10))}");
    }

    private static (MeantKit Meant, MarkedKit Thing, SerialForm Form, Random Random) Case(int n)
    {
        var random = new Random(n);
        var form = SerialForm.Of(random);
        return (MeantKit.Make(random, form), MarkedKit.Make(random), form, random);
    }

    private static string Shown(Item item) => $"{item.Maker}, {item.Model}, '{item.Serial}', {item.Manufactured}";

    private static string Shown(SafetyNotice notice) =>
        string.Join(
            " or ",
            notice.Affected.Select(k =>
                $"[{string.Join(",", k.Models)} {string.Join(",", k.SerialRanges)} {string.Join(",", k.SerialPatterns)} "
                + $"{k.Serials.Count} listed {k.ManufacturedFrom}-{k.ManufacturedTo}]"
            )
        );
}
