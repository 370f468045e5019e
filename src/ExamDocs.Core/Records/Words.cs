namespace ExamDocs.Core.Records;

/// <summary>
/// The words that a member may hold, from the best to the worst: where a member is written twice, the worse one holds.
/// </summary>
public sealed class WordTable<T>
    where T : struct, Enum
{
    private readonly (string Word, T Value)[] _rows;

    internal WordTable(params (string Word, T Value)[] rows) => (_rows, All) = (rows, [.. rows.Select(r => r.Word)]);

    public IReadOnlyList<string> All { get; }

    /// <summary>The value that the word names, exactly as spelt; null where it names none.</summary>
    public T? Find(string? word)
    {
        foreach (var row in _rows)
        {
            if (string.Equals(row.Word, word, StringComparison.Ordinal))
                return row.Value;
        }
        return null;
    }

    public string WordFor(T value) => _rows.First(r => EqualityComparer<T>.Default.Equals(r.Value, value)).Word;

    public T Worse(T one, T other) => Rank(one) >= Rank(other) ? one : other;

    private int Rank(T value) => Array.FindIndex(_rows, r => EqualityComparer<T>.Default.Equals(r.Value, value));
}

/// <summary>The word tables of the record format.</summary>
public static class Words
{
    public static WordTable<ObservedState> States { get; } =
        new(
            ("clear", ObservedState.Clear),
            ("not-applicable", ObservedState.NotApplicable),
            ("no-sign", ObservedState.NoSign),
            ("noted", ObservedState.Noted),
            ("not-examined", ObservedState.NotExamined),
            ("doubt", ObservedState.Doubt),
            ("defect", ObservedState.Defect)
        );

    public static WordTable<Conclusion> Conclusions { get; } = new(("fit", Conclusion.Fit), ("withdraw", Conclusion.Withdraw));

    public static WordTable<Danger> Dangers { get; } = new(("later", Danger.Later), ("now", Danger.Now));

    public static WordTable<Basis> Bases { get; } =
        new(
            ("twelve-month", Basis.TwelveMonth),
            ("six-month", Basis.SixMonth),
            ("scheme", Basis.Scheme),
            ("exceptional", Basis.Exceptional),
            ("first-use", Basis.FirstUse),
            ("installation", Basis.Installation)
        );

    public static WordTable<Purpose> Purposes { get; } =
        new(
            ("other", Purpose.Other),
            ("accessory", Purpose.Accessory),
            ("fall-arrest-only", Purpose.FallArrestOnly),
            ("lifts-persons", Purpose.LiftsPersons)
        );

    public static WordTable<ItemStatus> Statuses { get; } =
        new(
            ("in-use", ItemStatus.InUse),
            ("stored", ItemStatus.Stored),
            ("not-presented", ItemStatus.NotPresented),
            ("lost", ItemStatus.Lost),
            ("destroyed", ItemStatus.Destroyed)
        );

    public static WordTable<Retying> Retyings { get; } =
        new(("user", Retying.User), ("competent-person", Retying.CompetentPerson), ("maker", Retying.Maker));

    public static WordTable<DisposalAction> DisposalActions { get; } =
        new(
            ("quarantined", DisposalAction.Quarantined),
            ("sent for repair", DisposalAction.SentForRepair),
            ("destroyed", DisposalAction.Destroyed)
        );

    public static WordTable<ReleaseReason> ReleaseReasons { get; } =
        new(
            ("made-good", ReleaseReason.MadeGood),
            ("examined-again", ReleaseReason.ExaminedAgain),
            ("recorded-in-error", ReleaseReason.RecordedInError)
        );

    /// <summary>Units in which a load may be recorded.</summary>
    public static IReadOnlyList<string> LoadUnits { get; } = ["kg", "t", "kN", "persons"];
}
