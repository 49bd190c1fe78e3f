-- How jobs ended is read for all jobs of a model at once: of their entries only the few that tell it.
CREATE INDEX entry_outcome ON entry (job_id, id)
    WHERE sort IN ('signs', 'state', 'finding', 'proof', 'counts') OR corrects IS NOT NULL;
CREATE INDEX machine_file ON machine (file);
