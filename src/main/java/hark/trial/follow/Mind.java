package hark.trial.follow;

import hark.ensemble.Diagnosis;
import hark.evidence.Entry;
import java.time.Instant;
import java.util.List;

/** Diagnoses of one scene. */
@FunctionalInterface
interface Mind {
  /** What a record leaves of the prior at a time, looked ahead to another. */
  Diagnosis of(List<Entry> record, Instant now, Instant end);
}
