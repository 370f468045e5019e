using ExamDocs.Register.Storage;
using Npgsql;

namespace ExamDocs.Register.Work;

/// <summary>
/// A word that sessions of one database send one another, so that whoever waits need not ask again and again. What is told may be
/// missed: whoever waits looks again now and then.
/// </summary>
/// <param name="server">Where it is told.</param>
/// <param name="name">The word; letters and underscores.</param>
internal sealed class ServerChannel(NpgsqlConnection server, string name)
{
    private volatile bool _told;

    public void Listen()
    {
        server.Notification += (_, told) => _told |= string.Equals(told.Channel, name, StringComparison.Ordinal);
        server.Execute($"LISTEN {name}");
    }

    /// <summary>Call it before looking: what is told from now on ends the next wait.</summary>
    public void Forget() => _told = false;

    public void Tell() => server.Execute($"NOTIFY {name}");

    /// <summary>Waits until it is told, or the time is over.</summary>
    public async Task WaitAsync(TimeSpan longest, CancellationToken cancellation)
    {
        if (!_told)
        {
            server.MustBeOpen();
            await server.WaitAsync(longest, cancellation);
        }
    }
}
