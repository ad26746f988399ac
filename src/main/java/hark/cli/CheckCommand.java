package hark.cli;

import hark.assessment.TreeAgainstSimulation;
import hark.cli.TableWriter.Column;
import hark.mission.DefaultUsed;
import hark.mission.Mission;
import hark.mission.MissionCheck;
import hark.mission.MissionFolder;
import hark.orbit.EarthModel;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code hark check MISSION}: validates a mission folder. */
@Command(
    name = "check",
    description = {
      "Validate a mission folder: every problem at once, exit code 2 if there is any.",
      "Warnings are worth a look and leave the exit code at 0. Weekly windows and calendar"
          + " rules for stations come later and are refused by name."
    },
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  private static final TableWriter FINDINGS =
      new TableWriter(
          "findings",
          List.of(
              Column.text("kind"), Column.text("where"), Column.text("what"), Column.text("mend")));

  @Spec private CommandSpec spec;
  @Mixin private FormatOption format;

  @Parameters(paramLabel = "MISSION", description = "The mission folder.")
  private Path folder;

  @Option(
      names = "--show-defaults",
      description = "Also list every key that is not written, and the value taken for it.")
  private boolean showDefaults;

  @Override
  public Integer call() {
    MissionCheck check = withTree(MissionFolder.check(folder));
    PrintWriter out = spec.commandLine().getOut();
    if (format.format() != OutputFormat.TABLE) {
      FINDINGS.write(format.format(), rows(check), out);
      return check.problems().isEmpty() ? ExitCode.DONE : ExitCode.BAD_INPUT;
    }
    check.mission().ifPresent(mission -> out.println(summary(mission)));
    check.notes().forEach(note -> out.println("Note: " + note.what()));
    print(out, "Warnings", check.warnings().stream().map(Problem::line).toList());
    if (showDefaults) {
      print(out, "Defaults used", check.defaults().stream().map(CheckCommand::line).toList());
      print(out, "Read and checked, nothing computed from them yet", check.notComputed());
    }
    out.flush();
    if (!check.problems().isEmpty()) {
      throw new BadInput(check.problems());
    }
    return ExitCode.DONE;
  }

  /** Adds what only a simulation can tell of a folder that is otherwise in order. */
  private static MissionCheck withTree(MissionCheck check) {
    if (check.mission().isEmpty() || !check.problems().isEmpty()) {
      return check;
    }
    List<Problem> warnings = new ArrayList<>(check.warnings());
    warnings.addAll(TreeAgainstSimulation.warnings(check.mission().get(), EarthModel.bundled()));
    return new MissionCheck(
        check.mission(),
        check.problems(),
        warnings,
        check.notes(),
        check.defaults(),
        check.notComputed(),
        check.numbers());
  }

  private static String summary(Mission mission) {
    long objects = mission.sources().stream().mapToLong(s -> s.candidates().size()).sum();
    return String.join(
        " · ",
        mission.name(),
        count(mission.stations().size(), "station"),
        count(objects, "candidate object"),
        count(mission.body().keys().size(), "uncertain number"),
        count(mission.causes().size(), "cause"),
        count(mission.procedures().size(), "procedure"),
        "no problem");
  }

  private static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private static String line(DefaultUsed used) {
    return used.key() + ": " + used.value();
  }

  private static void print(PrintWriter out, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      out.println();
      out.println(heading);
      lines.forEach(line -> out.println("  " + line));
    }
  }

  private List<Object[]> rows(MissionCheck check) {
    List<Object[]> rows = new ArrayList<>();
    check.problems().forEach(problem -> rows.add(row("problem", problem)));
    check.warnings().forEach(problem -> rows.add(row("warning", problem)));
    check.notes().forEach(problem -> rows.add(row("note", problem)));
    if (showDefaults) {
      check.defaults().forEach(d -> rows.add(new Object[] {"default", d.key(), d.value(), null}));
      check.notComputed().forEach(k -> rows.add(new Object[] {"not computed", k, null, null}));
    }
    return rows;
  }

  private static Object[] row(String kind, Problem problem) {
    return new Object[] {kind, problem.where(), problem.what(), problem.mend()};
  }
}
