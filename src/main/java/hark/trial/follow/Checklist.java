package hark.trial.follow;

import hark.ensemble.Candidate;
import hark.plan.Procedure;
import hark.trial.campaign.Listener;
import java.util.ArrayList;
import java.util.List;

/** The fixed list that a careful crew goes through without a model, station by station. */
final class Checklist {
  private static final List<String> IN_TURN =
      List.of(
          "listen-as-planned",
          "blind-reset",
          "blind-low-power",
          "listen-wide",
          "listen-early",
          "listen-late",
          "retry-antenna-release",
          "listen-other-candidate",
          "blind-beacon-on");

  private final Scene scene;
  private final List<Procedure> items = new ArrayList<>();

  Checklist(Scene scene) {
    this.scene = scene;
    for (String id : IN_TURN) {
      scene.procedures().stream().filter(p -> p.id().equals(id)).findFirst().ifPresent(items::add);
    }
    if (items.isEmpty()) {
      throw new IllegalArgumentException("none of the checklist's procedures is known");
    }
  }

  /** Items that are possible in a window. */
  List<Procedure> possible(int window) {
    return items.stream()
        .filter(item -> !(item.change() instanceof Procedure.Command) || scene.maySend(window))
        .toList();
  }

  /** The first item: to listen as planned. */
  Choice plain(int window) {
    return choice(items.get(0), window);
  }

  Choice choice(Procedure procedure, int window) {
    return new Choice(procedure, manner(procedure, window));
  }

  private Listener.Manner manner(Procedure procedure, int window) {
    Listener.Manner usual = scene.listener().usual(scene.windows().get(window).station());
    if (procedure.change() instanceof Procedure.Listen listen) {
      return new Listener.Manner(
          listen.way().orElse(usual.way()),
          listen.windowHz().orElse(usual.halfWidthHz()),
          listen.offsetSeconds(),
          listen.otherCandidate() ? second() : usual.object(),
          listen.extraGainDb());
    }
    return usual;
  }

  /** The second likeliest object at separation. */
  private int second() {
    int first = scene.input().likeliestCandidate();
    int best = first;
    List<Candidate> all = scene.input().candidates();
    for (int k = 0; k < all.size(); k++) {
      boolean other = k != first && !all.get(k).objectId().equals(Candidate.NONE);
      best = other && (best == first || all.get(k).prior() > all.get(best).prior()) ? k : best;
    }
    return best;
  }
}
