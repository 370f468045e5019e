namespace ExamDocs.Register;

/// <summary>
/// Keeps a second run out while one holds the register. The lock is the operating system's, on a file beside the
/// register, so it goes when its process does, even a killed one; the file itself stays, because deleting it would let two
/// runs lock two different files of that name.
/// </summary>
internal static class RegisterLock
{
    private const int WouldBlockOnLinux = 11;
    private const int WouldBlockOnMac = 35;
    private const int SharingViolationOnWindows = unchecked((int)0x80070020);

    /// <exception cref="RegisterInUseException">Another run holds it.</exception>
    public static FileStream Take(string registerPath)
    {
        try
        {
            return new(registerPath + ".lock", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
        }
        catch (IOException held) when (held.HResult is WouldBlockOnLinux or WouldBlockOnMac or SharingViolationOnWindows)
        {
            throw new RegisterInUseException(registerPath, held);
        }
    }
}
