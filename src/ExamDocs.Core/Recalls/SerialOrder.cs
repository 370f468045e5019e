namespace ExamDocs.Core.Recalls;

/// <summary>
/// Whether a serial number lies in a range. Numbers are compared run by run, letters with letters and digits with digits, and only
/// where all of them are built alike: what is built in another way has no place in the order, inside or outside.
/// </summary>
internal static class SerialOrder
{
    private static readonly DigitSeparators[] Ways = Enum.GetValues<DigitSeparators>();

    /// <param name="range">The range; where it is one number, from that to itself.</param>
    /// <param name="typed">The serial number on record.</param>
    /// <param name="checkCharacters">How many characters at the end do not count.</param>
    public static RecallVerdict Of(SerialRange range, string typed, int checkCharacters)
    {
        var (from, to) = (SerialText.ReadOfNotice(range.From), SerialText.ReadOfNotice(range.To));
        if (
            SerialText.ReadOfItem(typed) is not { } read
            || (range.From is not null && from is null)
            || (range.To is not null && to is null)
        )
            return RecallVerdict.CannotTell;
        SerialText[] ends = [.. new[] { from, to }.OfType<SerialText>()];
        read = read.WithoutLabel(ends);
        if (ends.Length == 0)
            return RecallVerdict.Affected;
        if (checkCharacters == 0)
            return Of(from, to, read);
        (from, to) = (from?.WithoutLast(checkCharacters), to?.WithoutLast(checkCharacters));
        if ((from ?? to) is null || read.WithoutLast(checkCharacters) is not { } bare)
            return RecallVerdict.CannotTell;
        // Somebody may have recorded it without its check characters.
        return Either(Of(from, to, bare), Of(from, to, read));
    }

    private static RecallVerdict Of(SerialText? from, SerialText? to, SerialText read) =>
        // Separators may be left out or put in: only what is outside whichever way they count is not affected.
        Ways.Max(way =>
            // O for 0 makes a letter of a digit, and so another form.
            Either(
                Open(Of(from?.Runs(false, way), to?.Runs(false, way), read.Runs(false, way)), read.HasSmallL),
                Open(
                    Of(from?.Runs(true, way), to?.Runs(true, way), read.Runs(true, way)),
                    from?.HasLookAlike is true || to?.HasLookAlike is true
                )
            )
        );

    /// <summary>Where letters of the notice's own would count as digits, a number without them would be outside by mistake.</summary>
    internal static RecallVerdict Open(RecallVerdict verdict, bool isDoubtful) =>
        isDoubtful && verdict is RecallVerdict.NotAffected ? RecallVerdict.CannotTell : verdict;

    /// <summary>Of two readings of different forms, the one of the right form counts.</summary>
    internal static RecallVerdict Either(RecallVerdict first, RecallVerdict second) =>
        second is RecallVerdict.Affected || first is RecallVerdict.CannotTell ? second : first;

    private static RecallVerdict Of(IReadOnlyList<SerialRun>? from, IReadOnlyList<SerialRun>? to, IReadOnlyList<SerialRun> read)
    {
        if (
            !AreOfOneForm(from ?? to!, read)
            || !AreOfOneForm(from ?? to!, to ?? from!)
            || read.Index().Any(r => MayStandForOthers(r.Item, from?[r.Index], to?[r.Index]))
            || (from is not null && to is not null && Compare(from, to) > 0)
        )
            return RecallVerdict.CannotTell;
        return (from is null || Compare(from, read) <= 0) && (to is null || Compare(read, to) <= 0)
            ? RecallVerdict.Affected
            : RecallVerdict.NotAffected;
    }

    /// <summary>An X in the number or in the notice may be any letter: only where both ends have the same letters is it settled.</summary>
    private static bool MayStandForOthers(SerialRun read, SerialRun? from, SerialRun? to)
    {
        if (from is not { } first || to is not { } last || first != last)
            return read.HasStandIn && read != from && read != to;
        return read.MayStandFor(first) || (first.Signs.Length > 1 && first.MayStandFor(read));
    }

    private static bool AreOfOneForm(IReadOnlyList<SerialRun> one, IReadOnlyList<SerialRun> other) =>
        one.Count == other.Count && one.Zip(other).All(pair => pair.First.IsOfOneForm(pair.Second));

    private static int Compare(IReadOnlyList<SerialRun> one, IReadOnlyList<SerialRun> other) =>
        one.Zip(other).Select(pair => pair.First.OrderAgainst(pair.Second)).FirstOrDefault(c => c != 0);
}
