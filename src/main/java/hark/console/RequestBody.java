package hark.console;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;

/** Reads the text a request carries, within a limit. */
final class RequestBody {
  /** Largest body taken, bytes. A journal entry is a few hundred. */
  static final int LIMIT = 64 * 1024;

  /**
   * Most read and thrown away of a body that is refused, bytes. A connection closed on a sender who
   * still writes loses the answer on its way, so what is plausibly under way is read first.
   */
  static final int DRAINED = 1024 * 1024;

  private RequestBody() {}

  /** A body over {@link #LIMIT}. */
  static final class TooLarge extends IOException {
    private static final long serialVersionUID = 1L;

    TooLarge() {
      super("the text sent is longer than " + LIMIT / 1024 + " KiB");
    }
  }

  /**
   * The whole body as UTF-8.
   *
   * @throws TooLarge when it is longer than {@link #LIMIT}
   */
  static String read(Request request) throws IOException {
    try (InputStream sent = Content.Source.asInputStream(request)) {
      byte[] bytes = sent.readNBytes(LIMIT + 1);
      if (bytes.length > LIMIT) {
        drain(sent);
        throw new TooLarge();
      }
      return new String(bytes, StandardCharsets.UTF_8);
    }
  }

  /**
   * Reads what a request still carries and throws it away, so that the answer to one that is
   * refused unread arrives and its connection stays good.
   */
  static void discard(Request request) throws IOException {
    try (InputStream sent = Content.Source.asInputStream(request)) {
      drain(sent);
    }
  }

  private static void drain(InputStream sent) throws IOException {
    byte[] piece = new byte[8 * 1024];
    for (int read = 0, n; read < DRAINED && (n = sent.read(piece)) >= 0; read += n) {
      // thrown away
    }
  }
}
