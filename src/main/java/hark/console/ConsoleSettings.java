package hark.console;

import hark.problem.BadInput;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where the console listens and how it keeps itself fresh.
 *
 * @param bind a loopback address: {@code localhost} or a literal such as {@code 127.0.0.1}
 * @param port 0 picks a free one
 * @param webFolder serve the page's files from here instead of from the program, for those who work
 *     on the page
 * @param heartbeat pause between signs of life on an idle event stream
 * @param refresh pause between recomputations for a mission that lives in real time
 */
public record ConsoleSettings(
    String bind, int port, Optional<Path> webFolder, Duration heartbeat, Duration refresh) {
  private static final Pattern LITERAL = Pattern.compile("[0-9.]+|[0-9a-fA-F:]*:[0-9a-fA-F:.]*");

  /** Refuses what is not loopback: the console has no log-ins yet. */
  public ConsoleSettings {
    if (port < 0 || port > 65_535) {
      throw BadInput.of("port " + port + " is outside 0 to 65535", "--port", "take 8417");
    }
    if (!isLoopback(bind)) {
      throw BadInput.of(
          "'" + bind + "' is not a loopback address, and log-ins for a crew come later",
          "--bind",
          "take 127.0.0.1 and reach it from elsewhere through a tunnel of your own");
    }
  }

  /** Usual pauses: a sign of life every 15 s, a recomputation every 5 minutes. */
  public static ConsoleSettings of(String bind, int port) {
    return new ConsoleSettings(
        bind, port, Optional.empty(), Duration.ofSeconds(15), Duration.ofMinutes(5));
  }

  /** The same, with the page's files taken from a folder. */
  public ConsoleSettings withWebFolder(Path folder) {
    return new ConsoleSettings(bind, port, Optional.of(folder), heartbeat, refresh);
  }

  // Names other than localhost are not looked up: the answer could change after this check.
  private static boolean isLoopback(String bind) {
    if (bind.equals("localhost")) {
      return true;
    }
    try {
      return LITERAL.matcher(bind).matches() && InetAddress.getByName(bind).isLoopbackAddress();
    } catch (UnknownHostException e) {
      return false;
    }
  }
}
