using System.Data.Common;
using ExamDocs.Documents.Browsing;
using ExamDocs.Register;
using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Issuing;

/// <summary>A failure of disk, browser or register, as against a mistake in the program.</summary>
public static class RunFailure
{
    /// <summary>Ends a sentence that says what to do first.</summary>
    public const string GoOn = "run the command again to go on";

    /// <summary>Ends a sentence after which the command must not be run again as it is.</summary>
    public const string IssueThatOne = OvertakenException.IssueThatOne;

    /// <summary>The user stopped the run.</summary>
    public const string ByUser = "stopped by the user";

    /// <summary>ENOSPC of POSIX, and ERROR_DISK_FULL of Windows as a result code.</summary>
    private static readonly int[] NoSpaceLeft = [28, unchecked((int)0x80070070)];

    public static bool Is(Exception failure) =>
        failure is PrintException or IOException or UnauthorizedAccessException or InvalidDataException or DbException;

    /// <summary>What happened, and what to do about it, in one line.</summary>
    public static string Sentence(Exception failure) =>
        failure switch
        {
            _ when StoreFailure.IsFullDisk(failure) => $"the disk that holds the register is full; make room, then {GoOn}",
            IOException when NoSpaceLeft.Contains(failure.HResult) => $"{FirstLine(failure)}; make room, then {GoOn}",
            _ => FirstLine(failure),
        };

    // A server adds lines about its own statements.
    private static string FirstLine(Exception failure) => failure.Message.Split('\n')[0].TrimEnd();
}
