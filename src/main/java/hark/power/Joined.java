package hark.power;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Two histories of one body made one.
 *
 * @param seconds where the second takes over, s; what ran there is told by the second from its own
 *     start on
 */
record Joined(BodyHistory first, BodyHistory second, double seconds) {
  BodyHistory history() {
    int kept = keptGrid();
    float[] soc = Arrays.copyOf(first.soc(), kept + second.soc().length);
    System.arraycopy(second.soc(), 0, soc, kept, second.soc().length);
    byte[] states = Arrays.copyOf(first.states(), soc.length);
    System.arraycopy(second.states(), 0, states, kept, second.states().length);
    List<BodyHistory.BeaconSegment> segments =
        joined(first.segments(), s -> s.end() <= seconds, second.segments());
    segments.sort(Comparator.comparingDouble(BodyHistory.BeaconSegment::firstBurst));
    List<BodyHistory.Transition> transitions =
        joined(first.transitions(), t -> t.seconds() <= seconds, second.transitions());
    List<BodyHistory.Probe> probes =
        joined(first.probes(), p -> p.seconds() < seconds, second.probes());
    int booked = probes.size() - second.probes().size(); // books go with probes
    List<EnergyBooks> books = new ArrayList<>(first.books().subList(0, booked));
    books.addAll(second.books());
    return new BodyHistory(
        kept > 0 ? first.gridStart() : second.gridStart(),
        first.gridStep(),
        soc,
        states,
        List.copyOf(segments),
        List.copyOf(joined(first.receiverOn(), on -> on[1] <= seconds, second.receiverOn())),
        List.copyOf(
            transitions.subList(0, Math.min(transitions.size(), PowerPhysics.TRANSITIONS_KEPT))),
        List.copyOf(probes),
        List.copyOf(books),
        List.copyOf(
            joined(first.checkpoints(), c -> c.seconds() <= seconds, second.checkpoints())));
  }

  /** Places of the first grid that lie before the second; refuses grids that do not meet. */
  private int keptGrid() {
    double steps = (second.gridStart() - first.gridStart()) / first.gridStep();
    int kept = (int) Math.round(steps);
    boolean meets = Math.abs(steps - kept) < 1e-6 && first.gridStep() == second.gridStep();
    if (!meets || kept < 0 || kept > first.soc().length) {
      throw new IllegalArgumentException(
          "a grid from "
              + second.gridStart()
              + " s does not go on one from "
              + first.gridStart()
              + " s with "
              + first.soc().length
              + " places");
    }
    return kept;
  }

  private static <T> List<T> joined(List<T> first, Predicate<T> stays, List<T> second) {
    List<T> all = new ArrayList<>();
    first.stream().filter(stays).forEach(all::add);
    all.addAll(second);
    return all;
  }
}
