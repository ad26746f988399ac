package hark.cli;

import hark.journal.JournalUnavailable;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * Turns failures into words for people and an exit code; a stack trace appears only with {@code
 * --debug}.
 */
final class Failures {
  /** Commands agreed on and not built yet; the program's help names them. */
  static final List<String> LATER = List.of("new", "search", "crew");

  private Failures() {}

  static int wrongUsage(ParameterException failure, String[] args) {
    CommandLine command = failure.getCommandLine();
    PrintWriter err = command.getErr();
    boolean later = args.length > 0 && command.getParent() == null && LATER.contains(args[0]);
    err.println(later ? "hark " + args[0] + " comes with a later version" : failure.getMessage());
    err.println("see: " + command.getCommandSpec().qualifiedName(" ") + " --help");
    return ExitCode.BAD_INPUT;
  }

  static int report(Exception failure, CommandLine command, boolean debug) {
    PrintWriter err = command.getErr();
    if (debug) {
      failure.printStackTrace(err);
    }
    if (failure instanceof BadInput bad) {
      for (Problem problem : bad.problems()) {
        err.println(problem.line());
      }
      return ExitCode.BAD_INPUT;
    }
    if (failure instanceof CouldNot || failure instanceof JournalUnavailable) {
      err.println(failure.getMessage());
      return ExitCode.COULD_NOT;
    }
    err.println("An unexpected defect stopped the command: " + failure);
    err.println("Nothing was changed. Run it again with --debug and keep the text for a report.");
    return ExitCode.DEFECT;
  }
}
