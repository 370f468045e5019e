namespace ExamDocs.Register.Opening;

/// <summary>
/// Visits with their rows, the log, documents that others replace or that were withdrawn, and runs side by side. The
/// record of a visit is kept whole; the rows are what is searched by, and can be made again from it.
/// </summary>
internal static class SecondLayout
{
    public const string Statements = """
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
}
