using ExamDocs.Documents.Browsing;
using ExamDocs.UseCases.Tests.Issuing;

[assembly: AssemblyFixture(typeof(OpenBrowser))]

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>One browser for all tests that print, started when the first asks for it: starting one takes longer than a page.</summary>
public sealed class OpenBrowser : IAsyncDisposable
{
    private static readonly Lazy<Browser> Started = new(() => Task.Run(() => Browser.StartAsync()).GetAwaiter().GetResult());

    public static Browser Instance => Started.Value;

    public async ValueTask DisposeAsync()
    {
        if (Started.IsValueCreated)
            await Started.Value.DisposeAsync();
    }
}
