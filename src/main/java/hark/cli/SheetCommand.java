package hark.cli;

import hark.document.MissionFacts;
import hark.document.PassSheet;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code hark sheet MISSION}: one pass on paper. */
@Command(
    name = "sheet",
    description =
        "One pass on paper, in Markdown: cautions first, what is known beforehand, the procedure,"
            + " and the log with room to write.",
    mixinStandardHelpOptions = true)
final class SheetCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private AssessOptions options;
  @Mixin private NewFile file;

  @Option(
      names = "--window",
      paramLabel = "ID",
      description =
          "Station and AOS of the pass, as hark assess prints it (default: the next planned one).")
  private String window;

  @Override
  public Integer call() {
    file.refuseOccupied();
    MissionRecord mission = options.read();
    String text =
        PassSheet.of(
            options.assess(mission),
            MissionFacts.of(mission.mission()),
            Optional.ofNullable(window));
    file.put(text, spec);
    return ExitCode.DONE;
  }
}
