namespace ExamDocs.Register.Opening;

/// <summary>Numbers and documents.</summary>
internal static class FirstLayout
{
    public const string Statements = """
        CREATE TABLE counter (
          letter TEXT NOT NULL CHECK (length(letter) = 1 AND letter BETWEEN 'A' AND 'Z'),
          year INTEGER NOT NULL,
          last INTEGER NOT NULL CHECK (last >= 1),
          PRIMARY KEY (letter, year)
        ){strict};

        CREATE TABLE document (
          number TEXT NOT NULL PRIMARY KEY,
          letter TEXT NOT NULL,
          year INTEGER NOT NULL,
          sequence INTEGER NOT NULL CHECK (sequence >= 1),
          kind TEXT NOT NULL,
          job_key TEXT NOT NULL,
          folder TEXT NOT NULL,
          state TEXT NOT NULL DEFAULT 'pending' CHECK (state IN ('pending', 'issued', 'void')),
          sha256 TEXT,
          pages INTEGER CHECK (pages >= 1),
          outcomes TEXT,
          void_reason TEXT,
          UNIQUE (letter, year, sequence),
          CHECK (state <> 'issued' OR (sha256 IS NOT NULL AND pages IS NOT NULL AND outcomes IS NOT NULL)),
          CHECK ((state = 'void') = (void_reason IS NOT NULL))
        ){strict};

        CREATE UNIQUE INDEX one_live_document_per_job ON document (job_key) WHERE state <> 'void';

        CREATE TABLE document_item (
          number TEXT NOT NULL REFERENCES document (number),
          position INTEGER NOT NULL,
          item TEXT NOT NULL,
          PRIMARY KEY (number, position)
        ){strict};

        CREATE INDEX document_by_item ON document_item {equal}(item);

        CREATE TABLE content (
          number TEXT NOT NULL PRIMARY KEY REFERENCES document (number),
          bytes {blob} NOT NULL
        ){strict};
        """;
}
