using System.Text;
using ExamDocs.Register.Log;

namespace ExamDocs.Register.Tests.Log;

/// <summary>A log of 200 entries, damaged in one place after the other.</summary>
public sealed class LogCheckTests
{
    private const int Count = 200;

    private static readonly List<ReadOnlyMemory<byte>> Whole = Entries.Log(Count);

    /// <summary>One checkpoint for each entry, as a register that adds one with each has them.</summary>
    private static readonly List<Checkpoint> Each = EveryCheckpoint();

    private static readonly Checkpoint Last = Each[^1];

    [Fact]
    public void Nothing_is_said_of_a_log_that_was_left_alone()
    {
        Assert.Empty(LogCheck.Run(Whole, Each, Last));
        Assert.Empty(LogCheck.Run(Whole, [Last], Last));
        Assert.Empty(LogCheck.Run(Whole, [Last], exported: null));
        Assert.Empty(LogCheck.Run([], [], exported: null));
        Assert.Empty(LogCheck.Run([], [Entries.Checkpointed([])], Entries.Checkpointed([])));
    }

    [Fact]
    public void A_log_that_has_grown_since_is_the_same_log()
    {
        foreach (var exported in Each)
            Assert.Empty(LogCheck.Run(Whole, [Last], exported));
    }

    [Fact]
    public void Each_entry_altered_is_named()
    {
        for (var row = 0; row < Count; row++)
        {
            var log = Whole.ToList();
            log[row] = Reworded(log[row]);
            Assert.Equal(
                [
                    FormattableString.Invariant(
                        $"The register's checkpoint of {Entrances(row + 1)} does not hold: log entry {row} was altered, or its root was."
                    ),
                ],
                LogCheck.Run(log, Each)
            );
            AssertFound(log);
        }
    }

    [Fact]
    public void Each_entry_altered_so_that_it_is_none_is_named()
    {
        for (var row = 0; row < Count; row++)
        {
            var log = Whole.ToList();
            log[row] = log[row][..^1];
            var said = LogCheck.Run(log, [Last]);
            Assert.Equal(2, said.Count);
            Assert.Equal(FormattableString.Invariant($"Row {row} of the log was altered: it is not written as an entry is."), said[0]);
            AssertFound(log);
        }
    }

    [Fact]
    public void Each_entry_removed_is_named()
    {
        for (var row = 0; row < Count - 1; row++)
        {
            var log = Whole.ToList();
            log.RemoveAt(row);
            Assert.Contains(FormattableString.Invariant($"Log entry {row} is missing."), LogCheck.Run(log, [Last]));
            AssertFound(log);
        }
    }

    [Fact]
    public void Each_entry_removed_and_the_rest_numbered_anew_is_found()
    {
        for (var row = 0; row < Count; row++)
        {
            var log = Enumerable.Range(0, Count - 1).Select(position => Moved(position < row ? position : position + 1, position)).ToList();
            // Of the last one nothing but the length is left to tell.
            var said = LogCheck.Run(log, Each);
            Assert.Contains(said, s => s.StartsWith("The log was cut", StringComparison.Ordinal));
            Assert.Equal(
                row < Count - 1,
                said.Any(s => s.Contains(FormattableString.Invariant($"log entry {row} was altered"), StringComparison.Ordinal))
            );
            AssertFound(log);
        }
    }

    [Fact]
    public void Each_two_neighbours_and_each_two_far_apart_swapped_are_named()
    {
        for (var row = 0; row < Count; row++)
        {
            foreach (var other in new[] { row + 1, row + 50, Count - 1 }.Where(o => o > row && o < Count))
            {
                var log = Whole.ToList();
                (log[row], log[other]) = (log[other], log[row]);
                var said = LogCheck.Run(log, [Last]);
                Assert.Contains(FormattableString.Invariant($"Log entry {other} is out of order, in row {row}."), said);
                Assert.Contains(FormattableString.Invariant($"Log entry {row} is out of order, in row {other}."), said);
                AssertFound(log);
            }
        }
    }

    [Fact]
    public void A_tail_of_any_length_cut_off_is_found()
    {
        for (var left = 0; left < Count; left++)
        {
            var log = Whole[..left];
            var cut = FormattableString.Invariant(
                $"The log was cut: the exported checkpoint is of 200 entries, {Entrances(left)} are there."
            );
            // Whoever cuts the register's own checkpoints as well leaves it sound in itself.
            Assert.Empty(LogCheck.Run(log, Each[..left]));
            Assert.Equal([cut], LogCheck.Run(log, Each[..left], Last));
            Assert.Equal(
                [cut.Replace("the exported", "the register's own", StringComparison.Ordinal), cut],
                LogCheck.Run(log, [Last], Last)
            );
        }
    }

