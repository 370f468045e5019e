using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Photos;
using ExamDocs.Intake.RuleFiles;
using ExamDocs.Register.Work;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Working;

/// <summary>
/// Takes up every file that a job needs on another machine: the inputs, the photos that they name, the user's own rules, the letterhead and
/// its logo. What is not within a folder that the user named is left out.
/// </summary>
internal sealed class GatherFiles
{
    private const string Rules = "rules";

    private const string LetterheadFolder = "letterhead";

    private readonly Dictionary<string, byte[]> _files = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<string> _inputs = [];
    private long _size;

    /// <summary>In the order taken up.</summary>
    public IReadOnlyList<JobFile> Files => [.. _files.Select(f => new JobFile(f.Key, f.Value))];

    /// <summary>Which of them, or which folders of them, are the inputs.</summary>
    public IReadOnlyList<string> Inputs => _inputs;

    /// <param name="path">An input as the user named it.</param>
    /// <param name="rules">The categories that it may have sheets for.</param>
    /// <exception cref="JobRefusedException">It is more than a job may have, or has a name that not every system can have.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    public void AddInput(string path, KnownRules rules)
    {
        var place = FormattableString.Invariant($"inputs/{_inputs.Count}");
        var named = $"{place}/{NameOf(path)}";
        _inputs.Add(named);
        var isFolder = Directory.Exists(path);
        if (isFolder)
        {
            foreach (var file in Directory.EnumerateFiles(path).Order(StringComparer.Ordinal))
                Add($"{named}/{Path.GetFileName(file)}", file);
        }
        else
        {
            Add(named, path);
        }
        var beside = isFolder ? named : place;
        foreach (var input in FolderOfWorkbooks.InputsOf(path))
        {
            if (ReadInput.From(input, rules) is { Record: { } record, PhotosAreElsewhere: false })
            {
                foreach (var (name, file) in PhotosBeside.Of(record, ReadVisits.FolderOf(input)))
                    Add($"{beside}/{name}", file);
            }
        }
    }

    /// <param name="folder">The folder as the user named it.</param>
    /// <returns>Where it lies among the files.</returns>
    public string AddRules(string folder)
    {
        foreach (var (name, path) in ReadRules.FilesOf(folder))
            Add($"{Rules}/{name}", path);
        return Rules;
    }

    /// <param name="path">The file as the user named it.</param>
    /// <returns>Where it lies among the files.</returns>
    public string AddLetterhead(string path)
    {
        var named = $"{LetterheadFolder}/{NameOf(path)}";
        Add(named, path);
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        if (RuleFile.Letterhead(_files[named]).Value?.Logo is { Length: > 0 } logo && PhotosBeside.Find(folder, logo) is { } found)
            Add($"{LetterheadFolder}/{found.Name}", found.File);
        return named;
    }

    private void Add(string name, string path)
    {
        if (!TemporaryFolder.IsPlain(name))
            throw new JobRefusedException($"{path}: not every machine can have a file of this name; give it a plain one");
        if (_files.ContainsKey(name))
            return;
        _size += new FileInfo(path).Length;
        if (_size > JobToEnqueue.MostBytes || _files.Count == JobToEnqueue.MostFiles)
            throw new JobRefusedException(
                $"{path}: the files of one job are more than {JobToEnqueue.MostFiles} or larger than "
                    + $"{JobToEnqueue.MostBytes / 1024 / 1024} MiB together; give the inputs in parts"
            );
        _files[name] = File.ReadAllBytes(path);
    }

    private static string NameOf(string path) => Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));
}
