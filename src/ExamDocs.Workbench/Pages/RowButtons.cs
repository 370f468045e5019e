using ExamDocs.Intake.Drafting;
using ExamDocs.UseCases.Recording;
using Microsoft.AspNetCore.Http;

namespace ExamDocs.Workbench.Pages;

/// <summary>The buttons that add a row to a list of a page and take one off, as they come back.</summary>
internal static class RowButtons
{
    /// <summary>Names the list that gets a row.</summary>
    public const string Add = "add";

    /// <summary>Names the row that goes, for example renewals/0.</summary>
    public const string TakeOff = "off";

    /// <summary>Names the list that is to be shown open.</summary>
    public const string Open = "open";

    /// <summary>Saves what was typed; a row is taken off only where all of it was saved.</summary>
    public static (RecordDraft Draft, IReadOnlyList<NotSaved> NotSaved) Save(RecordDraft draft, DraftFields fields, IFormCollection form)
    {
        var typed = TypedForm.Fields(form).ToList();
        var (saved, notSaved) = fields.Save(draft, typed);
        return notSaved.Count == 0 && form[TakeOff].ToString() is { Length: > 0 } row
            ? fields.TakeOff(saved, row, typed)
            : (saved, notSaved);
    }

    /// <summary>The address of the page after one of the buttons was used; null where none was.</summary>
    /// <param name="page">Of the page, maybe with a query.</param>
    /// <param name="lists">What the page has.</param>
    /// <param name="form">What came back of it.</param>
    public static string? After(string page, RowLists lists, IFormCollection form)
    {
        var used = lists.Members.Keys.FirstOrDefault(list =>
            form[Add] == list || form[TakeOff].ToString().StartsWith($"{list}/", StringComparison.Ordinal)
        );
        return used is null ? null : $"{page}{(page.Contains('?') ? '&' : '?')}{(form.ContainsKey(Add) ? Add : Open)}={used}#{used}";
    }

    /// <summary>The page with the list that its address names.</summary>
    public static Sheet Shown(Sheet sheet, IQueryCollection query) =>
        sheet with
        {
            OpenRows = query.ContainsKey(Add) ? query[Add].ToString() : query[Open].ToString(),
            IsRowAdded = query.ContainsKey(Add),
        };
}
