using ExamDocs.Register.Model;
using Npgsql;

namespace ExamDocs.Register.Storage;

/// <summary>What an address like postgres://user@server/database asks for, as settings of the driver.</summary>
internal static class PostgresAddress
{
    public static bool IsOne(string place) =>
        place.StartsWith("postgres://", StringComparison.OrdinalIgnoreCase)
        || place.StartsWith("postgresql://", StringComparison.OrdinalIgnoreCase);

    /// <exception cref="RegisterRefusedException">It is not the address of a database; the message holds no password.</exception>
    public static NpgsqlConnectionStringBuilder Read(string address)
    {
        if (!Uri.TryCreate(address, UriKind.Absolute, out var uri) || uri.Host.Length == 0 || uri.AbsolutePath.Length < 2)
            throw new RegisterRefusedException("A shared register is named like postgres://user@server/database.");
        var user = uri.UserInfo.Split(':', 2);
        var settings = new NpgsqlConnectionStringBuilder
        {
            Host = uri.Host,
            Database = Uri.UnescapeDataString(uri.AbsolutePath[1..]),
            CommandTimeout = 120,
        };
        if (uri.Port > 0)
            settings.Port = uri.Port;
        if (user[0].Length > 0)
            settings.Username = Uri.UnescapeDataString(user[0]);
        if (user.Length > 1)
            settings.Password = Uri.UnescapeDataString(user[1]);
        foreach (var setting in uri.Query.TrimStart('?').Split('&', StringSplitOptions.RemoveEmptyEntries).Select(s => s.Split('=', 2)))
            Set(settings, Uri.UnescapeDataString(setting[0]), Uri.UnescapeDataString(setting[^1]));
        // Others know by its session that a run is alive; a pool would keep the session open after the run.
        (settings.SearchPath, settings.Pooling, settings.ApplicationName) = (PostgresRegister.Schema, false, "examdocs");
        return settings;
    }

    private static void Set(NpgsqlConnectionStringBuilder settings, string name, string value)
    {
        try
        {
            if (string.Equals(name, "sslmode", StringComparison.OrdinalIgnoreCase))
                settings["SSL Mode"] = value.Replace("-", "", StringComparison.Ordinal);
            else
                settings[name] = value;
        }
        catch (Exception wrong)
            when (wrong is ArgumentException or KeyNotFoundException or NotSupportedException or FormatException or InvalidCastException)
        {
            // The value is not repeated: it may be a password under a misspelt name.
            throw new RegisterRefusedException($"A shared register has no setting '{name}', or it cannot have the value given.", wrong);
        }
    }
}
