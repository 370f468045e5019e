using ExamDocs.Core.Regimes;
using ExamDocs.Register.Work;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Working;

/// <summary>The files of a job laid out in a folder of their own, and read as <c>issue</c> reads what a user names.</summary>
internal sealed class JobInputs : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private JobInputs() { }

    /// <summary>The categories and regimes that its records can name.</summary>
    public KnownRules Rules { get; private set; } = KnownRules.BuiltIn;

    /// <summary>What is to be issued, as asked for.</summary>
    public WantedDocuments Wanted { get; private set; } = null!;

    public IReadOnlyList<ReadVisits> Read { get; private set; } = [];

    /// <param name="options">How it is to be issued.</param>
    /// <param name="files">Its files.</param>
    /// <exception cref="JobRefusedException">Something of it cannot be used.</exception>
    public static JobInputs Of(JobOptions options, IReadOnlyList<JobFile> files)
    {
        var inputs = new JobInputs();
        try
        {
            inputs.LayOut(files);
            inputs.ReadAll(options);
            return inputs;
        }
        catch
        {
            inputs.Dispose();
            throw;
        }
    }

    /// <summary>A sentence without the folder that the files lie in: it means nothing to whoever gave them.</summary>
    public string Shown(string sentence) => sentence.Replace(_folder.Path + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);

    private void LayOut(IReadOnlyList<JobFile> files)
    {
        foreach (var file in files)
        {
            if (!TemporaryFolder.IsPlain(file.Path))
                throw new JobRefusedException("one of its files has a name that leads elsewhere, or that not every machine can have");
            try
            {
                _folder.Put(file.Path, file.Bytes);
            }
            catch (IOException taken) when (Path.Exists(_folder.At(file.Path)))
            {
                throw new JobRefusedException($"two of its files are named {file.Path}", taken);
            }
        }
    }

    private void ReadAll(JobOptions options)
    {
        var rules = options.Rules is { } folder ? ReadRules.From(_folder.At(folder)) : new RulesRead(KnownRules.BuiltIn, []);
        Require(rules.Rules is not null, rules.Faults);
        var style = ReadPrintStyle.From(
            new PrintStyleRequest
            {
                Language = options.Language,
                LetterheadFile = options.Letterhead is { } file ? _folder.At(file) : null,
                ReadFromMetres = options.ReadFromMetres,
                SignFactor = options.SignFactor,
            },
            SystemClock.Instance.GetCurrentInstant()
        );
        Require(style.Style is not null, style.Faults);
        (Rules, Wanted) = (rules.Rules!, new(style.Style!, options.PerItem, options.Only is { } kind ? [kind] : []));
        Read = ReadVisits.From([.. options.Inputs.Select(_folder.At)], Rules, new VisitPhotos());
        Require(
            Read.All(v => v.Unreadable is null),
            [.. Read.Where(v => v.Unreadable is not null).Select(v => $"{v.Path}: {v.Unreadable}")]
        );
    }

    private void Require(bool isSound, IReadOnlyList<string> faults)
    {
        if (!isSound)
            throw new JobRefusedException(string.Join('\n', faults.Select(Shown)));
    }

    public void Dispose() => _folder.Dispose();
}
