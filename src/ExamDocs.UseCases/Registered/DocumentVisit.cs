using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Checks a document, the visit that it was issued from, and those that share its items, against the log before the register's answer
/// about it is used.
/// </summary>
internal static class DocumentVisit
{
    /// <returns>The document.</returns>
    /// <exception cref="RegisterAlteredException">One of them differs from the log.</exception>
    public static DocumentStatus? Require(DocumentRegister register, DocumentStatus? document)
    {
        if (document is not null)
            register.RequireAsLogged(document);
        if (document?.Visit is { } visit)
        {
            var records = new RememberedRecords(register);
            var logged = register.Visits.AsLogged(records.Read);
            logged.Require([visit]);
            register.RequireDecided(document);
            var touching = logged.Touching(records.Of(visit));
            logged.RequireEnds(document);
            if (WithdrawnSince(document, touching, records) is { } item)
                throw new RegisterAlteredException(document.Number, $"A later visit withdrew {item}, and it is listed as if none had.");
        }
        return document;
    }

    /// <summary>
    /// An item that a document listed as current says may be used, and that a later visit withdrew: that it ended the document is an entry
    /// of its own in the log, and could be altered by itself. Only where id, maker and serial number are typed alike is it certain here
    /// that it is that item; a version before did not end what it should.
    /// </summary>
    private static string? WithdrawnSince(DocumentStatus document, IReadOnlyList<TouchingVisit> touching, RememberedRecords records)
    {
        if (
            !document.IsCurrent
            || !DocumentStanding.Says(document)
            || touching.FirstOrDefault(t => t.Visit.Visit == document.Visit)?.Visit is not { } own
        )
            return null;
        var ended = document.EndedLines.Select(l => l.Item).ToHashSet(StringComparer.Ordinal);
        var usable = (document.Usable() ?? []).Select(u => u.Item).Where(i => !ended.Contains(i)).ToHashSet(StringComparer.Ordinal);
        var items = records
            .Of(own.Visit)
            .Items.Where(i => i is { Id: not null, Maker: not null, Serial: not null } && usable.Contains(i.Id));
        var withdrawn =
            from later in touching
            where later.Visit is { Seen: not null, Origin: null } && later.Visit.Visit > own.Visit
            from outcome in later.Outcomes
            where OutcomeWords.Find(outcome.Outcome) is Outcome.Withdraw && (outcome.ExaminedOn ?? later.Visit.ExaminedOn) > own.ExaminedOn
            from item in records.Of(later.Visit.Visit).Items
            where string.Equals(item.Id, outcome.Item, StringComparison.Ordinal)
            where items.Any(i => (i.Id, i.Maker, i.Serial) == (item.Id, item.Maker, item.Serial))
            select item.Id;
        return withdrawn.FirstOrDefault();
    }
}
