package hark.problem;

/**
 * One thing wrong with what somebody gave us: what, where, mend. The same words go to the terminal,
 * to JSON and to the console.
 *
 * @param what what was found and what was expected, as a sentence
 * @param where file and line, key or argument; empty when there is no place to name
 * @param mend what the reader can do about it; empty when nothing is known to help
 */
public record Problem(String what, String where, String mend) {
  /** A problem printed as one line: {@code where: what (mend)}. */
  public String line() {
    String place = where.isEmpty() ? "" : where + ": ";
    String cure = mend.isEmpty() ? "" : " · " + mend;
    return place + what + cure;
  }
}
