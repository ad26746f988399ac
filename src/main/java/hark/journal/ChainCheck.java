package hark.journal;

import hark.problem.Problem;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/** Walks the rows of a journal from the first and keeps the first thing that is wrong. */
final class ChainCheck {
  private final Path path;
  private byte[] expected = Chain.start();
  private int rows;
  private Problem fault;

  ChainCheck(Path path) {
    this.path = path;
  }

  void row(Row row, byte[] previous, byte[] hash) {
    rows++;
    if (fault != null) {
      return;
    }
    if (row.number() != rows) {
      fault = problem(row, "comes where entry " + rows + " should be", "entries are missing");
    } else if (!Arrays.equals(previous, expected)) {
      fault =
          problem(row, "does not follow from the entry before it", "an earlier one was changed");
    } else if (!Arrays.equals(hash, Chain.hash(previous, row))) {
      fault = problem(row, "was changed after it was written", "compare with a copy");
    }
    expected = hash;
  }

  private Problem problem(Row row, String what, String mend) {
    return new Problem("entry " + row.number() + " " + what, path.toString(), mend);
  }

  int rows() {
    return rows;
  }

  Optional<Problem> fault() {
    return Optional.ofNullable(fault);
  }
}
