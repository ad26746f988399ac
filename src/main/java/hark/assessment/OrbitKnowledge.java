package hark.assessment;

import hark.orbit.Decay;
import hark.orbit.ElementSet;
import hark.orbit.SetStep;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of each object's orbit at a time, and how well.
 *
 * @param objects candidates by falling weight, then the others of the files
 */
public record OrbitKnowledge(Instant now, List<Known> objects) {
  /** Keeps the list. */
  public OrbitKnowledge {
    objects = List.copyOf(objects);
  }

  /**
   * One object.
   *
   * @param weight before any evidence, 0…1; empty for one that is no candidate
   * @param sets known by now, oldest first, at least one
   * @param alongTrackSdSeconds of the newest set, now
   * @param steps each set held against the one before it
   * @param measuredPerDaySeconds root mean square of lateness by days; empty without two sets
   * @param expectedPerDaySeconds what the mission believes for a day, without the spread at epoch
   */
  public record Known(
      String objectId,
      OptionalDouble weight,
      List<ElementSet> sets,
      double ageDays,
      double alongTrackSdSeconds,
      List<SetStep> steps,
      OptionalDouble measuredPerDaySeconds,
      double expectedPerDaySeconds,
      Decay decay,
      Standing standing) {
    /** Keeps the lists. */
    public Known {
      sets = List.copyOf(sets);
      steps = List.copyOf(steps);
    }

    /** The newest set. */
    public ElementSet last() {
      return sets.get(sets.size() - 1);
    }

    /** Sets that do not go on where the one before them ended. */
    public List<SetStep> jumps() {
      return steps.stream().filter(SetStep::isJump).toList();
    }

    /** Drag term of the last set less that of the first, as a share of the first. */
    public OptionalDouble dragTermChange() {
      List<ElementSet> published = sets.stream().filter(set -> !set.isState()).toList();
      if (published.size() < 2 || published.get(0).bstar() == 0) {
        return OptionalDouble.empty();
      }
      double first = published.get(0).bstar();
      return OptionalDouble.of((published.get(published.size() - 1).bstar() - first) / first);
    }
  }

  /**
   * How the catalogue treats an object.
   *
   * @param since first set, when others had sets more than a day and a half before
   * @param silentSince last set, when others went on to have new ones
   * @param looksLike the object whose place a set of this one took over, by the last jump
   */
  public record Standing(
      Optional<Instant> since, Optional<Instant> silentSince, Optional<String> looksLike) {}
}
