package hark.trial.campaign;

import hark.ensemble.DiagnosisInput;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.power.Illumination;
import hark.trial.PlainBody;
import hark.trial.PlainHistory;
import hark.trial.PlainRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * One campaign whose contact is lost: truths are drawn until the last windows that a crew sits
 * through are silent. That choice looks at nothing but the evidence, so beliefs that are right
 * remain right under it.
 *
 * @param drawn truths it took
 * @param soc the truth's state of charge at the end, 0…1
 */
record Campaign(Truth truth, List<Entry> entries, int drawn, double soc, int heard) {
  /** Nearly every truth is chosen sooner; a mission that is never lost must not run for ever. */
  private static final int MOST_DRAWN = 20_000;

  /** Grid on which voltages are read, s. */
  private static final double GRID = 30;

  /** What all campaigns of a trial share. */
  record Stage(DiagnosisInput input, Illumination light, World world, Geometry geometry) {}

  /**
   * Runs campaign number {@code index} of a seed.
   *
   * @throws Trial.Impossible when no truth gives one
   */
  static Campaign run(Stage stage, long seed, int index) {
    SplittableRandom random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + index);
    Crew crew = new Crew(stage.input(), stage.geometry());
    for (int drawn = 1; drawn <= MOST_DRAWN; drawn++) {
      Optional<Campaign> lost = attempt(stage, crew, drawn, random.split());
      if (lost.isPresent()) {
        return lost.get();
      }
    }
    throw new Trial.Impossible("contact was not lost once in " + MOST_DRAWN + " truths");
  }

  private static Optional<Campaign> attempt(
      Stage stage, Crew crew, int drawn, SplittableRandom random) {
    Truth truth = stage.world().draw(random);
    double end = stage.input().seconds(stage.input().now());
    PlainRequest request =
        new PlainRequest(end, Settings.TRUTH_STEP_SECONDS, GRID, truth.changes(), List.of());
    List<Geometry.Window> windows = crew.chosen(random);
    SplittableRandom[] chances = new SplittableRandom[windows.size()];
    for (int w = 0; w < chances.length; w++) {
      chances[w] = random.split();
    }
    PlainHistory body = PlainBody.run(truth.model(), stage.light(), request);
    List<Evidence> evidence = new ArrayList<>();
    int heard = 0;
    // the last windows first: mostly they settle that contact is not lost
    for (int w = windows.size() - 1; w >= 0; w--) {
      List<Evidence> found = crew.sit(windows.get(w), truth, body, chances[w]);
      boolean silent = found.get(0) instanceof Evidence.NothingHeard;
      if (!silent && w >= windows.size() - Settings.SILENT_LAST) {
        return Optional.empty();
      }
      heard += silent ? 0 : 1;
      evidence.addAll(found);
    }
    evidence.addAll(crew.checks(truth, random));
    double soc = body.soc()[body.soc().length - 1];
    return Optional.of(new Campaign(truth, Crews.journal(evidence), drawn, soc, heard));
  }
}
