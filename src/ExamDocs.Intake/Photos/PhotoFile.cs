using System.Security.Cryptography;

namespace ExamDocs.Intake.Photos;

/// <summary>The bytes of a photo's file, within limits.</summary>
internal static class PhotoFile
{
    /// <param name="path">As <see cref="PhotoPath"/> gives it.</param>
    /// <exception cref="PhotoRefusedException">
    /// It is empty, too large, no ordinary file, another than its name says, or cannot be opened.
    /// </exception>
    public static byte[] Read(string path)
    {
        try
        {
            // A pipe or a device has no length; opening one could wait forever.
            var length = new FileInfo(path).Length;
            RequireLength(length);
            using var stream = File.OpenRead(path);
            var bytes = Read(stream, length);
            NamedBySum.Require(path, bytes);
            return bytes;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new PhotoRefusedException(
                PhotoRules.NotFound,
                $"is there but cannot be opened",
                $"Check whether another program holds the file open, and who may read it."
            );
        }
    }

    /// <exception cref="PhotoRefusedException">It is empty, too large, or cut short.</exception>
    public static byte[] Read(Stream stream, long length)
    {
        RequireLength(length);
        var bytes = new byte[length];
        return stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false) == length ? bytes : throw PhotoRefusedException.Damaged();
    }

    private static void RequireLength(long length)
    {
        if (length == 0)
            throw new PhotoRefusedException(PhotoRules.NotPrintable, $"is empty, or no ordinary file");
        if (length > PhotoLimits.FileBytes)
            throw new PhotoRefusedException(PhotoRules.TooLarge, $"is a file of more than 40 MiB");
    }

    /// <summary>In lower-case hexadecimal digits.</summary>
    public static string Sha256(byte[] file) => Convert.ToHexStringLower(SHA256.HashData(file));
}
