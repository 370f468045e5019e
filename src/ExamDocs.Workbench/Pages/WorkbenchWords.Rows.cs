using System.Globalization;
using ExamDocs.UseCases.Recording;

namespace ExamDocs.Workbench.Pages;

/// <content>What the pages say about what was done to an item, in rows, and about who did it.</content>
public abstract partial class WorkbenchWords
{
    /// <summary>The heading of a list, one of <see cref="ItemRows.Lists"/> or <see cref="PeopleRows.Lists"/>.</summary>
    public abstract string EntriesOf(string list);

    /// <summary>What is to be typed in it.</summary>
    /// <inheritdoc cref="EntriesOf"/>
    public abstract string EntriesHow(string list);

    /// <inheritdoc cref="EntriesOf"/>
    public abstract string AddEntry(string list);

    /// <param name="list">One of <see cref="ItemRows.Lists"/> or <see cref="PeopleRows.Lists"/>.</param>
    /// <param name="number">From 1.</param>
    public abstract string RowCalled(string list, int number);

    public abstract string TakeRowOff(string row);

    /// <summary>The label of a field in a row.</summary>
    /// <param name="list">One of <see cref="ItemRows.Lists"/> or <see cref="PeopleRows.Lists"/>.</param>
    /// <param name="member">One of its members.</param>
    public abstract string RowMember(string list, string member);

    /// <summary>What a field in a row offers; null where anything may be typed.</summary>
    /// <param name="name">The list and the member, for example releases/because.</param>
    protected abstract IReadOnlyList<(string Value, string Label)>? ChoicesOfRow(string name);

    /// <summary>Of a row or of a field in it; a name of another kind as it is.</summary>
    protected string OfRow(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var parts = name.Split('/');
        if (parts.Length < 2 || !IsRow($"{parts[0]}/{parts[1]}"))
            return name;
        var row = RowCalled(parts[0], int.Parse(parts[1], CultureInfo.InvariantCulture) + 1);
        return parts.Length == 2 ? row : $"{row}, {RowMember(parts[0], parts[2])}";
    }

    protected static bool IsRow(string name) =>
        name.Split('/') is [var list, var place]
        && (ItemRows.Lists.ContainsKey(list) || PeopleRows.Lists.ContainsKey(list))
        && int.TryParse(place, NumberStyles.None, CultureInfo.InvariantCulture, out _);
}
