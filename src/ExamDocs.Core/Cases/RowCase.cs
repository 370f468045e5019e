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
