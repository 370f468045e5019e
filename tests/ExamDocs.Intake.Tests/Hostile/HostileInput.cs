using System.Text;

namespace ExamDocs.Intake.Tests.Hostile;

/// <summary>An input made to do harm, or spoilt on the way, and what must be said of it.</summary>
/// <param name="Name">What it is, as a sentence's beginning.</param>
/// <param name="File">Name of the file or folder; its ending tells how it is read.</param>
/// <param name="Make">Writes it to a path.</param>
/// <param name="Says">Part of the sentence with which it is refused, or the code of a finding; "read" where it must be read whole.</param>
internal sealed record HostileInput(string Name, string File, Action<string> Make, string Says)
{
    /// <summary>What is read whole, though it looks like harm.</summary>
    public const string Read = "read";

    /// <summary>
    /// Part of the sentence with which it is refused before it is decided, though it can be read; null where it is decided.
    /// </summary>
    public string? Undecided { get; init; }

    public bool IsCode => Says.Length == 6 && Says.All(c => char.IsAsciiLetterUpper(c) || char.IsAsciiDigit(c));

    public static HostileInput Of(string name, string file, byte[] bytes, string says) =>
        new(name, file, path => System.IO.File.WriteAllBytes(path, bytes), says);

    public static HostileInput Of(string name, string file, Func<byte[]> bytes, string says) =>
        new(name, file, path => System.IO.File.WriteAllBytes(path, bytes()), says);

    /// <summary>A text too long to be held, written piece by piece.</summary>
    public static HostileInput Streamed(string name, string file, IEnumerable<string> pieces, string says) =>
        new(
            name,
            file,
            path =>
            {
                using var writer = new StreamWriter(path, append: false, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), 1 << 16);
                foreach (var piece in pieces)
                    writer.Write(piece);
            },
            says
        );

    public override string ToString() => Name;
}
