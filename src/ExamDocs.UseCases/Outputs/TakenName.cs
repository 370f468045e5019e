using ExamDocs.Register;
using ExamDocs.Register.Files;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Outputs;

/// <summary>What has the name of an output already, and why it may not be replaced.</summary>
internal static class TakenName
{
    public static string IsThere(string file) => $"{file} is there already: name another file, or add --replace";

    /// <returns>One sentence; null where nothing has the name, or an ordinary file that is to be replaced.</returns>
    public static string? Objection(string file, OutputGuard guard)
    {
        if (IsRegisterInUse(file, guard.RegisterPath))
            return $"{file} is the register in use, and no register is ever replaced: name another file";
        // A free name too: the database would take what is written there for its own.
        if (IsBesideRegister(SameFile.RealPath(file), guard.RegisterPath))
            return $"{file} belongs to the register beside it: name another file";
        if (!ExclusiveMove.IsTaken(file))
            return null;
        if (ReadFiles.Of(guard.Inputs).FirstOrDefault(i => SameFile.Is(i.File, file)) is { Named: { } input })
            return string.Equals(input, file, StringComparison.Ordinal)
                ? $"{file} is an input of this run: name another file"
                : $"{file} is an input of this run, {input}, or a copy of it: name another file";
        return Precious(file, guard.RegisterPath)
            ?? (
                !guard.Replace ? IsThere(file)
                : new FileInfo(file).IsReadOnly ? $"{file} is read-only: name another file, or make it one that may be written"
                : null
            );
    }

    private static bool IsBesideRegister(string real, string? register) =>
        RegisterFile.IsBeside(real) || RegisterFile.RegistersOf(real).Any(beside => IsRegisterInUse(beside, register));

    private static bool IsRegisterInUse(string file, string? register) =>
        register is not null
        && !register.Contains("://", StringComparison.Ordinal)
        && string.Equals(SameFile.RealPath(file), SameFile.RealPath(register), StringComparison.Ordinal);

    /// <summary>What no output may ever replace: registers, backups of them, issued documents, and what is kept beside these.</summary>
    private static string? Precious(string file, string? register)
    {
        var real = SameFile.RealPath(file);
        // An empty one is none of these; a pipe has no length, and reading it would wait for ever.
        if (new FileInfo(real) is not { Exists: true, Length: > 0 })
            return null;
        if (RegisterFile.Is(real))
            return IsBackup(real, register)
                ? $"{file} is a backup of the register in use, and no backup is ever replaced: name another file"
                : $"{file} is a register, and no register is ever replaced: name another file";
        if (IsPicture(real))
            return $"{file} is a picture, perhaps a photo or a logo that a record names; no output is one: name another file";
        if (OwnJson.IsKept(real))
            return $"{file} is kept by the program beside its documents: name another file";
        return IssuedPdf.Is(real, register)
            ? $"{file} is an issued document, and no issued document is ever replaced: name another file"
            : null;
    }

    /// <summary>By the first bytes of JPEG (ISO/IEC 10918-1, B.1.1.3) and PNG (W3C PNG, 5.2).</summary>
    private static bool IsPicture(string file)
    {
        Span<byte> first = stackalloc byte[4];
        using var stream = File.OpenRead(file);
        var read = stream.ReadAtLeast(first, first.Length, throwOnEndOfStream: false);
        return first[..read].StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])
            || first[..read].StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47]);
    }

    private static bool IsBackup(string file, string? register) =>
        register is not null
        && !register.Contains("://", StringComparison.Ordinal)
        && File.Exists(register)
        && RegisterFile.IdentityOf(file) is { } identity
        && string.Equals(identity, RegisterFile.IdentityOf(register), StringComparison.Ordinal);
}
