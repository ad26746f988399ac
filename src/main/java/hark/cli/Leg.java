package hark.cli;

import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.BiPredicate;

/** A stretch of time through which one element set of an object is in force. */
record Leg(ElementSet set, Instant from, Instant to) {
  /**
   * A span of one object, cut where a newer set comes into force: at its epoch.
   *
   * @param sets all sets of the object
   * @param known sets with epochs after this time are not known yet and serve only when there is no
   *     other
   */
  static List<Leg> of(List<ElementSet> sets, Instant from, Instant to, Instant known) {
    List<ElementSet> usable = sets.stream().filter(set -> !set.epoch().isAfter(known)).toList();
    if (usable.isEmpty()) {
      return List.of(new Leg(inForce(sets, from), from, to));
    }
    TreeSet<Instant> ends = new TreeSet<>(List.of(to));
    usable.stream()
        .map(ElementSet::epoch)
        .filter(epoch -> epoch.isAfter(from) && epoch.isBefore(to))
        .filter(epoch -> !inForce(usable, from).epoch().equals(epoch))
        .forEach(ends::add);
    List<Leg> legs = new ArrayList<>();
    Instant start = from;
    for (Instant end : ends) {
      legs.add(new Leg(inForce(usable, start), start, end));
      start = end;
    }
    return legs;
  }

  private static ElementSet inForce(List<ElementSet> sets, Instant time) {
    return ElementSets.inForce(sets, time).get(0);
  }

  /**
   * Findings of legs that follow one another, without what two of them found twice: where two
   * overlap, the later leg's stays, for its elements are the newer.
   */
  static <T> List<T> joined(List<T> findings, BiPredicate<T, T> overlap) {
    List<T> joined = new ArrayList<>();
    for (T next : findings) {
      int last = joined.size() - 1;
      if (last >= 0 && overlap.test(joined.get(last), next)) {
        joined.set(last, next);
      } else {
        joined.add(next);
      }
    }
    return joined;
  }
}
