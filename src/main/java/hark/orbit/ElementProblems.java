package hark.orbit;

import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/** Problems found in one file of elements, counted all, kept up to a limit. */
final class ElementProblems {
  /** More than this many are counted, not shown: nobody mends them one by one. */
  static final int SHOWN_AT_MOST = 50;

  private final String fileName;
  private final List<Problem> problems = new ArrayList<>();
  private int count;

  ElementProblems(String fileName) {
    this.fileName = fileName;
  }

  void add(int line, String what, String mend) {
    count++;
    if (problems.size() < SHOWN_AT_MOST) {
      problems.add(new Problem(what, fileName + ":" + line, mend));
    }
  }

  int count() {
    return count;
  }

  boolean isFull() {
    return count > SHOWN_AT_MOST;
  }

  void throwIfAny(boolean readToEnd) {
    if (problems.isEmpty()) {
      return;
    }
    if (isFull()) {
      problems.add(
          new Problem(
              readToEnd
                  ? (count - SHOWN_AT_MOST) + " more problems are not shown"
                  : "reading stopped after " + SHOWN_AT_MOST + " problems",
              fileName,
              "check that this is a file of element sets"));
    }
    throw new BadInput(problems);
  }
}
