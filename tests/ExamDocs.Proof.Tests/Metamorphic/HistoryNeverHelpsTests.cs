using System.Collections.Concurrent;
using System.Text;
using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake;
using ExamDocs.Intake.Json;
using ExamDocs.Proof.Tests.Comparing;
using ExamDocs.Proof.Tests.Generating;
using NodaTime;

namespace ExamDocs.Proof.Tests.Metamorphic;

/// <summary>
/// To know more of what was before may make an outcome worse, never better; and in which order it is known makes no difference.
/// </summary>
public sealed class HistoryNeverHelpsTests
{
    private static int Records => Effort.Of(150, 200_000);

    [Fact]
    public void More_history_never_gives_a_better_outcome() =>
        Never(
            (seed, dice, read, given, asOf) =>
            {
                var more = Remembered.Joined(given, Remembered.Drawn(read.Record!, dice));
                return Determined(read, more, asOf)
                    .Items.Zip(Determined(read, given, asOf).Items, (now, was) =>
                        Better(now, was) ? $"{Text(was)} became {Text(now)}" : null
                    );
            }
        );

    [Fact]
    public void No_more_history_changes_nothing() =>
        Never(
            (_, _, read, given, asOf) =>
                Differences(Determined(read, given, asOf), Determined(read, Remembered.Joined(History.None, given), asOf))
        );

    [Fact]
    public void The_examinations_of_the_record_itself_known_once_more_change_nothing() =>
        Never(
            (_, _, read, given, asOf) =>
                Differences(Determined(read, given, asOf), Determined(read, Remembered.Joined(given, Remembered.Own(read.Record!)), asOf))
        );

    [Fact]
    public void The_order_in_which_history_is_known_changes_nothing() =>
        Never(
            (seed, dice, read, given, asOf) =>
            {
                var more = Remembered.Joined(given, Remembered.Drawn(read.Record!, dice));
                return Differences(Determined(read, more, asOf), Determined(read, Remembered.Shuffled(more, dice), asOf));
            }
        );

    [Fact]
    public void A_withdrawal_known_is_a_difference_that_is_seen()
    {
        var (read, _, asOf) = Drafted(1);
        var hold = new PastWithdrawal(read.Record!.Items[0].Id!, "Q-2021-000009", new LocalDate(2021, 2, 3), ["W1"], NeverReleasable: true);
        var (was, now) = (Determined(read, History.None, asOf), Determined(read, new History([hold]), asOf));
        Assert.Contains(Differences(was, now), d => d is not null);
        Assert.True(Better(was.Items[0], now.Items[0]) || was.Items[0].Outcome is Outcome.Withdraw);
    }

    private static bool Better(DeterminedItem now, DeterminedItem was) =>
        now.Outcome < was.Outcome
        || (now.Outcome is Outcome.FitUntil && was.Outcome is Outcome.FitUntil && now.Until > was.Until)
        || now.NextExaminationBy > was.NextExaminationBy
        || was.Reasons.Any(reason => reason.Code[0] is not 'D' && !now.Reasons.Contains(reason) && now.Outcome < Outcome.Withdraw);

    private static IEnumerable<string?> Differences(DeterminedVisit was, DeterminedVisit now) =>
        was.Items.Zip(now.Items, (a, b) => Whole(a) == Whole(b) ? null : $"{Whole(a)} became {Whole(b)}");

    private static string Whole(DeterminedItem item) =>
        Text(item)
        + string.Join(
            '\n',
            item.Findings.Select(f => f.Code + f.Path + f.Message.Text)
                .Concat(item.MeasurementSentences.Select(s => s.Text))
                .Concat(item.CaseForService.Select(e => e.Text))
        );

    private static string Text(DeterminedItem item) =>
        $"{item.Item.Id} {item.Outcome.Word()} until {item.Until} next {item.NextExaminationBy} because "
        + $"{string.Join(" | ", item.Reasons)}\n";

    private static DeterminedVisit Determined(ReadResult read, History history, LocalDate asOf) =>
        Determine.Visit(read.Record!, read.Findings, history, asOf);

    private static (ReadResult Read, History Given, LocalDate AsOf) Drafted(long seed)
    {
        var draft = Generator.Make(seed);
        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(draft.Json()), "record.json");
        return (read, Compared.Past(draft.Store), Compared.Day(draft.AsOf));
    }

    private static void Never(Func<long, Dice, ReadResult, History, LocalDate, IEnumerable<string?>> wrongs)
    {
        ConcurrentQueue<string> wrong = new();
        Parallel.For(1L, Records + 1L, seed =>
        {
            var (read, given, asOf) = Drafted(seed);
            foreach (var text in wrongs(seed, Dice.For(seed, 77), read, given, asOf).OfType<string>())
            {
                wrong.Enqueue($"seed {seed} ({string.Join(" + ", Generator.Chosen(seed).Select(c => c.Slip.Name))}) {text}");
            }
        });
        Assert.True(wrong.IsEmpty, $"{wrong.Count} of {Records}\n" + string.Join("\n", wrong.Order(StringComparer.Ordinal).Take(6)));
    }
}
