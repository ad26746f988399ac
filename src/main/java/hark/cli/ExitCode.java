package hark.cli;

/** Exit codes of the contract. */
final class ExitCode {
  static final int DONE = 0;
  static final int COULD_NOT = 1;
  static final int BAD_INPUT = 2;
  static final int DEFECT = 3;

  private ExitCode() {}
}
