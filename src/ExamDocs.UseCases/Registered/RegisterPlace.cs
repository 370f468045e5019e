using ExamDocs.Core.Findings;
using ExamDocs.Register;

namespace ExamDocs.UseCases.Registered;

/// <summary>The register that a command works with, and what named it.</summary>
/// <param name="Place">A file, or the address of a shared one.</param>
/// <param name="NamedBy">What named it, for example --register; null for the usual one, which is made where it is missing.</param>
public sealed record RegisterPlace(string Place, string? NamedBy)
{
    /// <summary>Name of the usual register's file.</summary>
    public const string FileName = "examdocs.db";

    /// <param name="option">What the command line names; null for nothing.</param>
    /// <param name="variable">Name and value of the environment variable; a null value where it is not set.</param>
    /// <exception cref="IOException">Nothing is named, and this machine knows no folder for the user's own data.</exception>
    public static RegisterPlace Of(string? option, (string Name, string? Value) variable) =>
        option is not null ? new(option, "--register")
        : variable.Value is { Length: > 0 } named ? new(named, variable.Name)
        : new(Usual(), null);

    /// <summary>True where the register exists; for a shared one the server is asked.</summary>
    public bool Exists => DocumentRegister.Exists(Place);

    /// <summary>A sentence where a named register does not exist; else null. Only the usual one is made without being asked for.</summary>
    public Message? Objection => NamedBy is not null && !Exists ? Missing : null;

    /// <summary>What to say where it does not exist.</summary>
    public Message Missing =>
        NamedBy is null
            ? (Message)$"there is no register yet: {Place} is made by the first issue or import. Name another with --register"
            : $"there is no register at {Shown}, which {NamedBy} names. Name one that is there, or make it: examdocs register "
                + $"create --register {Shown}";

    /// <summary>What to say once the usual register was made without being asked for.</summary>
    public Message Made =>
        $"A register was made at {Place}: numbering starts there. To use one kept elsewhere, name it with --register; or join it with "
        + $"examdocs register merge.";

    /// <summary>The place as messages show it, without a password.</summary>
    public string Shown =>
        Uri.TryCreate(Place, UriKind.Absolute, out var uri) && uri.UserInfo.Contains(':', StringComparison.Ordinal)
            ? Place.Replace($"{uri.UserInfo}@", $"{uri.UserInfo.Split(':')[0]}@", StringComparison.Ordinal)
            : Place;

    /// <summary>Makes the folder of the usual register, so that the register can be made in it.</summary>
    public void MakeFolder()
    {
        if (NamedBy is null)
            Directory.CreateDirectory(Path.GetDirectoryName(Place)!);
    }

    /// <summary>One sentence for each register in these folders that is not the one in use.</summary>
    /// <param name="folders">The folders that the command works in.</param>
    public IEnumerable<Message> UnusedRegisters(params IEnumerable<string> folders) =>
        from file in folders.Select(f => Path.GetFullPath(Path.Combine(f, FileName))).Distinct(StringComparer.Ordinal)
        where File.Exists(file) && !IsThis(file)
        select (Message)(
            $"{file} is not the register in use, which is {Shown}. To use it, name it with --register; or join it: "
            + $"examdocs register merge {file}"
        );

    private bool IsThis(string file)
    {
        if (Place.Contains("://", StringComparison.Ordinal))
            return false;
        var (one, other) = (new FileInfo(Path.GetFullPath(Place)), new FileInfo(file));
        return string.Equals(
            Target(one),
            Target(other),
            OperatingSystem.IsWindows() ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal
        );
    }

    private static string Target(FileInfo file) =>
        file.LinkTarget is null ? file.FullName : file.ResolveLinkTarget(returnFinalTarget: true)!.FullName;

    private static string Usual() => Path.Combine(DataFolder, FileName);

    /// <summary>
    /// The program's folder in the user's own data: XDG_DATA_HOME or ~/.local/share on Linux, the local application data elsewhere.
    /// </summary>
    /// <exception cref="IOException">This machine knows no such folder.</exception>
    public static string DataFolder =>
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify)
            is { Length: > 0 } data
            ? Path.Combine(data, "examdocs")
            : throw new IOException("no folder for your own data is known on this machine; name a register with --register");
}
