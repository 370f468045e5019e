using System.CommandLine;
using System.CommandLine.Parsing;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Cli;

/// <summary>Options that several commands share, and how they are read.</summary>
internal static class CommonOptions
{
    private const string RegisterVariable = "EXAMDOCS_REGISTER";

    public static readonly Option<string?> Register = new("--register")
    {
        Description =
            "Register: a file, or postgres://user@server/database for one that several examiners share. Default: the "
            + $"environment's {RegisterVariable}, else one in your own data folder (examdocs register where).",
        HelpName = "FILE|URL",
        Recursive = true,
    };

    public static readonly Option<string?> Employer = new("--employer")
    {
        Description = "Whose kit. Default: everybody's.",
        HelpName = "NAME",
    };

    public static readonly Option<string> LanguageTag = new("--language")
    {
        Description = "Language of documents and of the screen. Only the screen takes it from EXAMDOCS_LANGUAGE where it is not given.",
        HelpName = string.Join('|', ReadPrintStyle.Languages),
        DefaultValueFactory = _ => ReadPrintStyle.Languages[0],
        Recursive = true,
    };

    public static readonly Option<bool> Quiet = new("--quiet") { Description = "Say nothing but errors.", Recursive = true };

    /// <summary>For every command whose answer can depend on it.</summary>
    public static readonly Option<DirectoryInfo?> Rules = new("--rules")
    {
        Description =
            "Folder of your own rules, added to those built in: regimes/*.json, categories/*.json, and headings.json for "
            + "what your workbooks call their columns.",
        HelpName = "DIR",
    };

    /// <summary>For the commands that print.</summary>
    public static readonly Option<FileInfo?> Letterhead = new("--letterhead")
    {
        Description = "Your letterhead: a JSON file with name, address, contact, telephone, logo, colour and footer.",
        HelpName = "FILE",
    };

    static CommonOptions() => LanguageTag.AcceptOnlyFromAmong([.. ReadPrintStyle.Languages]);

    /// <summary>The register to work with, there or not.</summary>
    public static RegisterPlace Place(ParseResult parsed) =>
        RegisterPlace.Of(parsed.GetValue(Register), (RegisterVariable, Environment.GetEnvironmentVariable(RegisterVariable)));

    public static string RegisterPath(ParseResult parsed) => Place(parsed).Place;

    /// <summary>The register of a command that may make the usual one: one that was named has to be there.</summary>
    /// <param name="folder">A folder that the command writes to, beside the one it runs in; null for none.</param>
    /// <returns>Null where a register was named and is not there, which is then said.</returns>
    public static RegisterPlace? RegisterToWrite(ParseResult parsed, string? folder = null)
    {
        var place = Place(parsed);
        foreach (var unused in place.UnusedRegisters(new[] { ".", folder }.OfType<string>()))
            parsed.InvocationConfiguration.Error.WriteLine(Screen.Say(unused));
        if (place.Objection is not { } objection)
        {
            place.MakeFolder();
            return place;
        }
        parsed.InvocationConfiguration.Error.WriteLine(Screen.Say(objection));
        return null;
    }

    /// <summary>Says where the usual register was made, where that has happened since.</summary>
    public static void SayWhereMade(ParseResult parsed, RegisterPlace place, bool wasThere)
    {
        if (!wasThere && place.Exists)
            parsed.InvocationConfiguration.Error.WriteLine(Screen.Say(place.Made));
    }

    /// <summary>
    /// The register to read from and never to make: the one named, whether it is there or not, else the usual one where it is there.
    /// </summary>
    /// <returns>Null where none is named and the usual one is not there.</returns>
    public static RegisterPlace? RegisterToRead(ParseResult parsed)
    {
        var place = Place(parsed);
        return place.NamedBy is not null || place.Exists ? place : null;
    }

    /// <summary>
    /// The rules built in, with the user's own where a folder of them is given; null where that is at fault, which is then said.
    /// </summary>
    public static KnownRules? KnownRules(ParseResult parsed)
    {
        if (parsed.GetValue(Rules) is not { } folder)
            return Core.Regimes.KnownRules.BuiltIn;
        var read = ReadRules.From(folder.ToString());
        foreach (var fault in read.Faults)
            parsed.InvocationConfiguration.Error.WriteLine(fault);
        return read.Rules;
    }

    /// <summary>How documents are to be printed, by the options that the command has.</summary>
    /// <returns>Null where the letterhead or the key is at fault, which is then said.</returns>
    public static PrintStyle? PrintStyle(ParseResult parsed)
    {
        var read = ReadPrintStyle.From(
            new PrintStyleRequest
            {
                Language = parsed.GetValue(LanguageTag)!,
                LetterheadFile = parsed.GetValue(Letterhead)?.ToString(),
                Signing = SigningOptions.Of(parsed),
                ReadFromMetres = ReadingOptions.Metres(parsed),
                SignFactor = ReadingOptions.SignFactor(parsed),
            },
            SystemClock.Instance.GetCurrentInstant()
        );
        foreach (var fault in read.Faults)
            parsed.InvocationConfiguration.Error.WriteLine(fault);
        return read.Style;
    }

    /// <summary>Reads the day that an option is given.</summary>
    public static LocalDate? Day(ArgumentResult argument)
    {
        if (LocalDatePattern.Iso.Parse(argument.Tokens[0].Value) is { Success: true, Value: var day })
            return day;
        argument.AddError($"'{argument.Tokens[0].Value}' is no day; write it like 2026-11-30");
        return null;
    }

    /// <summary>
    /// The edge of the program: the one place that asks for today's date. The machine's own clock tells it: a provider of time
    /// zones would read every zone there is first, at each start.
    /// </summary>
    public static LocalDate Today() => LocalDate.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
}
