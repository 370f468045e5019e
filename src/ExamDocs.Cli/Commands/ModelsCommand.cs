using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs models</c>: which makers' limits are on record, and where they come from.</summary>
internal static class ModelsCommand
{
    private static readonly Option<bool> Json = new("--json") { Description = "Print as JSON, every value spelt out." };

    public static Command Create()
    {
        var command = new Command(
            "models",
            "Lists the models on record with their makers' limits and the document they come from; blank --known fills them in."
        )
        {
            Json,
        };
        command.SetAction((parsed, _) => RunGuard.RunAsync(() => Task.FromResult(Run(parsed))));
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        if (RegisterCommand.Existing(parsed) is not { } register)
            return ExitCode.Refused;
        var models = ListModels.In(register.Place, CommonOptions.Today());
        var output = parsed.InvocationConfiguration.Output;
        if (parsed.GetValue(Json))
        {
            output.WriteLine(JsonSerializer.Serialize(models, RuleJson.Options));
            return ExitOf(models);
        }
        foreach (var model in models)
            output.WriteLine(Line(model));
        if (models.Count == 0)
            output.WriteLine("No model is on record yet: the first visit that is issued or imported brings them.");
        return ExitOf(models);
    }

    private static int ExitOf(IReadOnlyList<ListedModel> models) => models.Any(m => m.IsDisputed) ? ExitCode.Findings : ExitCode.Done;

    private static string Line(ListedModel model)
    {
        var (limits, source) = (model.Limits, model.Limits.Source);
        var part = limits.PartNumber is null ? "" : $", part {limits.PartNumber}";
        var document = source?.Title is null
            ? "no document recorded"
            : string.Join(", ", new[] { source.Title, Named("revision", source.Revision), Named("page", source.Page) }.OfType<string>());
        var used = model.LastUsed is { } day ? string.Create(CultureInfo.InvariantCulture, $"; last used {day:uuuu'-'MM'-'dd}") : "";
        var disputed = model.IsDisputed
            ? "\n  Records give different values under this revision: look the document up. Until one revision has one set of values, "
                + "blank --known leaves the model out."
            : "";
        return $"{limits.Maker} {limits.Model}{part}: {Values(limits)} ({document}{used}){disputed}";
    }

    private static string Values(MakersLimits limits)
    {
        List<string> said =
        [
            .. limits.NoLimit ? new[] { "no time limit" } : [],
            .. Of(limits.MaxUseYears, "years of use"),
            .. Of(limits.MaxAgeYears, "years from manufacture"),
            .. Of(limits.MaxStorageYears, "years stored"),
            .. Of(limits.MaxCleanings, "cleanings"),
            .. Of(limits.IntervalMonths, "months between examinations"),
        ];
        return said.Count == 0 ? "no limit recorded" : string.Join(", ", said);
    }

    private static string? Named(string what, string? value) => value is null ? null : $"{what} {value}";

    private static string[] Of(int? value, string unit) =>
        value is { } number ? [string.Create(CultureInfo.InvariantCulture, $"{number} {unit}")] : [];
}
