using ExamDocs.Register.Model;

namespace ExamDocs.Register.Contents;

/// <summary>Where the bytes of documents are kept: the register itself, a folder, or a bucket.</summary>
/// <param name="Text">As the register remembers it: a full path, no key.</param>
internal sealed record ContentAddress(string Text)
{
    /// <summary>The register itself.</summary>
    public const string Database = "database";

    private const string FolderStart = "folder:";
    private const string BucketStart = "s3://";

    private static readonly string[] BucketSettings = ["endpoint", "region", "profile", "lock"];

    public bool IsDatabase => string.Equals(Text, Database, StringComparison.Ordinal);

    /// <summary>Full path; null where it is no folder.</summary>
    public string? Folder => Text.StartsWith(FolderStart, StringComparison.Ordinal) ? Text[FolderStart.Length..] : null;

    /// <summary>Reads what a user typed; a folder gets its full path.</summary>
    /// <exception cref="RegisterRefusedException">It is no such address; the message repeats none of its values.</exception>
    public static ContentAddress Read(string typed)
    {
        if (string.Equals(typed, Database, StringComparison.OrdinalIgnoreCase))
            return new(Database);
        if (typed.StartsWith(FolderStart, StringComparison.OrdinalIgnoreCase) && typed.Length > FolderStart.Length)
            return new(FolderStart + Path.TrimEndingDirectorySeparator(Path.GetFullPath(typed[FolderStart.Length..])));
        if (typed.StartsWith(BucketStart, StringComparison.OrdinalIgnoreCase))
        {
            var address = new ContentAddress(BucketStart + typed[BucketStart.Length..]);
            _ = address.Bucket();
            return address;
        }
        throw new RegisterRefusedException("Documents are kept at database, folder:PATH or s3://bucket/prefix?endpoint=https://host.");
    }

    /// <summary>The parts of a bucket's address.</summary>
    /// <exception cref="RegisterRefusedException">It is not the address of one.</exception>
    public BucketPlace Bucket()
    {
        if (
            !Uri.TryCreate(Text, UriKind.Absolute, out var uri)
            || uri.Scheme is not "s3"
            || uri.Host.Length == 0
            || uri.UserInfo.Length > 0
            || uri.Fragment.Length > 0
            || !uri.IsDefaultPort
        )
            throw new RegisterRefusedException(
                "A bucket is named like s3://bucket/prefix?endpoint=https://host; its keys are never part of the address."
            );
        var settings = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var setting in uri.Query.TrimStart('?').Split('&', StringSplitOptions.RemoveEmptyEntries).Select(s => s.Split('=', 2)))
        {
            // The value is not repeated: it may be a key under a misspelt name.
            if (!BucketSettings.Contains(setting[0], StringComparer.Ordinal) || setting.Length < 2)
                throw new RegisterRefusedException(
                    $"A bucket's address has no setting '{setting[0]}'. It may have {string.Join(", ", BucketSettings)}; keys come from "
                        + "the environment or the usual files."
                );
            settings[setting[0]] = Uri.UnescapeDataString(setting[1]);
        }
        return new BucketPlace(uri.Host, Uri.UnescapeDataString(uri.AbsolutePath).Trim('/'))
        {
            Endpoint = Endpoint(settings.GetValueOrDefault("endpoint")),
            Region = settings.GetValueOrDefault("region"),
            Profile = settings.GetValueOrDefault("profile"),
            Lock = settings.GetValueOrDefault("lock") switch
            {
                null => null,
                "governance" or "compliance" or "off" => settings["lock"],
                _ => throw new RegisterRefusedException("lock of a bucket's address is governance, compliance or off."),
            },
        };
    }

    private static Uri? Endpoint(string? text) =>
        text is null ? null
        : Uri.TryCreate(text, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https" && uri.UserInfo.Length == 0 ? uri
        : throw new RegisterRefusedException("The endpoint of a bucket's address is like https://host:port, without a user.");
}

/// <summary>A bucket, and the part of it that is ours.</summary>
/// <param name="Name">Of the bucket.</param>
/// <param name="Prefix">What names begin with; empty for none.</param>
internal sealed record BucketPlace(string Name, string Prefix)
{
    /// <summary>Of the service; null for that of the region.</summary>
    public Uri? Endpoint { get; init; }

    public string? Region { get; init; }

    /// <summary>The profile in the usual files that has the keys; null for the environment's keys, else the profile default.</summary>
    public string? Profile { get; init; }

    /// <summary>governance, compliance or off; null to do as the bucket does.</summary>
    public string? Lock { get; init; }
}
