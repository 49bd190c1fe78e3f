-- Intake looks owners up by their names.
CREATE INDEX owner_name ON owner (name);
