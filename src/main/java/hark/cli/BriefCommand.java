package hark.cli;

import hark.document.Brief;
import hark.document.MissionFacts;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code hark brief MISSION}: what to do next and why, on one screen. */
@Command(
    name = "brief",
    description = "What to do next, what still fits, and whether to go on: one screen, UTC.",
    mixinStandardHelpOptions = true)
final class BriefCommand implements Callable<Integer> {
  /** With {@code --all} returns are followed so far when nothing else is said. */
  private static final int YEAR_DAYS = 365;

  @Spec private CommandSpec spec;
  @Mixin private AssessOptions options;
  @Mixin private RecoveryOption recovery;

  @Option(
      names = "--all",
      description =
          "Add every cause, group, station, object, entry and option, and a look at returns a year"
              + " ahead.")
  private boolean all;

  @Override
  public Integer call() {
    MissionRecord mission = options.read();
    PrintWriter out = spec.commandLine().getOut();
    MissionFacts facts = MissionFacts.of(mission.mission());
    out.print(
        Brief.of(
            options.assess(mission, recovery.daysOr(all ? YEAR_DAYS : 0)),
            all,
            facts.mayAuthorise()));
    out.flush();
    return ExitCode.DONE;
  }
}
