using System.Globalization;
using System.Text;
using ExamDocs.Intake.Workbook;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Annotating;

/// <summary>
/// Adds notes to a sheet's part of notes. Where a cell has one already, ours is added below what it says; what is said
/// there already is not said twice.
/// </summary>
internal sealed class NotesPatch(IReadOnlyList<Mark> marks) : PartPatch
{
    private readonly Dictionary<(int Row, int Column), Mark> _left = marks.ToDictionary(m => (m.Row, m.Column));
    private readonly StringBuilder _said = new();
    private readonly StringBuilder _author = new();
    private Mark? _here;
    private int _authors;
    private int _ours = -1;
    private bool _authorsSeen;

    protected override void BeforeStart(string name)
    {
        if (name is "commentList" && Depth == 1)
            EnsureAuthor();
        else if (name is "comment" && Parent is "commentList")
            BeginNote();
        else if (_here is not null && Parent is "text" && name is "rPh" or "phoneticPr")
            AddBelow();
        else if (_here is not null && Parent is "text" && name is "t")
            Begin("r");
        else if (name is "author" && Parent is "authors")
            _author.Clear();
    }

    protected override void Text(string text)
    {
        if (Parent is "author")
            _author.Append(text);
        else if (Parent is "t" && _here is not null && _said.Length <= WorkbookLimits.TextLength)
            _said.Append(text);
    }

    protected override void BeforeEnd(string name)
    {
        if (name is "authors" && Depth == 2)
            AddAuthor();
        else if (name is "text" && _here is not null)
            AddBelow();
        else if (name is "commentList" && Depth == 2)
            AddRest();
        else if (name is "comments" && Depth == 1 && _left.Count > 0)
            AddList();
    }

    protected override void AfterEnd(string name)
    {
        if (_here is not null && Parent is "text" && name is "t")
            End();
        else if (name is "author" && Parent is "authors")
            CountAuthor();
    }

    private void CountAuthor()
    {
        if (_author.ToString() is Seal.Author)
            _ours = _authors;
        _authors++;
    }

    private void EnsureAuthor()
    {
        if (_authorsSeen)
            return;
        Begin("authors");
        AddAuthor();
        End();
    }

    private void AddAuthor()
    {
        _authorsSeen = true;
        if (_ours >= 0)
            return;
        _ours = _authors;
        Begin("author");
        Target.WriteString(Seal.Author);
        End();
    }

    private void BeginNote()
    {
        _said.Clear();
        _here = CellAddress.Parse(Source.GetAttribute("ref") ?? "") is { } cell && _left.Remove(cell, out var mark) ? mark : null;
    }

    private void AddBelow()
    {
        var text = NoteText.Below(_said.ToString(), _here!.Texts);
        _here = null;
        if (text.Length > 0)
            Run(text);
    }

    private void AddList()
    {
        EnsureAuthor();
        Begin("commentList");
        AddRest();
        End();
    }

    private void AddRest()
    {
        foreach (var mark in _left.Values.OrderBy(m => m.Row).ThenBy(m => m.Column))
        {
            Begin("comment");
            Target.WriteAttributeString("ref", CellAddress.Of(mark.Row, mark.Column));
            Target.WriteAttributeString("authorId", _ours.ToString(CultureInfo.InvariantCulture));
            Begin("text");
            Run(NoteText.Below("", mark.Texts));
            End();
            End();
        }
        _left.Clear();
    }

    private void Run(string text)
    {
        Begin("r");
        Begin("rPr");
        foreach (var (name, value) in new[] { ("sz", "9"), ("rFont", "Tahoma"), ("family", "2") })
        {
            Begin(name);
            Target.WriteAttributeString("val", value);
            End();
        }
        End();
        Begin("t");
        Target.WriteAttributeString("xml", "space", null, "preserve");
        Target.WriteString(text);
        End();
        End();
    }
}
