namespace ExamDocs.Register;

/// <summary>Another run has the register open.</summary>
public sealed class RegisterInUseException : IOException
{
    public RegisterInUseException(string path, Exception inner)
        : base($"The register {path} is in use by another run. Wait for it to end, then run again.", inner)
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
}

/// <summary>A different file stands where a document would go. It was left alone.</summary>
public sealed class DocumentFileConflictException : IOException
{
    public DocumentFileConflictException(string path)
        : base($"A different file is already at {path}. It was left as it is.") => Path = path;

    /// <summary>Full path of the file that stands in the way.</summary>
    public string Path { get; }
}
