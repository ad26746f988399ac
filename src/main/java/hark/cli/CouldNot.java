package hark.cli;

/**
 * The work could not be done for a reason outside the input, such as a port in use. Exit code 1.
 */
final class CouldNot extends RuntimeException {
  private static final long serialVersionUID = 1L;

  CouldNot(String message, Throwable cause) {
    super(message, cause);
  }
}
