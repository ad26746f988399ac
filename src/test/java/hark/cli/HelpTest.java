package hark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;

/** The help is part of the program: whole, and honest about what comes later. */
class HelpTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.run(Clock.systemUTC(), new PrintWriter(out), new PrintWriter(err), args);
  }

  static List<String> later() {
    return Failures.LATER;
  }

  static List<String> commands() {
    return List.copyOf(new CommandLine(new Main(Clock.systemUTC())).getSubcommands().keySet());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("later")
  void commandsThatComeLaterAreNamed(String command) {
    assertEquals(ExitCode.DONE, run("--help"));
    assertTrue(out.toString().lines().anyMatch(l -> l.contains("later") && l.contains(command)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("commands")
  void everyOptionSaysWhatItMeansAndNamesItsValue(String command) {
    assertEquals(ExitCode.DONE, run(command, "--help"));
    assertTrue(out.toString().startsWith("Usage: hark " + command));
    assertTrue(out.toString().lines().allMatch(line -> line.length() <= 80));
    CommandSpec spec =
        new CommandLine(new Main(Clock.systemUTC())).getSubcommands().get(command).getCommandSpec();
    for (ArgSpec argument : spec.args()) {
      assertTrue(argument.description().length > 0, argument.toString());
      assertTrue(argument.arity().max() == 0 || !argument.paramLabel().startsWith("<"));
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"assess", "brief", "note", "serve"})
  void membersAreExplained(String command) {
    run(command, "--help");
    String help = out.toString().replaceAll("\\s+", " ");
    assertTrue(help.contains("--members=N Bodies wanted for each event set of order ≤ 1"), help);
  }

  @Test
  void misspeltCommandsAreNotTakenForLaterOnes() {
    assertEquals(ExitCode.BAD_INPUT, run("breif", "folder"));
    assertTrue(err.toString().contains("breif"), err.toString());
    assertEquals(ExitCode.BAD_INPUT, run("brief", "--search", "search"));
    assertFalse(err.toString().contains("later"), err.toString());
  }
}
