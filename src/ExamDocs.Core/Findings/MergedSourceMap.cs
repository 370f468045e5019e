namespace ExamDocs.Core.Findings;

/// <summary>Several inputs of one visit: each place is looked up in the input that it came from.</summary>
/// <param name="otherwise">The input whose places are the same in the merged record, unless said otherwise.</param>
/// <param name="places">Pointer into the merged record to the input it came from and the pointer there.</param>
internal sealed class MergedSourceMap(SourceMap otherwise, IReadOnlyDictionary<string, (SourceMap Source, string Pointer)> places)
    : SourceMap(otherwise.File)
{
    public override string Locate(string pointer)
    {
        var (source, at) = Origin(pointer);
        return source.Locate(at);
    }

    public override SourcePlace PlaceOf(string pointer)
    {
        var (source, at) = Origin(pointer);
        return source.PlaceOf(at);
    }

    public override bool IsOnSheet(string pointer)
    {
        var (source, at) = Origin(pointer);
        return source.IsOnSheet(at);
    }

    public override string? HeadingOf(string pointer)
    {
        var (source, at) = Origin(pointer);
        return source.HeadingOf(at);
    }

    private (SourceMap Source, string Pointer) Origin(string pointer)
    {
        foreach (var at in RecordPointer.Enclosing(pointer))
        {
            if (places.TryGetValue(at, out var place))
                return (place.Source, place.Pointer + pointer[at.Length..]);
        }
        return (otherwise, pointer);
    }
}
