package hark.fault;

import java.util.List;
import java.util.Map;

/**
 * A fault tree: a top gate over gates over basic events, independent of each other. May be built
 * with flaws, so that all of them can be told at once: {@link FaultTrees#problems}.
 *
 * @param top id of the top gate (or of a basic event standing alone)
 * @param gates by id, in the order written
 * @param events by id, in the order written
 */
public record FaultTree(String top, Map<String, Gate> gates, Map<String, BasicEvent> events) {

  /**
   * A basic event and its probability over the mission, 0…1.
   *
   * @param nuisance true for a leaf that reads something outside the tree and has no probability of
   *     its own; it counts as false
   */
  public record BasicEvent(String id, String title, double probability, boolean nuisance) {
    /** Refuses what is not a probability. */
    public BasicEvent {
      if (!(probability >= 0 && probability <= 1)) {
        throw new IllegalArgumentException(
            "probability " + probability + " of " + id + " is outside [0, 1]");
      }
      if (nuisance && probability != 0) {
        throw new IllegalArgumentException(
            "nuisance " + id + " has a probability of its own, " + probability);
      }
    }

    /** An event that counts. */
    public BasicEvent(String id, String title, double probability) {
      this(id, title, probability, false);
    }

    /** A leaf for people to see, false when the tree is solved. */
    public static BasicEvent nuisance(String id, String title) {
      return new BasicEvent(id, title, 0, true);
    }
  }

  /** How a gate joins its inputs. */
  public enum Join {
    OR,
    AND,
    AT_LEAST,
    NOT
  }

  /**
   * A gate.
   *
   * @param atLeast the K of a K-of-N gate; 0 for other gates
   * @param inputs ids of gates and events
   */
  public record Gate(String id, String title, Join join, int atLeast, List<String> inputs) {
    /** Keeps its own copy. */
    public Gate {
      inputs = List.copyOf(inputs);
    }
  }
}
