package hark.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code hark demo [DIR]}: a copy of the demo to play with. */
@Command(
    name = "demo",
    description = "Write the demo mission, an invented silent satellite, as a folder of your own.",
    mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "DIR",
      defaultValue = "corncrake",
      description = "Folder to write; must be new or empty (default: ${DEFAULT-VALUE}).")
  private Path directory;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Accepted by every command; nothing is random here.")
  void acceptSeed(long seed) {}

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    DemoMission.writeTo(directory).forEach(out::println);
    out.println("next: hark brief " + directory);
    return ExitCode.DONE;
  }
}
