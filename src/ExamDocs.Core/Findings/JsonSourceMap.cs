namespace ExamDocs.Core.Findings;

/// <summary>A JSON file: a place of the record is the same place of the file.</summary>
internal sealed class JsonSourceMap(string file) : SourceMap(file)
{
    public override string Locate(string pointer) => $"{File}#{pointer}";

    public override SourcePlace PlaceOf(string pointer) => new(File, null, pointer.Length == 0 ? "" : $"#{pointer}");
}
