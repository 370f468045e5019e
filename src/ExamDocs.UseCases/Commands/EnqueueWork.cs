using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Work;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Working;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks workers to issue.</summary>
public sealed record EnqueueRequest
{
    public required IReadOnlyList<string> Inputs { get; init; }

    /// <summary>Address of a register on a server.</summary>
    public required string RegisterPath { get; init; }

    /// <summary>Day of issue, whenever it is printed.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>One of <see cref="ReadPrintStyle.Languages"/>.</summary>
    public required string Language { get; init; }

    public bool PerItem { get; init; }

    /// <summary>Only documents of this kind; null for all that a visit calls for by itself.</summary>
    public string? Only { get; init; }

    /// <summary>Why an earlier version of the record is corrected; null to say only that it was.</summary>
    public string? Reason { get; init; }

    /// <summary>As <see cref="PrintStyleRequest.ReadFromMetres"/>.</summary>
    public decimal? ReadFromMetres { get; init; }

    /// <summary>As <see cref="PrintStyleRequest.SignFactor"/>.</summary>
    public decimal? SignFactor { get; init; }

    /// <summary>Folder of the user's own rules; null for none.</summary>
    public string? RulesFolder { get; init; }

    /// <summary>Null for no letterhead.</summary>
    public string? LetterheadFile { get; init; }
}

/// <summary>What came of it.</summary>
/// <param name="Number">Number of the job; null where it was not put on the list.</param>
/// <param name="Inputs">The inputs as checked here, so that what is wrong is seen at once.</param>
/// <param name="Faults">Why it was not put on the list, a sentence each.</param>
public sealed record EnqueueResult(int? Number, IReadOnlyList<CheckedInput> Inputs, IReadOnlyList<string> Faults);

/// <summary>
/// Puts a job on the list that machines share: the inputs, and whatever else is needed to issue them, go into the database. What is checked
/// here is what travels.
/// </summary>
public static class EnqueueWork
{
    /// <exception cref="RegisterRefusedException">The register is in a file, or has no list of work.</exception>
    /// <exception cref="IOException">A file or the server cannot be reached.</exception>
    public static EnqueueResult Run(EnqueueRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        using var work = SharedWork.Open(request.RegisterPath);
        try
        {
            return Run(request, work);
        }
        catch (JobRefusedException refused)
        {
            return new(null, [], refused.Message.Split('\n'));
        }
    }

    private static EnqueueResult Run(EnqueueRequest request, SharedWork work)
    {
        var files = new GatherFiles();
        var options = Gather(request, files);
        using var inputs = JobInputs.Of(options, files.Files);
        using var register = DocumentRegister.OpenToRead(request.RegisterPath, request.Today);
        var latest = register.Visits.Latest;
        var read = inputs.Read;
        var found = DecideRun.Check(read, register, request.Today, inputs.Rules);
        var references = read.SelectMany(r => Folded.Keys(r.Read.Record!.Visit.Reference));
        var number = work.Enqueue(
            new JobToEnqueue(Title(request, read), options.ToJson(), request.Today)
            {
                References = [.. references.Distinct(StringComparer.Ordinal)],
                KnownUpTo = latest,
                Files = files.Files,
            }
        );
        return new(number, [.. found.Select(i => i with { File = inputs.Shown(i.File) })], []);
    }

    private static JobOptions Gather(EnqueueRequest request, GatherFiles files)
    {
        var rules = request.RulesFolder is { } folder ? ReadRules.From(folder) : new RulesRead(KnownRules.BuiltIn, []);
        if (rules.Rules is null)
            throw new JobRefusedException(string.Join('\n', rules.Faults));
        foreach (var input in request.Inputs)
            files.AddInput(input, rules.Rules);
        return new JobOptions
        {
            Inputs = files.Inputs,
            Language = request.Language,
            PerItem = request.PerItem,
            Only = request.Only,
            Reason = request.Reason,
            ReadFromMetres = request.ReadFromMetres,
            SignFactor = request.SignFactor,
            Rules = request.RulesFolder is { } own ? files.AddRules(own) : null,
            Letterhead = request.LetterheadFile is { } letterhead ? files.AddLetterhead(letterhead) : null,
        };
    }

    /// <summary>The first references and inputs: enough to know it again in the list.</summary>
    private static string Title(EnqueueRequest request, IReadOnlyList<ReadVisits> read)
    {
        const int named = 3;
        var visits = read.Select(r => r.Read.Record!.Visit).Select(v => $"{v.Reference} {v.Employer?.Name}".Trim()).ToList();
        var files = request.Inputs.Select(i => Path.GetFileName(Path.TrimEndingDirectorySeparator(i)));
        var title =
            $"{string.Join("; ", visits.Take(named))}{(visits.Count > named ? $" and {visits.Count - named} more" : "")} "
            + $"({string.Join(", ", files.Take(named))}{(request.Inputs.Count > named ? ", …" : "")})";
        return StorableTitle(title);
    }

    private static string StorableTitle(string title)
    {
        var line = string.Concat(title.ReplaceLineEndings(" ").Where(c => !char.IsControl(c)));
        return line.Length <= 500 ? line : $"{line[..500]}…";
    }
}
