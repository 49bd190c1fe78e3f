-- The water a machine is fed with, as it was measured; the newest of a machine counts.
CREATE TABLE water (
    id INTEGER PRIMARY KEY,
    machine_id BIGINT NOT NULL REFERENCES machine (id),
    sheet TEXT NOT NULL,
    entered TEXT NOT NULL,
    who TEXT NOT NULL,
    at TEXT NOT NULL
);
CREATE INDEX water_machine ON water (machine_id, id);
