using ExamDocs.Register.Storage;
using Npgsql;

namespace ExamDocs.Register.Work;

/// <summary>
/// Sessions of one database wake each other by a word. A message may be missed, so whoever waits also looks from time to time.
/// </summary>
/// <param name="server">The session that sends and listens.</param>
/// <param name="name">The word; letters and underscores.</param>
internal sealed class ServerChannel(NpgsqlConnection server, string name)
{
    private volatile bool _told;

    public void Listen()
    {
        server.Notification += (_, told) => _told |= string.Equals(told.Channel, name, StringComparison.Ordinal);
        server.Execute($"LISTEN {name}");
    }

    /// <summary>Call this before looking for work: a message that comes afterwards ends the next wait.</summary>
    public void Forget() => _told = false;

    public void Tell() => server.Execute($"NOTIFY {name}");

    /// <summary>Waits for a message, or until the time is over.</summary>
    public async Task WaitAsync(TimeSpan longest, CancellationToken cancellation)
    {
        if (!_told)
        {
            server.MustBeOpen();
            await server.WaitAsync(longest, cancellation);
        }
    }
}
