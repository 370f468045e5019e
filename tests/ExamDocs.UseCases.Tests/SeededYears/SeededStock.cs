using System.Globalization;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Tests.SeededYears;

/// <summary>What the invented firm has in use. What goes is replaced, so that there are always as many.</summary>
internal sealed class SeededStock
{
    private static readonly (string Hardware, double Wear)[] Hardware = [("ring", 0.018), ("swivel", 0.026), ("shackle", 0.042)];
    private static readonly (string Ground, double Wear)[] Ground = [("woodland soil", 1), ("sandy", 1.4), ("paved", 0.9)];

    private readonly Random _chance;
    private readonly List<SeededItem> _items = [];
    private int _made;

    /// <param name="chance">The one source of chance.</param>
    /// <param name="start">The day of the first visit: what is there then is up to two years old.</param>
    public SeededStock(Random chance, LocalDate start)
    {
        _chance = chance;
        foreach (var model in SeededModel.All)
        {
            for (var n = 0; n < model.Count; n++)
                New(
                    model,
                    n % SeededFirm.Sites,
                    start.PlusDays(-_chance.Next(200, model.IsBridge ? 420 : 730)),
                    start.PlusDays((n % SeededFirm.Sites) - 181)
                );
        }
        var harnesses = _items.FindAll(i => i.Model.Category is "harness");
        foreach (var bridge in _items.Where(i => i.Model.IsBridge))
        {
            bridge.FittedTo = harnesses
                .Find(h => h.Site == bridge.Site && !_items.Exists(b => string.Equals(b.FittedTo, h.Id, StringComparison.Ordinal)))!
                .Id;
        }
    }

    public IReadOnlyList<SeededItem> At(int site) => _items.FindAll(i => i.Site == site);

    public SeededItem New(SeededModel model, int site, LocalDate firstUsed, LocalDate? examinedBefore = null)
    {
        var number = (++_made).ToString("0000", CultureInfo.InvariantCulture);
        var exposure = model.IsBridge ? _chance.Next(Hardware.Length * Ground.Length) : 0;
        var (hardware, ground) = (Hardware[exposure % Hardware.Length], Ground[exposure / Hardware.Length]);
        var item = new SeededItem
        {
            Id = $"{model.Prefix}-{number}",
            Serial = $"{model.Prefix}{number}-{firstUsed.Year % 100}",
            Model = model,
            FirstUsed = firstUsed,
            Site = site,
            LastExamined = examinedBefore,
            Exposure = model.IsBridge
                ? new Exposure
                {
                    Hardware = hardware.Hardware,
                    Ground = ground.Ground,
                    UserMassKg = 65 + _chance.Next(35),
                    Use = "daily",
                }
                : null,
            WearPerMonth = hardware.Wear * ground.Wear * (0.6 + (0.8 * _chance.NextDouble())),
            IsNoticed = model.Prefix is "TB" && _made % 2 == 0,
        };
        _items.Add(item);
        return item;
    }

    public void Remove(SeededItem item) => _items.Remove(item);
}
