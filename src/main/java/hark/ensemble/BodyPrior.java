package hark.ensemble;

import hark.power.PowerModel;
import java.util.List;
import java.util.function.Function;

/**
 * What is believed of the body before any evidence: which numbers are uncertain and how a draw of
 * them becomes a model.
 *
 * @param keys names of the uncertain numbers, as paths in the mission file
 * @param numbers their distributions, in the same order
 * @param build makes the model of one body from one value for each number, in the same order; pure
 */
public record BodyPrior(
    List<String> keys, List<Uncertain> numbers, Function<double[], PowerModel> build) {
  /** Refuses lists of different length. */
  public BodyPrior {
    if (keys.size() != numbers.size()) {
      throw new IllegalArgumentException(keys.size() + " keys for " + numbers.size() + " numbers");
    }
    keys = List.copyOf(keys);
    numbers = List.copyOf(numbers);
  }

  /** The body with every number at its mean. */
  public PowerModel typical() {
    return build.apply(numbers.stream().mapToDouble(Uncertain::mean).toArray());
  }
}
