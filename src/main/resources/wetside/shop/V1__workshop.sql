-- Times are ISO text in UTC, measures are SI doubles, whatever has no fixed shape is JSON as text.
CREATE TABLE owner (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    phone TEXT NOT NULL DEFAULT '',
    email TEXT NOT NULL DEFAULT '',
    address TEXT NOT NULL DEFAULT '',
    version BIGINT NOT NULL DEFAULT 1
);

-- A machine on the register: which file describes it and where it stands. Unknown facts of the place are NULL.
CREATE TABLE machine (
    id INTEGER PRIMARY KEY,
    serial TEXT NOT NULL UNIQUE,
    file TEXT NOT NULL,
    revision TEXT NOT NULL,
    supply TEXT NOT NULL DEFAULT '',
    owner_id BIGINT NOT NULL REFERENCES owner (id),
    fed_from TEXT NOT NULL DEFAULT 'tank',
    supply_pressure DOUBLE PRECISION,
    water_conductivity DOUBLE PRECISION,
    voltage DOUBLE PRECISION,
    altitude DOUBLE PRECISION,
    ambient DOUBLE PRECISION,
    bought TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT '',
    version BIGINT NOT NULL DEFAULT 1
);
CREATE INDEX machine_owner ON machine (owner_id);

CREATE TABLE job (
    id INTEGER PRIMARY KEY,
    number BIGINT NOT NULL UNIQUE,
    machine_id BIGINT NOT NULL REFERENCES machine (id),
    state TEXT NOT NULL,
    complaint TEXT NOT NULL,
    technician TEXT NOT NULL DEFAULT '',
    due TEXT NOT NULL DEFAULT '',
    opened TEXT NOT NULL,
    moved TEXT NOT NULL,
    finding TEXT NOT NULL DEFAULT '',
    version BIGINT NOT NULL DEFAULT 1
);
CREATE INDEX job_state_moved ON job (state, moved);
CREATE INDEX job_machine ON job (machine_id);

-- What happened on a job, in order. Nothing is changed or erased: a correction is an entry that names what it corrects.
CREATE TABLE entry (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    at TEXT NOT NULL,
    sort TEXT NOT NULL,
    who TEXT NOT NULL,
    words TEXT NOT NULL,
    detail TEXT NOT NULL DEFAULT '{}',
    corrects BIGINT REFERENCES entry (id)
);
CREATE INDEX entry_job ON entry (job_id, id);

-- What fault finding knows. An answer taken back stays, with when.
CREATE TABLE answer (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    asked TEXT NOT NULL,
    said TEXT NOT NULL,
    who TEXT NOT NULL,
    at TEXT NOT NULL,
    taken_back TEXT NOT NULL DEFAULT ''
);
CREATE INDEX answer_job ON answer (job_id, id);

-- Readings as found, as left, and of the proof; SI, words as their word.
CREATE TABLE reading (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    phase TEXT NOT NULL,
    asked TEXT NOT NULL,
    said TEXT NOT NULL,
    verdict TEXT NOT NULL,
    who TEXT NOT NULL,
    at TEXT NOT NULL
);
CREATE INDEX reading_job ON reading (job_id, id);

CREATE TABLE part (
    id INTEGER PRIMARY KEY,
    number TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    kind TEXT NOT NULL DEFAULT '',
    shelf TEXT NOT NULL DEFAULT '',
    on_hand BIGINT NOT NULL DEFAULT 0,
    minimum BIGINT NOT NULL DEFAULT 0,
    on_order BIGINT NOT NULL DEFAULT 0,
    price DOUBLE PRECISION,
    version BIGINT NOT NULL DEFAULT 1
);

CREATE TABLE part_use (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    part_id BIGINT NOT NULL REFERENCES part (id),
    count BIGINT NOT NULL,
    at TEXT NOT NULL
);
CREATE INDEX part_use_job ON part_use (job_id);

CREATE TABLE photo (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    name TEXT NOT NULL,
    type TEXT NOT NULL,
    content BLOB NOT NULL,
    at TEXT NOT NULL
);
CREATE INDEX photo_job ON photo (job_id);

CREATE TABLE signature (
    job_id BIGINT PRIMARY KEY REFERENCES job (id),
    name TEXT NOT NULL,
    strokes TEXT NOT NULL,
    at TEXT NOT NULL
);

CREATE TABLE work (
    id INTEGER PRIMARY KEY,
    job_id BIGINT NOT NULL REFERENCES job (id),
    who TEXT NOT NULL,
    minutes DOUBLE PRECISION NOT NULL,
    what TEXT NOT NULL,
    at TEXT NOT NULL
);
CREATE INDEX work_job ON work (job_id);

-- Words of jobs, machines and owners, for search; written in the same transaction as what they are of.
CREATE VIRTUAL TABLE words USING fts5 (sort UNINDEXED, ref UNINDEXED, title, body, tokenize = 'unicode61 remove_diacritics 2');
