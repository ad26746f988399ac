package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What comes later is refused by name, and the help says so. */
class LaterCommandsTest {
  @ParameterizedTest
  @ValueSource(strings = {"new", "search", "crew"})
  void aLaterCommandIsRefusedByName(String command) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Main.run(Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err), command, "folder");
    assertEquals(ExitCode.BAD_INPUT, code);
    assertTrue(
        err.toString().contains("hark " + command + " comes with a later version"), err.toString());
    assertEquals("", out.toString());
    Main.run(Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err), "--help");
    assertTrue(out.toString().contains(command), "the help names it");
  }
}
