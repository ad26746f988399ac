package hark.trial.follow;

import hark.ensemble.Diagnosis;
import hark.ensemble.KeptEnsemble;
import hark.ensemble.Workers;
import hark.evidence.Entry;
import hark.trial.campaign.SameThread;
import java.time.Instant;
import java.util.List;

/** Diagnoses of one scene from bodies that are flown once and weighed for every record. */
final class Minds implements Mind {
  private final KeptEnsemble kept;

  Minds(Scene scene) {
    kept = KeptEnsemble.of(scene.input(), alone());
  }

  private static Workers alone() {
    return new Workers(new SameThread(), 1);
  }

  @Override
  public Diagnosis of(List<Entry> record, Instant now, Instant end) {
    return kept.diagnosis(now, end, record, alone());
  }
}
