package hark.cli;

import hark.station.Pass;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** Puts passes found leg by leg into the order in which they are printed. */
final class FoundPasses {
  private static final Comparator<Pass> ORDER =
      Comparator.comparing(Pass::aos).thenComparing(Pass::objectId).thenComparing(Pass::site);

  private FoundPasses() {}

  /**
   * By AOS, then object, then site; a pass that two legs of an object found is listed once.
   *
   * @param found each object's in the order of its legs
   * @param pass the pass that a finding is about
   */
  static <T> List<T> inOrder(List<T> found, Function<T, Pass> pass) {
    Comparator<Pass> together = Comparator.comparing(Pass::objectId).thenComparing(Pass::site);
    List<T> byObjectAndSite = found.stream().sorted(Comparator.comparing(pass, together)).toList();
    return Leg.joined(
            byObjectAndSite,
            (earlier, later) ->
                together.compare(pass.apply(earlier), pass.apply(later)) == 0
                    && !pass.apply(later).aos().isAfter(pass.apply(earlier).los()))
        .stream()
        .sorted(Comparator.comparing(pass, ORDER))
        .toList();
  }
}