    [Fact]
    public void A_log_written_anew_with_its_checkpoints_is_found_by_the_exported_one_alone()
    {
        for (var row = 0; row < Count; row++)
        {
            var log = Whole.ToList();
            log[row] = Reworded(log[row]);
            Assert.Empty(LogCheck.Run(log, [Entries.Checkpointed(log)]));
            Assert.Contains(
                "exported checkpoint",
                Assert.Single(LogCheck.Run(log, [Entries.Checkpointed(log)], Last)),
                StringComparison.Ordinal
            );
            // Of before the entry it knows nothing.
            Assert.Empty(LogCheck.Run(log, [Entries.Checkpointed(log)], row == 0 ? Entries.Checkpointed([]) : Each[row - 1]));
        }
    }

    [Fact]
    public void An_entry_added_by_hand_or_twice_is_named()
    {
        var added = Whole.Append(Entries.At(Count).Bytes()).ToList();
        Assert.Equal(["No checkpoint of the register covers the log entries from 200 on."], LogCheck.Run(added, Each, Last));
        var twice = Whole.ToList();
        twice.Insert(7, twice[7]);
        Assert.Contains("Log entry 7 is there 2 times.", LogCheck.Run(twice, Each));
    }

    [Fact]
    public void Every_checkpoint_gone_is_named() =>
        Assert.Equal(["No checkpoint of the register covers the log entries from 0 on."], LogCheck.Run(Whole, []));

    [Fact]
    public void A_checkpoint_of_another_register_is_named()
    {
        var other = new Checkpoint(Checkpoint.OriginOf(new Guid("10112233-4455-6677-8899-aabbccddeeff")), Count, Last.Root.Span);
        Assert.Contains("of another register", Assert.Single(LogCheck.Run(Whole, [Last], other)), StringComparison.Ordinal);
        Assert.Contains("of another register", Assert.Single(LogCheck.Run(Whole, [Last, other])), StringComparison.Ordinal);
    }

    [Fact]
    public void Several_entries_gone_are_named_by_the_first_and_the_last_and_a_great_position_costs_nothing()
    {
        var log = Whole.ToList();
        log.RemoveRange(20, 30);
        log[^1] = Encoding.UTF8.GetBytes(
            Encoding.UTF8.GetString(log[^1].Span).Replace("\"position\":199", "\"position\":9007199254740991", StringComparison.Ordinal)
        );
        var said = LogCheck.Run(log, [Last]);
        Assert.Contains("Log entries 20 to 49 are missing.", said);
        Assert.Contains("Log entries 199 to 9007199254740990 are missing.", said);
    }

    /// <summary>By the register's own last checkpoint alone, and by the exported one alone.</summary>
    private static void AssertFound(List<ReadOnlyMemory<byte>> log)
    {
        Assert.NotEmpty(LogCheck.Run(log, [Last]));
        Assert.NotEmpty(LogCheck.Run(log, [Entries.Checkpointed(log)], Last));
    }

    private static ReadOnlyMemory<byte> Reworded(ReadOnlyMemory<byte> entry)
    {
        var text = Encoding.UTF8.GetString(entry.Span);
        var other = Encoding.UTF8.GetBytes(text.Replace("HB-014-B", "HB-014-C", StringComparison.Ordinal));
        Assert.Equal(other, LogEntry.Parse(other).Bytes());
        return other;
    }

    private static ReadOnlyMemory<byte> Moved(int from, int to) =>
        Encoding.UTF8.GetBytes(
            Encoding
                .UTF8.GetString(Whole[from].Span)
                .Replace(
                    FormattableString.Invariant($"\"position\":{from},"),
                    FormattableString.Invariant($"\"position\":{to},"),
                    StringComparison.Ordinal
                )
        );

    private static string Entrances(int count) => FormattableString.Invariant($"{count} {(count == 1 ? "entry" : "entries")}");

    private static List<Checkpoint> EveryCheckpoint() =>
        [.. Enumerable.Range(1, Count).Select(size => Entries.Checkpointed(Whole[..size]))];
}
