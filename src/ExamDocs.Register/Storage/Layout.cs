namespace ExamDocs.Register.Storage;

/// <summary>The tables of a register. What was added by a version is a step of its own, so that every older register can take it.</summary>
internal static class Layout
{
    /// <summary>The layout that this version writes.</summary>
    public const int Version = 3;

    public static readonly IReadOnlyList<string> Tables =
    [
        "checkpoint",
        "content",
        "counter",
        "document",
        "document_item",
        "ended_line",
        "examination",
        "item",
        "item_key",
        "line_end",
        "log",
        "makers_limits",
        "merged_visit",
        "observation",
        "outcome",
        "person",
        "register",
        "renewal",
        "replacement",
        "visit",
    ];

    /// <summary>
    /// Indexes that change no layout: an earlier version works with and without them. They are made where they are missing, and
    /// without them the same is found by reading more.
    /// </summary>
    /// <param name="visitOfEntry">As <see cref="RegisterDatabase.VisitOfEntry"/> has it.</param>
    public static IReadOnlyList<(string Name, string Statement)> Indexes(string visitOfEntry) =>
        [
            ("log_by_visit", $"CREATE INDEX log_by_visit ON log (({visitOfEntry}))"),
            ("item_by_serial", "CREATE INDEX item_by_serial ON item {equal}(serial)"),
        ];

    /// <summary>Numbers and documents.</summary>
    public const string First = """
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

    /// <summary>
    /// Visits with their rows, the log, documents that others replace or that were withdrawn, and runs side by side. The
    /// record of a visit is kept whole; the rows are what is searched by, and can be made again from it.
    /// </summary>
    public const string Second = """
        CREATE TABLE register (
          single INTEGER NOT NULL PRIMARY KEY CHECK (single = 1),
          id TEXT NOT NULL,
          layout INTEGER NOT NULL,
          log_size INTEGER NOT NULL
        ){strict};

        ALTER TABLE document ADD COLUMN run TEXT;
        ALTER TABLE document ADD COLUMN issued_on TEXT;
        ALTER TABLE document ADD COLUMN language TEXT;
        ALTER TABLE document ADD COLUMN visit INTEGER;
        ALTER TABLE document ADD COLUMN copy_of TEXT REFERENCES document (number);
        ALTER TABLE document ADD COLUMN ended TEXT CHECK (ended IN ('replaced', 'withdrawn'));
        ALTER TABLE document ADD COLUMN ended_on TEXT CHECK ((ended IS NULL) = (ended_on IS NULL));
        ALTER TABLE document ADD COLUMN ended_reason TEXT CHECK ((ended IS NULL) = (ended_reason IS NULL));
        DROP INDEX one_live_document_per_job;
        CREATE UNIQUE INDEX one_live_document_per_job ON document (job_key) WHERE state <> 'void' AND ended IS NULL;
        CREATE INDEX document_by_visit ON document (visit);

        CREATE TABLE replacement (
          number TEXT NOT NULL REFERENCES document (number),
          replaced TEXT NOT NULL REFERENCES document (number),
          reason TEXT NOT NULL,
          PRIMARY KEY (number, replaced)
        ){strict};

        CREATE TABLE log (
          position INTEGER NOT NULL PRIMARY KEY CHECK (position >= 0),
          entry {blob} NOT NULL
        ){strict};

        CREATE TABLE checkpoint (
          size INTEGER NOT NULL PRIMARY KEY CHECK (size >= 1),
          root TEXT NOT NULL
        ){strict};

        CREATE TABLE visit (
          visit INTEGER NOT NULL PRIMARY KEY CHECK (visit >= 1),
          sha256 TEXT NOT NULL,
          reference TEXT,
          regime TEXT,
          employer TEXT,
          premises TEXT,
          examined_on TEXT,
          stored_on TEXT NOT NULL,
          record {blob} NOT NULL
        ){strict};

        CREATE INDEX visit_by_reference ON visit {equal}(reference);

        CREATE TABLE person (
          visit INTEGER NOT NULL REFERENCES visit (visit),
          position INTEGER NOT NULL,
          id TEXT, name TEXT, address TEXT, qualifications TEXT,
          PRIMARY KEY (visit, position)
        ){strict};

        CREATE TABLE item (
          visit INTEGER NOT NULL REFERENCES visit (visit),
          position INTEGER NOT NULL,
          id TEXT, category TEXT, description TEXT, maker TEXT, model TEXT, part_number TEXT, serial TEXT, owners_mark TEXT,
          manufactured TEXT, first_used TEXT, fitted_to TEXT, status TEXT,
          PRIMARY KEY (visit, position)
        ){strict};

        CREATE INDEX item_by_id ON item {equal}(id);

        CREATE TABLE makers_limits (
          visit INTEGER NOT NULL REFERENCES visit (visit),
          position INTEGER NOT NULL,
          maker TEXT, model TEXT, part_number TEXT, title TEXT, revision TEXT, page TEXT,
          PRIMARY KEY (visit, position)
        ){strict};

