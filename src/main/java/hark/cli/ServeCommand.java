package hark.cli;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.assessment.Examination;
import hark.console.ConsoleSettings;
import hark.console.MissionModel;
import hark.document.Brief;
import hark.orbit.EarthModel;
import hark.problem.BadInput;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code hark serve MISSION}: the console, until it is interrupted. */
@Command(
    name = "serve",
    description = {
      "Serve the console: one page that says what to do next and why, and takes down what happened.",
      "It listens on this machine only. Log-ins for a crew come later, and until then any other"
          + " address is refused."
    },
    mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private EarthOption earth;

  @Parameters(
      arity = "0..1",
      paramLabel = "MISSION",
      description = "The mission folder; left out with --demo.")
  private Path folder;

  @Option(names = "--demo", description = "Serve the built-in demo; nothing logged is kept.")
  private boolean demo;

  @Option(names = "--brief", description = "Print the brief first.")
  private boolean brief;

  @Option(
      names = "--bind",
      paramLabel = "A",
      defaultValue = "127.0.0.1",
      description = "Loopback address to listen on (default: ${DEFAULT-VALUE}).")
  private String bind;

  @Option(
      names = "--port",
      paramLabel = "P",
      defaultValue = "8417",
      description = "Port to listen on; 0 takes a free one (default: ${DEFAULT-VALUE}).")
  private int port;

  @Option(
      names = "--now",
      paramLabel = "T",
      description = {
        "Rehearse: the clock runs on from this time, UTC. A mission without a clock of its own",
        "is then served on a copy of its journal."
      })
  private Instant now;

  @Option(
      names = "--speed",
      paramLabel = "X",
      description = "Rehearse at this many seconds a second, up to 3600 (default with --now: 1).")
  private Double speed;

  @Option(
      names = "--days",
      paramLabel = "D",
      defaultValue = "" + AssessmentRequest.USUAL_HORIZON_DAYS,
      description = "How far to look ahead, days up to 60 (default: ${DEFAULT-VALUE}).")
  private double days;

  @Mixin private DrawOptions draws;

  @Option(
      names = "--web",
      hidden = true,
      paramLabel = "DIR",
      description = "Serve the page's files from a folder, for those who work on the page.")
  private Path web;

  @Override
  public Integer call() {
    if (demo == (folder != null)) {
      throw new ParameterException(
          spec.commandLine(),
          demo
              ? "--demo takes no mission folder; leave one of them out"
              : "name a mission folder, or take --demo");
    }
    ConsoleSettings settings = ConsoleSettings.of(bind, port);
    if (web != null) {
      settings = settings.withWebFolder(web.toAbsolutePath());
    }
    request(Instant.EPOCH);
    serve(settings);
    return ExitCode.DONE;
  }

  private void serve(ConsoleSettings settings) {
    Main main = Main.of(spec);
    PrintWriter out = spec.commandLine().getOut();
    EarthModel model = earth.earth();
    MissionModel.Working working =
        new MissionModel.Working(
            (of, entries, now) -> worked(Assessor.examine(of, entries, request(now), model)),
            model,
            Optional.empty());
    Pace pace = new Pace(main.clock(), Optional.ofNullable(now), Optional.ofNullable(speed));
    Desk desk = demo ? Desk.demo(pace, working) : Desk.folder(folder, pace, working);
    try {
      desk.serve(settings);
      if (brief) {
        out.println(Brief.of(desk.assess(), false, desk.mayAuthorise()));
      }
    } catch (RuntimeException e) {
      desk.close();
      throw e;
    }
    out.println(desk.name() + " is served on " + desk.address() + " (Ctrl-C stops it)");
    out.flush();
    Runtime.getRuntime().addShutdownHook(new Thread(desk::close, "hark-stop"));
    Lingering.serving();
  }

  private static MissionModel.Worked worked(Examination examination) {
    return new MissionModel.Worked(
        examination.assessment(),
        Optional.of(examination.energy()),
        Optional.of(examination.plan()),
        Optional.of(examination.goingOn()),
        Optional.of(examination.firstLook()));
  }

  private AssessmentRequest request(Instant now) {
    try {
      int threads = AssessmentRequest.at(now).threads();
      return new AssessmentRequest(now, days, draws.members(), draws.seed(), threads);
    } catch (IllegalArgumentException e) {
      throw BadInput.of(e.getMessage(), "--days, --members", "take the usual numbers");
    }
  }
}
