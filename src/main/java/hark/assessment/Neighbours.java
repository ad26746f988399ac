package hark.assessment;

import hark.ensemble.Candidate;
import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.SkyWindow;
import hark.mission.Mission;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Other crews' spacecraft that a transmission might reach: while no object is confirmed, each other
 * candidate above the horizon may be a neighbour whose receiver listens in the same band.
 */
final class Neighbours {
  /** From here on an object is as good as confirmed, 0…1. Judged. */
  private static final double CONFIRMED = 0.99;

  private static final double HERTZ_IN_MEGAHERTZ = 1e6;

  private final DiagnosisInput input;
  private final double[] objects;
  private final Map<String, List<double[]>> listensMhz;

  private Neighbours(
      DiagnosisInput input, double[] objects, Map<String, List<double[]>> listensMhz) {
    this.input = input;
    this.objects = objects;
    this.listensMhz = listensMhz;
  }

  static Neighbours of(Mission mission, Diagnosis diagnosis) {
    Map<String, List<double[]>> bands = new HashMap<>();
    mission.sources().forEach(source -> bands.putAll(source.listensMhz()));
    return new Neighbours(diagnosis.input(), diagnosis.objects(), bands);
  }

  /** What to heed before sending in a window; empty when nobody else can be reached. */
  List<String> cautions(SkyWindow window) {
    double megahertz = input.receiver().frequencyHz() / HERTZ_IN_MEGAHERTZ;
    int followed = Diagnosis.heaviest(input, window);
    if (objects[followed] >= CONFIRMED) {
      return List.of();
    }
    List<String> others = new ArrayList<>();
    for (int k = 0; k < objects.length; k++) {
      String id = input.candidates().get(k).objectId();
      boolean rises = window.passes().get(k).isPresent() && !id.equals(Candidate.NONE);
      if (k != followed && rises && listens(id, megahertz)) {
        others.add(id);
      }
    }
    if (others.isEmpty()) {
      return List.of();
    }
    return List.of(
        String.format(
            Locale.ROOT,
            "No object is confirmed as ours: %s %s in view too and may be another crew's whose"
                + " receiver listens on %.3f MHz. Sending to a neighbour is not for us to decide;"
                + " ask those crews, or confirm the object first.",
            Words.list(others),
            others.size() == 1 ? "is" : "are",
            megahertz));
  }

  private boolean listens(String object, double megahertz) {
    List<double[]> bands = listensMhz.get(object);
    return bands == null
        || bands.stream().anyMatch(band -> band[0] <= megahertz && megahertz <= band[1]);
  }
}
