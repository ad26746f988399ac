package hark.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * Entry point of the command line: picks the command, turns every failure into plain words and an
 * exit code.
 */
@Command(
    name = "hark",
    description = "When to listen to a silent satellite, what to try, and whether to go on.",
    mixinStandardHelpOptions = true,
    version = "hark 0.1.0",
    footer = {
      "",
      "With later versions come: new, search, crew.",
      "hark COMMAND --help says more. Times are UTC with a Z. Exit codes: 0 done,",
      "1 could not be done, 2 wrong usage or bad input, 3 a defect of hark."
    },
    subcommands = {
      // one line a command, in the order a newcomer needs them
      DemoCommand.class,
      ServeCommand.class,
      CheckCommand.class,
      BriefCommand.class,
      PlanCommand.class,
      CaseCommand.class,
      LogCommand.class,
      JournalCommand.class,
      NoteCommand.class,
      SheetCommand.class,
      AssessCommand.class,
      EnergyCommand.class,
      OrbitCommand.class,
      WhoseCommand.class,
      PassesCommand.class,
      TrackCommand.class,
      EclipsesCommand.class,
      EphemerisCommand.class,
      FaultTreeCommand.class,
      TrialCommand.class,
    })
public final class Main implements Runnable {
  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  @CommandLine.Option(
      names = "--debug",
      scope = CommandLine.ScopeType.INHERIT,
      description = "Show the stack trace of a failure.")
  private boolean debug;

  private final Clock clock;

  Main(Clock clock) {
    this.clock = clock;
  }

  /** Runs one command and exits with its code. */
  public static void main(String[] args) {
    int code = run(Clock.systemUTC(), utf8(System.out), utf8(System.err), args);
    if (code != ExitCode.DONE || !Lingering.isServing()) {
      System.exit(code);
    }
  }

  /** Runs one command against given streams; returns the exit code and never exits. */
  static int run(Clock clock, PrintWriter out, PrintWriter err, String... args) {
    Main main = new Main(clock);
    CommandLine line = new CommandLine(main);
    Seed.acceptEverywhere(line);
    line.setOut(out).setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.registerConverter(java.time.Instant.class, UtcTime::parse);
    line.setParameterExceptionHandler(Failures::wrongUsage);
    line.setExecutionExceptionHandler(
        (failure, command, parsed) -> Failures.report(failure, command, main.debug));
    int code = line.execute(args);
    out.flush();
    err.flush();
    return code;
  }

  /** The clock every command must use. */
  Clock clock() {
    return clock;
  }

  /** The root command of a subcommand's spec. */
  static Main of(CommandLine.Model.CommandSpec spec) {
    return (Main) spec.root().userObject();
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  private static PrintWriter utf8(java.io.OutputStream stream) {
    return new PrintWriter(stream, false, StandardCharsets.UTF_8);
  }
}
