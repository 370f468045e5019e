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

/// <summary>A row of the register holds what the program never writes there.</summary>
public sealed class RegisterDamagedException : IOException
{
    internal RegisterDamagedException(string table, Exception inner)
        : base($"The register was damaged or altered: a row of {table} cannot be read. examdocs register check says more; restore a backup.", inner) => Table = table;

    /// <summary>The table that it is in.</summary>
    public string Table { get; }
}

/// <summary>A different file stands where a document would go. It was left alone.</summary>
public sealed class DocumentFileConflictException : IOException
{
    public DocumentFileConflictException(string path)
        : base($"A different file is already at {path}. It was left as it is.") => Path = path;

    /// <summary>Full path of the file that stands in the way.</summary>
    public string Path { get; }
}
