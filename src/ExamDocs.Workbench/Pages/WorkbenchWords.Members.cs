namespace ExamDocs.Workbench.Pages;

/// <content>Labels of fields, put together from the words of one language.</content>
public abstract partial class WorkbenchWords
{
    protected virtual string Colon => ": ";

    protected abstract string AnswerWord { get; }

    protected abstract string NoteWord { get; }

    /// <summary>The label of a field.</summary>
    /// <param name="name">Of the visit, an item, an examination or a defect, for example visit/employer/name.</param>
    public string Member(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var parts = name.Split('/');
        return parts[0] switch
        {
            "visit" => OfVisit(name),
            "examiner" => OfExaminer(name),
            "item" => OfItem(name["item/".Length..]),
            "examination" => OfExamination(name["examination/".Length..]),
            // Of one criterion: the criterion comes first.
            "defect" when parts.Length > 2 && parts[1] is not "notified" => $"{parts[1]}{Colon}{OfDefect(string.Join('/', parts[2..]))}",
            "defect" => OfDefect(name["defect/".Length..]),
            "answer" => $"{name["answer/".Length..]}{Colon}{AnswerWord}",
            "note" => $"{name["note/".Length..]}{Colon}{NoteWord}",
            "readings" => $"{Diameters}{Colon}{AtPlace(name["readings/".Length..])}",
            _ => name,
        };
    }

    protected abstract string OfVisit(string name);
    protected abstract string OfExaminer(string name);
    protected abstract string OfItem(string member);
    protected abstract string OfExamination(string member);
    protected abstract string OfDefect(string member);
}
