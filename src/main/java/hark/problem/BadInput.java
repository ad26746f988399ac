package hark.problem;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Input that cannot be used, with every problem found in it, never only the first. Exit code 2 at
 * the command line.
 */
public final class BadInput extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /** Takes all problems of one input; the list must not be empty. */
  public BadInput(List<Problem> problems) {
    super(problems.stream().map(Problem::line).collect(Collectors.joining("\n")));
    if (problems.isEmpty()) {
      throw new IllegalArgumentException("bad input without a problem");
    }
    this.problems = List.copyOf(problems);
  }

  /** One problem alone. */
  public static BadInput of(String what, String where, String mend) {
    return new BadInput(List.of(new Problem(what, where, mend)));
  }

  /** All problems, in the order they were found. */
  public List<Problem> problems() {
    return problems;
  }
}
