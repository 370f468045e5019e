using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using NodaTime;

namespace ExamDocs.Register.Opening;

/// <summary>Finds and opens the database of a register: a file, or a schema on a server.</summary>
internal static class RegisterOpening
{
    public static RegisterDatabase Open(string place, LocalDate today) =>
        PostgresAddress.IsOne(place) ? PostgresOpening.Open(place, today) : SqliteOpening.Open(WithoutLink(place), today);

    public static RegisterDatabase OpenToRead(string place, LocalDate today) =>
        PostgresAddress.IsOne(place) ? PostgresOpening.OpenToRead(place) : SqliteOpening.OpenToRead(WithoutLink(place), today);

    public static bool Exists(string place) => PostgresAddress.IsOne(place) ? PostgresOpening.IsThere(place) : File.Exists(place);

    /// <exception cref="FileNotFoundException">There is none.</exception>
    public static void MustExist(string place)
    {
        if (!Exists(place))
            throw new FileNotFoundException($"There is no register at {Named(place)}; register create makes one.");
    }

    /// <summary>Makes the folder of a register that is to be made.</summary>
    /// <exception cref="RegisterRefusedException">There is a register already.</exception>
    public static void MakeRoom(string place)
    {
        if (Exists(place))
            throw new RegisterRefusedException($"There is a register, or another file, at {Named(place)} already; it was left as it is.");
        if (!PostgresAddress.IsOne(place))
            Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(place))!);
    }

    /// <summary>An address may hold a password.</summary>
    private static string Named(string place) => PostgresAddress.IsOne(place) ? "that address" : place;

    /// <summary>Two names of one register are one register.</summary>
    private static string WithoutLink(string place)
    {
        var file = new FileInfo(Path.GetFullPath(place));
        return file.LinkTarget is null ? file.FullName : file.ResolveLinkTarget(returnFinalTarget: true)!.FullName;
    }
}
