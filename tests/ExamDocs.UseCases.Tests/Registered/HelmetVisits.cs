using System.Text.Json.Nodes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>Versions of a visit with two helmets, and a register that they are issued into.</summary>
internal sealed class HelmetVisits : IDisposable
{
    public const string One = "HEL-01",
        Two = "HEL-02",
        Connector = "CON-07";

    private readonly Workspace _workspace = new();
    private int _files;

    public string Register => _workspace.Register;

    public string Out => _workspace.Out;

    public string Folder => _workspace.Folder;

    /// <param name="items">The items besides the two helmets.</param>
    public static JsonObject Visit(params string[] items) => Workspace.Example().Only([One, Two, .. items]);

    /// <summary>The same visit with another value of an item.</summary>
    public static JsonObject With(string item, string member, string value, params string[] items)
    {
        var record = Visit(items);
        record.Item(item)[member] = value;
        return record;
    }

    public static JsonObject SerialOfTwo(params string[] items) => With(Two, "serial", "BM-90151", items);

    public Task<IssueResult> IssueAsync(JsonObject record, Func<IssueRequest, IssueRequest>? with = null)
    {
        var request = _workspace.Request(_workspace.Write(record, FormattableString.Invariant($"visit-{++_files}.json"))) with
        {
            Today = new LocalDate(2026, 5, 12).PlusDays(_files),
        };
        return IssueDocuments.RunAsync(with is null ? request : with(request), TestContext.Current.CancellationToken);
    }

    public static IssueRequest PerItem(IssueRequest request) => request with { PerItem = true };

    public static IssueRequest Reports(IssueRequest request) => request with { Only = ["report"] };

    public static IssueRequest ReportsPerItem(IssueRequest request) => PerItem(Reports(request));

    public string TextOf(Issued issued) => Pdf.Squeeze(Pdf.Text(_workspace.FileOf(issued)));

    public DocumentStatus Find(string number)
    {
        using var register = DocumentRegister.OpenToRead(Register);
        return register.Find(number)!;
    }

    /// <summary>Numbers of what is current, of one kind where it is named.</summary>
    public IReadOnlyList<string> Current(string? kind = null)
    {
        using var register = DocumentRegister.OpenToRead(Register);
        return [.. register.Documents().Where(d => d.IsCurrent && (kind is null || d.Kind == kind)).Select(d => d.Number)];
    }

    public void IsSound()
    {
        using var register = DocumentRegister.Open(Register);
        Assert.Empty(register.Check());
    }

    public void Dispose() => _workspace.Dispose();
}
