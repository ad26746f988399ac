package hark.cli;

import hark.fault.FaultTree;
import hark.fault.FaultTrees;
import hark.fault.Solution;
import hark.mission.CausesFile;
import hark.problem.BadInput;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Solves one fault tree. */
@Command(
    name = "faulttree",
    description =
        "Top probability (exact), minimal cut sets and importance of a fault tree in YAML, such as"
            + " a causes.yaml; Open-PSA XML comes with a later version. CSV lists the cut sets.",
    mixinStandardHelpOptions = true)
final class FaultTreeCommand implements Callable<Integer> {
  /** A tree written by people; larger files are refused unread. */
  private static final long MAX_BYTES = 4L * 1024 * 1024;

  @Spec private CommandSpec spec;
  @Mixin private FormatOption format;

  @Parameters(paramLabel = "FILE", description = "The tree, in YAML.")
  private Path file;

  @Option(
      names = "--mission-hours",
      paramLabel = "H",
      defaultValue = "720",
      description =
          "Time over which hazard_per_day becomes a probability, h (default: ${DEFAULT-VALUE}).")
  private double missionHours;

  @Option(
      names = "--max-order",
      paramLabel = "K",
      defaultValue = "1000000",
      description = "Leave out cut sets of more events (default: none is left out).",
      showDefaultValue = picocli.CommandLine.Help.Visibility.NEVER)
  private int maxOrder;

  @Option(
      names = "--all-sets",
      description =
          "List all cut sets, not only the "
              + FaultTrees.SETS_LISTED
              + " likeliest (at most "
              + FaultTrees.MOST_SETS_LISTED
              + ").")
  private boolean allSets;

  @Override
  public Integer call() {
    refuseBadNumbers();
    FaultTree tree = read();
    int most = allSets ? FaultTrees.MOST_SETS_LISTED : FaultTrees.SETS_LISTED;
    Solution solved = FaultTrees.solve(tree, maxOrder, most);
    if (allSets && solved.cutSets().count() > most) {
      throw BadInput.of(
          solved.cutSets().count() + " cut sets; at most " + most + " are listed",
          file.toString(),
          "leave out the larger ones with --max-order");
    }
    new FaultTreeReport(tree, solved).print(format.format(), spec.commandLine().getOut());
    return ExitCode.DONE;
  }

  private void refuseBadNumbers() {
    if (!(missionHours > 0) || !Double.isFinite(missionHours)) {
      throw new ParameterException(
          spec.commandLine(), "--mission-hours " + missionHours + " is not a positive number");
    }
    if (maxOrder < 1) {
      throw new ParameterException(
          spec.commandLine(), "--max-order " + maxOrder + " is below 1; write 1 or more");
    }
  }

  private FaultTree read() {
    String text = InputText.read(file, MAX_BYTES);
    boolean named = file.toString().toLowerCase(Locale.ROOT).endsWith(".xml");
    if (named || text.stripLeading().startsWith("<")) {
      throw BadInput.of(
          "this is XML; the Open-PSA form comes with a later version",
          file.toString(),
          "write the tree in YAML: events, gates, top");
    }
    return CausesFile.treeAlone(file.toString(), text, missionHours);
  }
}
