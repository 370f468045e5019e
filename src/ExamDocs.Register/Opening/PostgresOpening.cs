using System.Data.Common;
using System.Net.Sockets;
using System.Security.Authentication;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using NodaTime;
using Npgsql;

namespace ExamDocs.Register.Opening;

/// <summary>Opens a register on a PostgreSQL server.</summary>
internal static class PostgresOpening
{
    /// <exception cref="RegisterRefusedException">The address is wrong, or the register is of a later version.</exception>
    /// <exception cref="IOException">There is no such server.</exception>
    /// <exception cref="DbException">The server cannot be reached, or refuses.</exception>
    public static PostgresRegister Open(string address, LocalDate today) => Connected(address, register =>
        {
            EndLostSessionsSoon(register.Connection);
            PostgresTables.Prepare(register, today);
        });

    /// <summary>Opens what is there and changes nothing in it.</summary>
    /// <inheritdoc cref="Open"/>
    public static PostgresRegister OpenToRead(string address) => Connected(address, register =>
        {
            register.Connection.Execute("SET default_transaction_read_only = on");
            PostgresTables.Recognise(register);
        });

    /// <summary>A connection beside that of a register which is there and of this version, for what is kept beside it.</summary>
    /// <inheritdoc cref="Open"/>
    public static PostgresRegister OpenForWork(string address) => Connected(address, register =>
        {
            EndLostSessionsSoon(register.Connection);
            if (!PostgresTables.IsThere(register.Connection))
                throw new RegisterRefusedException($"There is no register at {register.Place} yet (docs/shared-register.md).");
            PostgresTables.Recognise(register);
        });

    /// <summary>Whether there is a register in the database.</summary>
    /// <inheritdoc cref="Open"/>
    public static bool IsThere(string address)
    {
        using var register = Connected(address, static _ => { });
        return PostgresTables.IsThere(register.Connection);
    }

    private static PostgresRegister Connected(string address, Action<PostgresRegister> prepare)
    {
        var settings = PostgresAddress.Read(address);
        var connection = new NpgsqlConnection(settings.ToString());
        try
        {
            connection.Open();
            var register = new PostgresRegister(connection, $"postgres://{settings.Host}/{settings.Database}");
            prepare(register);
            return register;
        }
        catch (NpgsqlException refused) when (refused.InnerException is AuthenticationException)
        {
            connection.Dispose();
            throw new RegisterRefusedException(ServerCertificate.WhyRefused(settings.Host!, settings.Port), refused);
        }
        catch (SocketException nowhere)
        {
            connection.Dispose();
            throw new IOException($"The server {settings.Host} of the register cannot be reached: {nowhere.Message}.", nowhere);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>
    /// Has the server end this session within two minutes where its machine is gone or asleep; others would wait for what it holds.
    /// </summary>
    private static void EndLostSessionsSoon(DbConnection connection) =>
        connection.Execute(
            "SET tcp_keepalives_idle = 30; SET tcp_keepalives_interval = 10; SET tcp_keepalives_count = 6; SET "
                + "idle_in_transaction_session_timeout = '100s'"
        );
}
