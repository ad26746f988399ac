package hark.ensemble;

import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Remembers what a clue says of a body at each node of its group. Members that share a body and
 * whose radio is unharmed through the window share the answer. Two threads may compute the same
 * answer at once; it is the same.
 */
final class HeardMemory implements Remembering {
  private final int bodies;
  private final AtomicReferenceArray<Heard> known;

  HeardMemory(int entries, int bodies) {
    this.bodies = bodies;
    this.known = new AtomicReferenceArray<>(entries * bodies);
  }

  @Override
  public Heard outside(OutsideClue clue, Member member, double until, Supplier<Heard> compute) {
    return get(clue.entry(), member, until, compute);
  }

  @Override
  public Heard ours(ListeningClue clue, Member member, Body body, Function<Bursts, Heard> compute) {
    SkyWindow window = clue.window();
    return get(
        clue.entry(),
        member,
        window.to(),
        () -> compute.apply(Bursts.of(member, body, window.from(), window.to())));
  }

  private Heard get(int entry, Member member, double until, Supplier<Heard> compute) {
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

  @Override
  public void forget(int body) {
    for (int place = body; place < known.length(); place += bodies) {
      known.set(place, null);
    }
  }
}
