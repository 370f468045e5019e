using System.CommandLine;

namespace ExamDocs.Cli.Commands;

/// <summary>Every command, in the order in which help lists them.</summary>
internal static class CommandIndex
{
    private static readonly (string Name, Func<Command> Create)[] All =
    [
        ("check", CheckCommand.Create),
        ("issue", IssueCommand.Create),
        ("label", LabelCommand.Create),
        ("blank", BlankCommand.Create),
        ("adopt", AdoptCommand.Create),
        ("verify", VerifyCommand.Create),
        ("find", FindCommand.Create),
        ("due", DueCommand.Create),
        ("recall", RecallCommand.Create),
        ("spares", SparesCommand.Create),
        ("teach", TeachCommand.Create),
        ("pack", PackCommand.Create),
        ("work", WorkCommand.Create),
        ("register", RegisterCommand.Create),
        ("models", ModelsCommand.Create),
        ("criteria", CriteriaCommand.Create),
        ("rules", RulesCommand.Create),
        ("workbench", WorkbenchCommand.Create),
    ];

    /// <summary>
    /// The commands that the words may mean. Where the first word is a command, only that one is made: making one reads what its help
    /// lists, such as the stocks of labels.
    /// </summary>
    public static IEnumerable<Command> For(IReadOnlyList<string> words)
    {
        var named = Array.Find(All, c => words.Count > 0 && string.Equals(c.Name, words[0], StringComparison.Ordinal));
        return (named.Create is null ? All : [named]).Select(c => c.Create());
    }

    internal static IEnumerable<string> Names => All.Select(c => c.Name);
}
