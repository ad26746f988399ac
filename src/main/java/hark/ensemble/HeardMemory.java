package hark.ensemble;

import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Supplier;

/**
 * Remembers what a clue says of a body at each node of its group. Members that share a body and
 * whose radio is unharmed through the window share the answer. Two threads may compute the same
 * answer at once; it is the same.
 */
final class HeardMemory {
  private final int bodies;
  private final AtomicReferenceArray<Heard> known;

  HeardMemory(int entries, int bodies) {
    this.bodies = bodies;
    this.known = new AtomicReferenceArray<>(entries * bodies);
  }

  Heard get(int entry, Member member, double until, Supplier<Heard> compute) {
    if (!member.radio().isUnharmedUntil(until)) {
      return compute.get();
    }
    int place = entry * bodies + member.body();
    Heard answer = known.get(place);
    if (answer == null) {
      answer = compute.get();
      known.set(place, answer);
    }
    return answer;
  }

  /** Forgets a body that has been weighed. */
  void forget(int body) {
    for (int place = body; place < known.length(); place += bodies) {
      known.set(place, null);
    }
  }
}
