package hark.mission;

import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/** Gathers the problems of one input, so that all are told at once. Not shared between threads. */
public final class Problems {
  /** More than this many tell a reader nothing new. */
  static final int MAX_TOLD = 100;

  private final List<Problem> found = new ArrayList<>();
  private int count;

  /** Adds a problem at a node: its file, line and key path become the place. */
  public void add(YamlTree at, String what, String mend) {
    add(new Problem(what, at.where(), mend));
  }

  /** Adds a problem at a place already in words. */
  public void add(Problem problem) {
    count++;
    if (found.size() < MAX_TOLD) {
      found.add(problem);
    }
  }

  /** Puts a better worded problem in the place of an earlier one. */
  void replace(Problem earlier, Problem better) {
    int at = found.indexOf(earlier);
    if (at >= 0) {
      found.set(at, better);
    }
  }

  /** Adds all problems of another reader. */
  public void addAll(List<Problem> problems) {
    problems.forEach(this::add);
  }

  /** True when nothing has been found so far. */
  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** How many were found so far; for asking later whether a part was read without a problem. */
  public int count() {
    return count;
  }

  /** All so far, in the order found. */
  public List<Problem> list() {
    return List.copyOf(found);
  }

  /** Throws {@link BadInput} with all of them when there are any. */
  public void throwIfAny() {
    if (!found.isEmpty()) {
      throw new BadInput(found);
    }
  }
}
