using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Tests.Cases;

/// <summary>A slice has every row that can bear on its items, and says which row of the whole each of its rows is.</summary>
public sealed class RecordSlicesTests
{
    [Fact]
    public void Rows_that_share_nothing_with_the_items_are_left_out()
    {
        var slice = Slice(Record(new Item { Id = "A" }, new Item { Id = "B" }), "B");
        Assert.Equal("B", Ids(slice));
        Assert.Equal(["B"], slice.Record.Examinations.Select(e => e.Item));
        Assert.Equal("/items/1/serial", slice.Places.InWhole("/items/0/serial"));
        Assert.Equal("/examinations/1", slice.Places.InWhole("/examinations/0"));
        Assert.Equal("/people/4/name", slice.Places.InWhole("/people/4/name"));
        Assert.Equal("/visit/examinedOn", slice.Places.InWhole("/visit/examinedOn"));
    }

    [Fact]
    public void Parts_over_any_depth_former_ids_serials_marks_and_respelt_ids_come_along() =>
        Assert.Equal(
            "H HB R T U V W",
            Ids(
                Slice(
                    Record(
                        new Item { Id = "X" },
                        new Item { Id = "H" },
                        new Item { Id = "HB", FittedTo = "H" },
                        new Item { Id = "R", FittedTo = "h b" },
                        new Item { Id = "T", Formerly = "HB" },
                        new Item { Id = "U", Serial = "S-01" },
                        new Item
                        {
                            Id = "V",
                            Serial = "s 1",
                            OwnersMark = "blue 7",
                        },
                        new Item
                        {
                            Id = "W",
                            OwnersMark = "BLUE7",
                            NotTheSameAs = [new() { Id = "R" }],
                        }
                    ),
                    "V"
                )
            )
        );

    [Fact]
    public void What_names_no_item_of_the_record_comes_along_always()
    {
        var record = Record(new Item { Id = "A" }, new Item { Id = "B" }, new Item());
        record = record with
        {
            Examinations = [.. record.Examinations, new Examination { Item = "B0" }],
            Releases = [new Release { Item = "Q" }, new Release { Item = "B" }],
        };
        var slice = Slice(record, "A");
        Assert.Equal([null, "B0"], slice.Record.Examinations.Skip(1).Select(e => e.Item));
        Assert.Equal(["A", null], slice.Record.Items.Select(i => i.Id));
        Assert.Equal("Q", Assert.Single(slice.Record.Releases).Item);
    }

    [Fact]
    public void A_renewal_holds_the_part_taken_off_and_the_part_put_on_together()
    {
        var record = Record(new Item { Id = "H" }, new Item { Id = "P" }, new Item { Id = "Q" }, new Item { Id = "X" }) with
        {
            Renewals = [Renewal("H", "P", "Q")],
        };
        Assert.Equal("H P Q", Ids(Slice(record, "Q")));
        Assert.Equal("X", Ids(Slice(record, "X")));
        Assert.Empty(Slice(record, "X").Record.Renewals);
    }

    [Fact]
    public void What_other_records_say_joins_rows_and_is_cut_with_them()
    {
        var history = History.None with
        {
            Withdrawals = [Withdrawal("A"), Withdrawal("B"), Withdrawal("D")],
            Fittings = [new PastFitting("B", "A", default, FittingWord.WasOn), new PastFitting("Z", "D", default, FittingWord.StillOn)],
            Renewals = [Renewal("A", null, "C")],
            Quarantines = [new Disposal { Item = "B" }, new Disposal { Item = "D" }],
            LeftOut = ["L"],
        };
        var record = Record(new Item { Id = "A" }, new Item { Id = "B" }, new Item { Id = "C" }, new Item { Id = "D" });
        var slice = new RecordSlices(record, [], history).Of(["C"]);
        Assert.Equal("A B C", Ids(slice));
        Assert.Equal(["A", "B"], slice.History.Withdrawals.Select(w => w.ItemId));
        Assert.Equal("B", Assert.Single(slice.History.Fittings).Part);
        Assert.Equal("B", Assert.Single(slice.History.Quarantines).Item);
        Assert.Equal(["L"], slice.History.LeftOut);
        var other = new RecordSlices(record, [], history).Of(["D"]);
        Assert.Equal("Z", Assert.Single(other.History.Fittings).Part);
        Assert.Empty(other.History.Renewals);
    }

    [Fact]
    public void Limits_are_those_of_the_models_and_those_that_may_be_for_any_model()
    {
        var record = Record(
            new Item
            {
                Id = "A",
                Maker = "Fern",
                Model = "One",
            },
            new Item
            {
                Id = "B",
                Maker = "Fern",
                Model = "Two",
            },
            new Item
            {
                Id = "C",
                Maker = "Fern",
                Model = "Tow",
            }
        ) with
        {
            Limits =
            [
                new MakersLimits { Maker = "Fern", Model = "Two" },
                new MakersLimits { Maker = "fern", Model = "one" },
                new MakersLimits { Maker = "Fern" },
            ],
        };
        Assert.Equal(["one", null], Slice(record, "A").Record.Limits.Select(l => l.Model));
        Assert.Equal("/limits/2/maker", Slice(record, "A").Places.InWhole("/limits/1/maker"));
        // One that has none may have missed one by its spelling.
        Assert.Equal(3, Slice(record, "C").Record.Limits.Count);
    }

    [Fact]
    public void What_reading_found_moves_with_its_row_and_what_is_about_no_row_stays()
    {
        Finding[] reading = [Found("/items/1/serial"), Found("/items/0/serial"), Found("/visit/reference"), Found("")];
        var slice = new RecordSlices(Record(new Item { Id = "A" }, new Item { Id = "B" }), reading, History.None).Of(["B"]);
        Assert.Equal(["/items/0/serial", "/visit/reference", ""], slice.Reading.Select(f => f.Path));
    }

    private static RecordSlice Slice(ExaminationRecord record, string id) => new RecordSlices(record, [], History.None).Of([id]);

    private static string Ids(RecordSlice slice) => string.Join(' ', slice.Record.Items.Select(i => i.Id));

    private static ExaminationRecord Record(params Item[] items) =>
        new() { Items = items, Examinations = [.. items.Select(i => new Examination { Item = i.Id })] };

    private static PastWithdrawal Withdrawal(string item) => new(item, null, default, ["W1"], false);

    private static Renewal Renewal(string item, string? removed, string? fitted) =>
        new()
        {
            Item = item,
            RemovedPart = removed,
            FittedPart = fitted,
        };

    private static Finding Found(string path) => new("INT004", Severity.Error, path, $"it cannot be read", $"type it again", "");
}
