using System.Data.Common;
using System.Text.RegularExpressions;
using ExamDocs.Cli.Tests;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using ExamDocs.Register.Tests;
using Npgsql;

namespace ExamDocs.SharedRegister.Tests;

/// <content>The roles, and what they do.</content>
public sealed partial class RoleTests
{
    private void DoEverything(DocumentRegister register)
    {
        register.Recover();
        register.Visits.Remember(SampleVisit.Of("V-2026-031"));
        Issue(register, "a");
        register.Publish(
            register.Take(new('R', 2026, "report", "b", ["HB-014"], Out) { Replaces = [new("R-2026-000001", "a correction")], Visit = 1 }),
            Pdf("b"),
            1,
            "{}"
        );
        register.Void(Take(register, "c"), "the page could not be printed");
        Assert.True(register.Withdraw("R-2026-000002", "sent to the wrong yard"));
        Assert.Empty(register.Check());
    }

    /// <summary>Roles are the server's, not the database's: each test has its own.</summary>
    private string Role(string name, string more)
    {
        var role = $"{name}_{DatabaseName}";
        OnTheServer($"CREATE ROLE {role} LOGIN PASSWORD '{Server.Password}' {more}");
        return role;
    }

    /// <summary>The statements of a page, word for word; the role is made where it is not there.</summary>
    /// <param name="name">The page.</param>
    /// <param name="first">What the first of them begins with.</param>
    internal static string GrantsOf(string name, string first = "")
    {
        var page = File.ReadAllText(Path.Combine(RepositoryRoot(), "docs", name));
        const string fence = "```sql\n";
        var start = page.IndexOf(fence + first, StringComparison.Ordinal) + fence.Length;
        // Roles are the server's: another test may have made this one.
        return CreateRole()
            .Replace(
                page[start..page.IndexOf("```", start, StringComparison.Ordinal)],
                "DO $$$$ BEGIN $0 EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; END $$$$;"
            );
    }

    [GeneratedRegex(@"^CREATE ROLE \w+ NOLOGIN;", RegexOptions.Multiline | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex CreateRole();

    private static string RepositoryRoot() => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Cli.Tests.Records.ExampleJson)!, ".."));
}
