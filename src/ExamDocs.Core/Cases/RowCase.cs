using System.Collections.ObjectModel;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Cases;

/// <summary>Something that rules check, with its place in the record.</summary>
public interface ICase
{
    /// <summary>JSON pointer of the thing itself.</summary>
    string Path { get; }

    /// <summary>Id of the item that it is about; null where it is about no single item.</summary>
    string? ItemId { get; }

    /// <summary>Regime whose rules apply to it; null where only the rules of every regime do.</summary>
    string? RegimeId { get; }
}

/// <summary>The visit itself.</summary>
public sealed class VisitCase(RecordContext context) : ICase
{
    public RecordContext Context { get; } = context;

    public Visit Visit => Context.Record.Visit;

    public string Path => "/visit";

    public string? ItemId => null;

    public string? RegimeId => Visit.Regime;
}

/// <summary>A row of one of the record's lists, with the whole record beside it.</summary>
public sealed class RowCase<T>(RecordContext context, T row, string path, string? itemId) : ICase
{
    public RecordContext Context { get; } = context;

    public T Row { get; } = row;

    public string Path { get; } = path;

    public string? ItemId { get; } = itemId;

    public string? RegimeId => Context.Record.Visit.Regime;
}

/// <summary>The rows of one of the record's lists that is about items.</summary>
public sealed class ItemRows<T>(IList<RowCase<T>> rows) : ReadOnlyCollection<RowCase<T>>(rows)
{
    private readonly ILookup<string?, RowCase<T>> _byItem = rows.ToLookup(r => r.ItemId, StringComparer.Ordinal);

    /// <summary>Those about the item with this id, in the order of the list; none where there is no id.</summary>
    public IEnumerable<RowCase<T>> Of(string? id) => id is null ? [] : _byItem[id];
}
