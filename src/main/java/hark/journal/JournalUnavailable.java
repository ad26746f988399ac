package hark.journal;

/**
 * The journal could not be read or written for a reason outside its content: locked by another
 * program, disk full, no permission. Nothing was acknowledged and nothing was lost.
 */
public final class JournalUnavailable extends RuntimeException {
  private static final long serialVersionUID = 1L;

  JournalUnavailable(String message, Throwable cause) {
    super(message, cause);
  }
}
