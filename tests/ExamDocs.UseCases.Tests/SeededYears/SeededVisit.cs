using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Tests.SeededYears;

/// <summary>One visit to one site of the invented firm: what is found, and what is renewed or replaced.</summary>
internal sealed class SeededVisit(SeededExaminer examiner, SeededStock stock, Random chance, LocalDate day, int round, int site)
{
    /// <summary>The round at which the maker's notice is dealt with.</summary>
    private const int NoticeRound = 4;

    private readonly List<Item> _rows = [];
    private readonly List<Examination> _examinations = [];
    private readonly List<Renewal> _renewals = [];
    private readonly List<Disposal> _disposals = [];
    private readonly List<SeededItem> _gone = [];

    public ExaminationRecord Record(Visit visit)
    {
        var lost = new List<SeededItem>();
        foreach (var item in stock.At(site))
        {
            if (item.Model.Category is not ("rope-bridge" or "harness") && chance.NextDouble() < 0.006)
                lost.Add(item);
            else
                Examine(item);
        }
        foreach (var item in lost)
        {
            _rows.Add(item.Row(ItemStatus.Lost));
            Replace(item);
        }
        foreach (var harness in _gone)
            MoveBridge(harness);
        return SeededPaper.Record(visit, _rows, _examinations, _renewals) with { Disposals = _disposals };
    }

    private void Examine(SeededItem item)
    {
        var basis = round == NoticeRound && item.IsNoticed ? Basis.Exceptional : Basis.SixMonth;
        var examination = examiner.Examines(item, day, basis);
        var fault = Fault(item, examination);
        if (fault is var (criterion, what))
        {
            examination = SeededExaminer.Withdrawn(examination, criterion, what, day);
            _disposals.Add(
                new Disposal
                {
                    Item = item.Id,
                    Action = DisposalAction.Quarantined,
                    By = "Ines Calloway",
                    On = day,
                }
            );
        }
        else if (item.IsExpiredOn(day))
            examination = examination with { Conclusion = Conclusion.Withdraw };
        _rows.Add(item.Row());
        _examinations.Add(examination);
        if (fault is not null || item.IsExpiredOn(day.PlusMonths(6)))
            Retire(item, fault?.What ?? "Its time of use ends before the next visit");
        else
            item.LastExamined = day;
    }

    private (string Criterion, string What)? Fault(SeededItem item, Examination found)
    {
        if (found.Diameters.Any(s => s.ReadingsMm.Average() < 9.9m))
            return ("diameter", "Thinner than the maker allows");
        if (item.IsNoticed && round == NoticeRound && chance.NextDouble() < 0.2)
            return ("rivet-play", "Play of the rivet that the maker's notice describes");
        if (item.Model.Faults.Length == 0 || chance.NextDouble() >= item.Model.Risk)
            return null;
        var criterion = item.Model.Faults[chance.NextDouble() < 0.7 ? 0 : chance.Next(item.Model.Faults.Length)];
        return (criterion, $"Found at {criterion.Replace('-', ' ')}, clear to see");
    }

    private void Retire(SeededItem item, string reason)
    {
        if (item.Model.Category is "harness")
            _gone.Add(item);
        else if (item.Model.IsBridge)
            Renew(item, reason);
        else
            Replace(item);
    }

    private void Renew(SeededItem item, string reason)
    {
        var harness = item.FittedTo;
        // A part that was taken off is fitted to nothing any more.
        _rows[RowOf(item)] = item.Row() with { FittedTo = null };
        stock.Remove(item);
        var fitted = stock.New(SeededModel.Bridge, site, day);
        fitted.FittedTo = harness;
        PutIntoService(fitted);
        _renewals.Add(Renewed(harness!, item.Id, fitted.Id, reason));
    }

    /// <summary>The bridge of a withdrawn harness goes on with the one bought for it.</summary>
    private void MoveBridge(SeededItem harness)
    {
        stock.Remove(harness);
        var bought = stock.New(harness.Model, site, day);
        PutIntoService(bought);
        var bridge = stock.At(site).Single(b => string.Equals(b.FittedTo, harness.Id, StringComparison.Ordinal));
        bridge.FittedTo = bought.Id;
        _rows[RowOf(bridge)] = bridge.Row() with { LastExamined = _rows[RowOf(bridge)].LastExamined };
        // One that was fitted at this visit goes straight to the new harness: only its predecessor came off the old one.
        var isNew = _renewals.Find(r => string.Equals(r.FittedPart, bridge.Id, StringComparison.Ordinal));
        if (isNew is not null)
            _renewals.Remove(isNew);
        _renewals.Add(Renewed(harness.Id, isNew?.RemovedPart ?? bridge.Id, null, isNew?.Reason ?? "The harness is withdrawn"));
        _renewals.Add(Renewed(bought.Id, null, bridge.Id, "Taken over from the withdrawn harness"));
    }

    private void PutIntoService(SeededItem item)
    {
        _rows.Add(item.Row());
        _examinations.Add(examiner.Examines(item, day, Basis.FirstUse));
        item.LastExamined = day;
    }

    private int RowOf(SeededItem item) => _rows.FindIndex(r => string.Equals(r.Id, item.Id, StringComparison.Ordinal));

    private Renewal Renewed(string item, string? removed, string? fitted, string reason) =>
        new()
        {
            Item = item,
            RemovedPart = removed,
            FittedPart = fitted,
            Reason = reason,
            DoneBy = examiner.Id,
            SupervisedBy = examiner.Id,
            DoneOn = day,
        };

    /// <summary>A new one is bought and used from the next day on.</summary>
    private void Replace(SeededItem item)
    {
        stock.Remove(item);
        stock.New(item.Model, site, day.PlusDays(1));
    }
}
