namespace ExamDocs.Register.Opening;

/// <summary>Where the bytes of issued documents are kept. A register without a row here keeps them itself.</summary>
internal static class FourthLayout
{
    public const string Statements = """
        CREATE TABLE content_place (
          position INTEGER NOT NULL PRIMARY KEY CHECK (position >= 0),
          word TEXT NOT NULL CHECK (word IN ('kept-at', 'cleared')),
          place TEXT NOT NULL,
          day TEXT NOT NULL
        ){strict};
        """;
}
