namespace ExamDocs.Register.Opening;

/// <summary>
/// What a visit could know when it was decided, the keys that items are found by, what ended, and what came from another
/// register. The three columns on the end of a document are replaced, because one more word is allowed there.
/// </summary>
internal static class ThirdLayout
{
    public const string Statements = """
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
