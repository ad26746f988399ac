package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.time.Clock;
import org.junit.jupiter.api.Test;

class ServeCommandTest {
  private final StringWriter err = new StringWriter();

  @Test
  void anAddressBeyondThisMachineIsRefusedByName() {
    assertEquals(ExitCode.BAD_INPUT, run("serve", "--demo", "--bind", "0.0.0.0"));
    assertTrue(err.toString().contains("--bind"), err.toString());
    assertTrue(err.toString().contains("log-ins"), err.toString());
  }

  @Test
  void aMissionOrTheDemoMustBeNamedAndNotBoth() {
    assertEquals(ExitCode.BAD_INPUT, run("serve"));
    assertTrue(err.toString().contains("name a mission folder"), err.toString());
    assertEquals(ExitCode.BAD_INPUT, run("serve", "elsewhere", "--demo"));
  }

  @Test
  void numbersOutOfRangeAreBadInput() {
    assertEquals(ExitCode.BAD_INPUT, run("serve", "--demo", "--days", "-1"));
    assertEquals(ExitCode.BAD_INPUT, run("serve", "--demo", "--days", "NaN"));
    assertEquals(ExitCode.BAD_INPUT, run("serve", "--demo", "--members", "0"));
    assertEquals(ExitCode.BAD_INPUT, run("serve", "--demo", "--port", "70000"));
  }

  @Test
  void aFolderThatIsNotThereIsBadInput() {
    assertEquals(ExitCode.BAD_INPUT, run("serve", "no-such-folder", "--port", "0"));
  }

  @Test
  void earthDataThatAreNotThereAreBadInput() {
    assertEquals(
        ExitCode.BAD_INPUT, run("serve", "--demo", "--port", "0", "--orekit-data", "no-folder"));
    assertTrue(err.toString().contains("no-folder"), err.toString());
  }

  @Test
  void aPortInUseIsToldInPlainWords() throws Exception {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
      String port = String.valueOf(taken.getLocalPort());
      assertEquals(ExitCode.COULD_NOT, run("serve", "--demo", "--port", port));
      assertTrue(err.toString().contains("port " + port + " is in use"), err.toString());
      assertFalse(err.toString().contains("Exception"), err.toString());
    }
  }

  private int run(String... args) {
    return Main.run(
        Clock.systemUTC(), new PrintWriter(new StringWriter()), new PrintWriter(err, true), args);
  }
}
