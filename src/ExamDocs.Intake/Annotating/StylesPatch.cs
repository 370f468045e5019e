using System.Globalization;
using ExamDocs.Core.Findings;

namespace ExamDocs.Intake.Annotating;

/// <summary>Adds our fonts, fills and cell styles after those that are there. Nothing that is there gets another number.</summary>
internal sealed class StylesPatch(StylePlan plan) : PartPatch
{
    /// <summary>The collections of the part in the order the format asks for.</summary>
    private static readonly string[] Order = ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles"];

    private static readonly string[] Needed = ["fonts", "fills", "borders", "cellXfs"];

    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);

    /// <summary>Asked for only once the part is read: by then the sheets have said what they need.</summary>
    private readonly Lazy<HashSet<int>> _wanted = new(() => [.. plan.Marked.Select(m => m.Style)]);
    private readonly Dictionary<int, CopiedStyle> _styles = [];
    private CopiedStyle? _current;
    private int _style = -1;

    protected override void BeforeStart(string name)
    {
        if (Depth == 1)
        {
            var rank = Array.IndexOf(Order, name);
            WriteMissing(rank < 0 ? Order.Length : rank);
            _seen.Add(name);
        }
        else if (Depth == 2 && Parent is "cellXfs")
            BeginStyle();
        else if (Depth == 3 && Parent is "xf" && name is "alignment" or "protection")
            _current?.TakeChild(Source);
    }

    protected override IReadOnlyList<KeyValuePair<string, string>> Attributes(string name)
    {
        if (Depth != 1)
            return [];
        return name switch
        {
            "fonts" => Count(plan.LinkFont + 1),
            "fills" => Count(plan.Fill(Severity.Error) + 1),
            "cellXfs" => Count(plan.FirstMarked + plan.Marked.Count),
            _ => [],
        };
    }

    protected override void BeforeEnd(string name)
    {
        if (Depth == 2)
        {
            _current = null;
            WriteOurs(name);
        }
        else if (Depth == 1)
            WriteMissing(Order.Length);
    }

    private static KeyValuePair<string, string>[] Count(int count) => [new("count", count.ToString(CultureInfo.InvariantCulture))];

    private void BeginStyle()
    {
        _current = _wanted.Value.Contains(++_style) ? new CopiedStyle() : null;
        if (_current is null)
            return;
        _styles[_style] = _current;
        _current.TakeAttributes(Source);
    }

    private void WriteMissing(int beforeRank)
    {
        foreach (var name in Needed.Where(n => Array.IndexOf(Order, n) < beforeRank && _seen.Add(n)))
        {
            Begin(name);
            foreach (var (attribute, value) in Attributes(name))
                Target.WriteAttributeString(attribute, value);
            WriteOurs(name);
            if (name is "borders")
            {
                Begin("border");
                End();
            }
            End();
        }
    }

    private void WriteOurs(string name)
    {
        var ours = new AddedStyles(plan, Begin, Target);
        switch (name)
        {
            case "fonts":
                ours.WriteFonts();
                break;
            case "fills":
                ours.WriteFills();
                break;
            case "cellXfs":
                ours.WriteStyles(_styles);
                break;
        }
    }
}
