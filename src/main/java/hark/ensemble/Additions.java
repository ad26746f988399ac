package hark.ensemble;

import hark.evidence.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Entries added to a record that was weighed, one clue after the other. */
final class Additions {
  /** More at once are better weighed anew. */
  private static final int MOST = 4;

  private final Weighed known;
  private final Body[] ahead;

  /** What was weighed, with its bodies beyond now. */
  Additions(Weighed known, Body[] ahead) {
    this.known = known;
    this.ahead = ahead;
  }

  /** What all entries together leave; empty when it takes weighing anew. */
  Optional<Posterior> posterior(DiagnosisInput later, Workers workers) {
    List<Entry> before = known.input().evidence();
    if (!later.evidence().containsAll(before)
        || later.evidence().size() > before.size() + MOST
        || later.now().isBefore(known.input().now())) {
      return Optional.empty();
    }
    Sky sky = known.sky().at(later);
    List<Clue> clues = new ArrayList<>();
    List<Clue> added = new ArrayList<>();
    for (Clue clue : new Clues(later, sky).all()) {
      boolean old = before.contains(later.evidence().get(clue.entry()));
      (old ? clues : added).add(clue);
    }
    if (clues.size() != known.clues().size() || !added.stream().allMatch(OneMore::can)) {
      return Optional.empty();
    }
    return all(later, sky, clues, added, workers);
  }

  private Optional<Posterior> all(
      DiagnosisInput later, Sky sky, List<Clue> clues, List<Clue> added, Workers workers) {
    Weighing weighing = known.weighing();
    List<Clue> all = new ArrayList<>(clues);
    for (Clue clue : added) {
      Optional<Body[]> bodies = OneMore.living(known, ahead, clue);
      if (bodies.isEmpty()) {
        return Optional.empty();
      }
      all.add(clue);
      weighing = more(later, weighing, List.copyOf(all), bodies.get(), workers);
    }
    Weighed now =
        new Weighed(
            later, sky, List.copyOf(all), known.population(), known.nodes(), known.ear(), weighing);
    double[] likelihood = now.likelihood();
    for (int m = 0; m < likelihood.length; m++) {
      boolean counts = ahead[known.population().members.get(m).body()] != null;
      likelihood[m] = counts ? likelihood[m] : 0;
    }
    return Optional.of(new Posterior(now, likelihood));
  }

  private Weighing more(
      DiagnosisInput later, Weighing before, List<Clue> clues, Body[] bodies, Workers workers) {
    HearingNodes[] nodes = known.nodes();
    KeptHearings memory = new KeptHearings(nodes.length);
    Clue last = clues.get(clues.size() - 1);
    Weigher weigher =
        new Weigher(later, known.ear(), memory.during(later, List.of(last), bodies.length));
    Weighing more =
        new Weighing(later.stations().size(), known.population(), clues, nodes, weigher);
    OneMore.weigh(before, more, bodies, workers);
    return more.released();
  }
}
