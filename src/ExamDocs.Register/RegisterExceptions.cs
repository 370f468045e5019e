namespace ExamDocs.Register;

/// <summary>Another run is issuing the very same document.</summary>
public sealed class DocumentInProgressException : IOException
{
    public DocumentInProgressException(string kind)
        : base($"Another run is issuing the same {kind}. Wait for it to end, then run again.")
    {
    }
}

/// <summary>The file is no register, or one that this version cannot read.</summary>
public sealed class RegisterRefusedException : IOException
{
    public RegisterRefusedException(string message, Exception? inner = null)
        : base(message, inner)
    {
    }

    internal static RegisterRefusedException FromTheFuture(string place, long version) => new(FormattableString.Invariant(
        $"The register {place} was written by a later version (layout {version}; this one knows {Storage.Layout.Version}). Use that version."));
}

/// <summary>A different file stands where a document would go. It was left alone.</summary>
public sealed class DocumentFileConflictException : IOException
{
    public DocumentFileConflictException(string path)
        : base($"A different file is already at {path}. It was left as it is.") => Path = path;

    /// <summary>Full path of the file that stands in the way.</summary>
    public string Path { get; }
}
