namespace ExamDocs.Register.Model;

/// <summary>Another run is issuing the very same document.</summary>
public sealed class DocumentInProgressException : IOException
{
    public DocumentInProgressException(string kind)
        : base($"Another run is issuing the same {kind}. Wait for it to end, then run again.") { }
}

/// <summary>While a run was issuing, another one stored a later version of the record.</summary>
public sealed class OvertakenException : IOException
{
    internal OvertakenException(string reference)
        : base($"a later version of {reference} was recorded meanwhile, and holds now: {IssueThatOne}") { }

    /// <summary>Ends the sentence: to run the command again would bring the older version back.</summary>
    public const string IssueThatOne = "issue that one";
}

/// <summary>The file is not a register, or one that this version cannot read.</summary>
public sealed class RegisterRefusedException : IOException
{
    public RegisterRefusedException(string message, Exception? inner = null)
        : base(message, inner) { }

    /// <param name="place">Where it is.</param>
    /// <param name="layout">The layout that it has.</param>
    /// <param name="known">The last layout that this version knows.</param>
    internal static RegisterRefusedException FromTheFuture(string place, long layout, int known) =>
        new(
            FormattableString.Invariant(
                $"The register {place} was written by a later version (layout {layout}; this one knows {known}). Use that version."
            )
        );
}

/// <summary>A row of the register holds what the program never writes there.</summary>
public sealed class RegisterDamagedException : IOException
{
    internal RegisterDamagedException(string table, Exception inner)
        : base(
            $"The register was damaged or altered: a row of {table} cannot be read. examdocs register check says more; restore a backup.",
            inner
        ) => Table = table;

    /// <summary>The table that it is in.</summary>
    public string Table { get; }
}

/// <summary>What is stored is not what the log has: nothing may be decided or printed from it.</summary>
public sealed class RegisterAlteredException : IOException
{
    /// <param name="what">What is not as it was, for example visit 3 (V-2026-031 of 2026-05-11).</param>
    /// <param name="how">In a sentence.</param>
    public RegisterAlteredException(string what, string how)
        : base(
            $"The register was altered or damaged: {OneLine(what)} is no longer as it was recorded. Issue nothing from it. "
                + $"Run examdocs register check, and restore the register from the backup. {OneLine(how)}"
        ) { }

    // Only the first line of a message is shown, and what is typed may have several.
    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}

/// <summary>The place where documents are kept outside the register cannot be reached, or refuses. No message holds a key.</summary>
public sealed class ContentStoreException : IOException
{
    public ContentStoreException(string message, Exception? inner = null)
        : base(message, inner)
    {
        // By it a full disk is told from other failures.
        if (inner is not null)
            HResult = inner.HResult;
    }
}

/// <summary>A different file is where a document would go. It was left alone.</summary>
public sealed class DocumentFileConflictException : IOException
{
    public DocumentFileConflictException(string path)
        : base($"A different file is already at {path}. It was left as it is.") => Path = path;

    /// <summary>Full path of that file.</summary>
    public string Path { get; }
}
