using System.Security.Cryptography;
using System.Text;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.Register.Contents;

/// <summary>
/// A place outside the register for the bytes of documents, each under the SHA-256 of its bytes. What is there is written once and never
/// changed; whoever reads it compares it with that name.
/// </summary>
internal abstract class ContentStore(ContentAddress address)
{
    /// <summary>Name of what says what the place is; writing it shows that it can be written.</summary>
    internal const string Marker = "examdocs-documents.txt";

    /// <summary>Its address, without any key.</summary>
    public string Place { get; } = address.Text;

    /// <summary>Makes a place ready that is to be used from now on, and shows that it can be written.</summary>
    /// <param name="register">Identity of the register: what one has here, another must not drop.</param>
    /// <exception cref="ContentStoreException">It cannot be reached or written, or is another register's.</exception>
    public abstract void Prepare(string register);

    /// <summary>Whether it can keep what is written from being deleted until a day.</summary>
    /// <exception cref="ContentStoreException">It cannot be reached.</exception>
    public virtual bool Locks => false;

    /// <summary>Writes bytes under their hash; they are durable when this returns. What is there already is compared.</summary>
    /// <param name="sha256">Of the bytes.</param>
    /// <param name="bytes">The whole document.</param>
    /// <param name="keepUntil">The last day on which nobody may delete them, where the store can do that; null for none.</param>
    /// <exception cref="ContentStoreException">It cannot be reached or written, or other bytes are there; nothing is changed.</exception>
    public abstract void Put(string sha256, byte[] bytes, LocalDate? keepUntil);

    /// <summary>What is there under a hash; not compared with it yet.</summary>
    /// <returns>Null where nothing is.</returns>
    /// <exception cref="ContentStoreException">It cannot be reached or read.</exception>
    public abstract byte[]? Find(string sha256);

    /// <summary>Deletes what is there under a hash, if anything.</summary>
    /// <exception cref="ContentStoreException">It cannot be reached, or refuses.</exception>
    public abstract void Delete(string sha256);

    /// <summary>Whether the bytes of a hash are there, compared.</summary>
    /// <exception cref="ContentStoreException">It cannot be reached or read, or other bytes are there.</exception>
    public bool Has(string sha256) => Find(sha256) is { } found && (IsSound(found, sha256) ? true : throw OtherBytes(sha256));

    protected static byte[] MarkerOf(string register) =>
        Encoding.UTF8.GetBytes(
            $"Documents of the ExamDocs register {register}, each under the SHA-256 of its bytes. Change, add and delete nothing here.\n"
        );

    protected ContentStoreException OfAnother() =>
        new($"{Place} has the documents of another register, as {Marker} there says. Name another folder, or another prefix.");

    /// <summary>
    /// Whether another address leads to the same place, by whatever name or link: what is written here for a moment is found there.
    /// </summary>
    /// <exception cref="ContentStoreException">One of them cannot be reached.</exception>
    public bool IsSameAs(ContentStore other)
    {
        var sign = RandomNumberGenerator.GetBytes(32);
        var name = Sha256Hex.Of(sign);
        Put(name, sign, null);
        try
        {
            return other.Find(name) is not null;
        }
        finally
        {
            TryDelete(name);
        }
    }

    /// <summary>Where it may write and not delete, a few bytes stay that nobody refers to.</summary>
    private void TryDelete(string name)
    {
        try
        {
            Delete(name);
        }
        catch (ContentStoreException)
        {
            // Said above.
        }
    }

    public static bool IsSound(byte[] bytes, string sha256) => string.Equals(Sha256Hex.Of(bytes), sha256, StringComparison.Ordinal);

    protected ContentStoreException OtherBytes(string sha256) =>
        new($"Other bytes are at {Place} under {sha256} already. Move them away, look how they came there, and run the command again.");
}
