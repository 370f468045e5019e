using System.Runtime.InteropServices;

namespace ExamDocs.Intake.Photos;

/// <summary>Bytes that stay where they are, so that the image library can read and write them.</summary>
internal sealed class PinnedBytes(byte[] bytes) : IDisposable
{
    private GCHandle _pin = GCHandle.Alloc(bytes, GCHandleType.Pinned);

    public byte[] Bytes => bytes;

    public nint Address => _pin.AddrOfPinnedObject();

    public void Dispose() => _pin.Free();
}