        CREATE TABLE examination (
          visit INTEGER NOT NULL REFERENCES visit (visit),
          position INTEGER NOT NULL,
          item TEXT, examiner TEXT, basis TEXT, examined_on TEXT, conclusion TEXT,
          PRIMARY KEY (visit, position)
        ){strict};

        CREATE INDEX examination_by_item ON examination {equal}(item);

        CREATE TABLE observation (
          visit INTEGER NOT NULL,
          examination INTEGER NOT NULL,
          position INTEGER NOT NULL,
          criterion TEXT, state TEXT, note TEXT, photo TEXT,
          PRIMARY KEY (visit, examination, position),
          FOREIGN KEY (visit, examination) REFERENCES examination (visit, position)
        ){strict};

        CREATE TABLE renewal (
          visit INTEGER NOT NULL REFERENCES visit (visit),
          position INTEGER NOT NULL,
          item TEXT, removed_part TEXT, fitted_part TEXT, done_on TEXT,
          PRIMARY KEY (visit, position)
        ){strict};

        CREATE TABLE outcome (
          visit INTEGER NOT NULL REFERENCES visit (visit),
          position INTEGER NOT NULL,
          item TEXT,
          examined_on TEXT,
          outcome TEXT NOT NULL,
          until TEXT,
          next_by TEXT,
          codes TEXT NOT NULL,
          parts TEXT NOT NULL,
          never_releasable INTEGER NOT NULL CHECK (never_releasable IN (0, 1)),
          PRIMARY KEY (visit, position)
        ){strict};

        CREATE INDEX outcome_by_item ON outcome {equal}(item);
        """;

    /// <summary>
    /// What a visit could know when it was decided, the keys that items are found by, what ended, and what came from another
    /// register. The three columns on the end of a document are made anew, for one more word is allowed there.
    /// </summary>
    public const string Third = """
        ALTER TABLE register ADD COLUMN kept_since TEXT;

        DROP INDEX one_live_document_per_job;
        ALTER TABLE document ADD COLUMN origin TEXT;
        ALTER TABLE document ADD COLUMN end_word TEXT CHECK (end_word IN ('replaced', 'withdrawn', 'ended'));
        ALTER TABLE document ADD COLUMN end_day TEXT CHECK ((end_word IS NULL) = (end_day IS NULL));
        ALTER TABLE document ADD COLUMN end_reason TEXT CHECK ((end_word IS NULL) = (end_reason IS NULL));
        UPDATE document SET end_word = ended, end_day = ended_on, end_reason = ended_reason;
        ALTER TABLE document DROP COLUMN ended_reason;
        ALTER TABLE document DROP COLUMN ended_on;
        ALTER TABLE document DROP COLUMN ended;
        ALTER TABLE document RENAME COLUMN end_word TO ended;
        ALTER TABLE document RENAME COLUMN end_day TO ended_on;
        ALTER TABLE document RENAME COLUMN end_reason TO ended_reason;
        CREATE UNIQUE INDEX one_live_document_per_job ON document (job_key) WHERE state <> 'void' AND ended IS NULL;
        UPDATE document SET run = NULL WHERE state <> 'pending';

        ALTER TABLE visit ADD COLUMN seen INTEGER;
        ALTER TABLE visit ADD COLUMN version TEXT;
        ALTER TABLE visit ADD COLUMN as_of TEXT;
        ALTER TABLE visit ADD COLUMN origin TEXT;
        CREATE INDEX visit_by_record ON visit (sha256);

        CREATE TABLE item_key (
          visit INTEGER NOT NULL REFERENCES visit (visit),
          position INTEGER NOT NULL,
          item TEXT NOT NULL,
          key TEXT NOT NULL,
          PRIMARY KEY (visit, position)
        ){strict};

        CREATE INDEX item_by_key ON item_key {equal}(key);
        CREATE INDEX key_by_item ON item_key {equal}(item);

        CREATE TABLE line_end (
          by_visit INTEGER NOT NULL REFERENCES visit (visit),
          position INTEGER NOT NULL,
          visit INTEGER NOT NULL REFERENCES visit (visit),
          item TEXT NOT NULL,
          ended_on TEXT NOT NULL,
          reason TEXT NOT NULL,
          PRIMARY KEY (by_visit, position)
        ){strict};

        CREATE INDEX line_end_of_visit ON line_end (visit);

        CREATE TABLE ended_line (
          number TEXT NOT NULL REFERENCES document (number),
          position INTEGER NOT NULL,
          item TEXT NOT NULL,
          ended_on TEXT NOT NULL,
          reason TEXT NOT NULL,
          by_visit INTEGER NOT NULL REFERENCES visit (visit),
          PRIMARY KEY (number, position)
        ){strict};

        CREATE TABLE merged_visit (
          origin TEXT NOT NULL,
          number INTEGER NOT NULL,
          visit INTEGER NOT NULL REFERENCES visit (visit),
          PRIMARY KEY (origin, number)
        ){strict};

        CREATE INDEX merged_by_visit ON merged_visit (visit);
        """;
}
