namespace ExamDocs.Documents.Browsing;

/// <summary>What went wrong with the machinery that prints; never the fault of a record.</summary>
public abstract class PrintException(string message, Exception? inner = null) : Exception(message, inner);

/// <summary>There is no browser to print with.</summary>
public sealed class BrowserMissing(string message) : PrintException(message);

/// <summary>The documents' fonts are neither installed nor within the program: in another font a text may not fit its place.</summary>
public sealed class FontsMissing()
    : PrintException("the fonts of the documents are missing: install Noto Sans (on Debian, fonts-noto-core)");

/// <summary>The browser was found and did not start.</summary>
public sealed class BrowserDidNotStart(string path, Exception inner)
    : PrintException($"the browser {path} did not start: {inner.Message}", inner);

/// <summary>The browser, or the page in it, died while printing, twice in a row.</summary>
public sealed class BrowserCrashed(Exception inner) : PrintException($"the browser crashed while printing: {inner.Message}", inner);

/// <summary>Printing took longer than it may.</summary>
public sealed class PrintTimedOut(TimeSpan limit)
    : PrintException(
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"printing one document took longer than {limit.TotalSeconds:0} s")
    );

/// <summary>The browser answered, and not with a whole PDF.</summary>
public sealed class PrintFailed(string message, Exception? inner = null) : PrintException(message, inner);
