using System.Data.Common;
using System.Globalization;
using System.Security.Cryptography;
using NodaTime;
using Npgsql;

namespace ExamDocs.Register.Storage;

/// <summary>A register on a PostgreSQL server, in a schema of its own, for a firm with many examiners.</summary>
internal sealed class PostgresRegister : RegisterDatabase
{
    private const string Schema = "examdocs";

    /// <summary>Taken while tables are made, so that two first runs do not both make them; any fixed number will do.</summary>
    private const long MakingTables = 0x4578446F_63730001;

    private const string NoPermission = "42501";

    private PostgresRegister(NpgsqlConnection connection, string place) : base(connection) => Place = place;

    public override string Place { get; }

    public static bool IsFor(string place) =>
        place.StartsWith("postgres://", StringComparison.OrdinalIgnoreCase) || place.StartsWith("postgresql://", StringComparison.OrdinalIgnoreCase);

    /// <exception cref="RegisterRefusedException">The address is wrong, or the register is of a later version.</exception>
    /// <exception cref="DbException">The server cannot be reached, or refuses.</exception>
    public static PostgresRegister Open(string address, LocalDate today)
    {
        var settings = SettingsOf(address);
        var connection = new NpgsqlConnection(settings.ToString());
        try
        {
            connection.Open();
            var register = new PostgresRegister(connection, $"postgres://{settings.Host}/{settings.Database}");
            register.Prepare(today);
            return register;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>A lock of the session's: the server lets go of it as soon as the connection is gone.</summary>
    public override RunHold Hold()
    {
        var key = BitConverter.ToInt64(RandomNumberGenerator.GetBytes(sizeof(long)));
        Connection.Number("SELECT 1 FROM pg_advisory_lock($1)", key);
        return new RunHold(key.ToString(CultureInfo.InvariantCulture), static () => { });
    }

    public override bool HasEnded(string run)
    {
        // A run on a file has no number; it cannot be running here.
        if (!long.TryParse(run, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var key))
            return true;
        if (Connection.Number("SELECT CASE WHEN pg_try_advisory_lock($1) THEN 1 ELSE 0 END", key) == 0)
            return false;
        Connection.Number("SELECT CASE WHEN pg_advisory_unlock($1) THEN 1 ELSE 0 END", key);
        return true;
    }

    /// <summary>The server guards its own pages and references; a register has nothing to add.</summary>
    public override IEnumerable<string> Damage() => [];

    /// <summary>Whoever writes holds the one row of the register: entries of the log must come one after the other.</summary>
    public override DbTransaction BeginWriting()
    {
        var transaction = Connection.BeginTransaction();
        Connection.Number("SELECT single FROM register WHERE single = 1 FOR UPDATE");
        return transaction;
    }

    /// <exception cref="RegisterRefusedException">It is no address of a database.</exception>
    private static NpgsqlConnectionStringBuilder SettingsOf(string address)
    {
        if (!Uri.TryCreate(address, UriKind.Absolute, out var uri) || uri.Host.Length == 0 || uri.AbsolutePath.Length < 2)
            throw new RegisterRefusedException("A shared register is named like postgres://user@server/database.");
        var user = uri.UserInfo.Split(':', 2);
        var settings = new NpgsqlConnectionStringBuilder
        {
            Host = uri.Host, Database = Uri.UnescapeDataString(uri.AbsolutePath[1..]), SearchPath = Schema, ApplicationName = "examdocs", Pooling = false, CommandTimeout = 120,
        };
        if (uri.Port > 0)
            settings.Port = uri.Port;
        if (user[0].Length > 0)
            settings.Username = Uri.UnescapeDataString(user[0]);
        if (user.Length > 1)
            settings.Password = Uri.UnescapeDataString(user[1]);
        foreach (var setting in uri.Query.TrimStart('?').Split('&', StringSplitOptions.RemoveEmptyEntries).Select(s => s.Split('=', 2)))
            Set(settings, setting[0], Uri.UnescapeDataString(setting[^1]));
        return settings;
    }

    private static void Set(NpgsqlConnectionStringBuilder settings, string name, string value)
    {
        try
        {
            settings[string.Equals(name, "sslmode", StringComparison.OrdinalIgnoreCase) ? "SSL Mode" : name] = value;
        }
        catch (Exception wrong) when (wrong is ArgumentException or KeyNotFoundException or NotSupportedException)
        {
            throw new RegisterRefusedException($"There is no setting '{name}' with the value '{value}' for a shared register.", wrong);
        }
    }

    private void Prepare(LocalDate today)
    {
        using var transaction = Connection.BeginTransaction();
        Connection.Number("SELECT 1 FROM pg_advisory_xact_lock($1)", MakingTables);
        if (Connection.Number("SELECT count(*) FROM information_schema.tables WHERE table_schema = $1 AND table_name = 'register'", Schema) == 0)
            Create(today);
        else if (Connection.Number("SELECT layout FROM register") is var version && version > Layout.Version)
            throw RegisterRefusedException.FromTheFuture(Place, version);
        transaction.Commit();
    }

    private void Create(LocalDate today)
    {
        try
        {
            Connection.Execute($"CREATE SCHEMA IF NOT EXISTS {Schema}");
        }
        catch (PostgresException refused) when (string.Equals(refused.SqlState, NoPermission, StringComparison.Ordinal))
        {
            throw new RegisterRefusedException($"There is no register at {Place} yet, and this user may make none. Have the schema {Schema} made by whoever keeps the server.", refused);
        }
        Connection.Execute(Written(Layout.First));
        Connection.Execute(Written(Layout.Second));
        Migration.ToSecond(Connection, today);
        Connection.Execute(
            """
            CREATE FUNCTION refuse() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION '%', TG_ARGV[0]; END $$;
            CREATE FUNCTION is_issued(wanted TEXT) RETURNS boolean LANGUAGE sql STABLE AS $$ SELECT state = 'issued' FROM document WHERE number = wanted $$;
            """);
        foreach (var guard in Layout.Guards)
        {
            // A condition may hold no question here, but it may call a function that asks.
            var when = guard.When.Replace("(SELECT state FROM document WHERE number = OLD.number) = 'issued'", "is_issued(OLD.number)", StringComparison.Ordinal);
            Connection.Execute($"CREATE TRIGGER {guard.Name} BEFORE {guard.Event} ON {guard.Table} FOR EACH ROW WHEN ({when}) EXECUTE FUNCTION refuse('{guard.Words}')");
        }
    }

    private static string Written(string layout) =>
        layout.Replace("{strict}", "", StringComparison.Ordinal).Replace("{blob}", "BYTEA", StringComparison.Ordinal);
}
