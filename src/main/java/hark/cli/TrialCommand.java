package hark.cli;

import hark.assessment.AssessmentRequest;
import hark.problem.BadInput;
import hark.trial.campaign.Settings;
import hark.trial.campaign.Trial;
import hark.trial.score.Closeness;
import hark.trial.score.Outcome;
import hark.trial.score.Report;
import hark.trial.score.ReportText;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code hark trial MISSION}: are the percentages true? */
@Command(
    name = "trial",
    description = {
      "Simulates campaigns whose truth is known and holds the diagnosis against it.",
      "Two thousand campaigns take the better part of an hour. The figures are",
      "explained in src/docs/trials.md."
    },
    mixinStandardHelpOptions = true)
final class TrialCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private EarthOption earth;

  @Parameters(
      paramLabel = "MISSION",
      description = "The mission folder; its journal is left alone.")
  private Path folder;

  @Option(
      names = "--campaigns",
      paramLabel = "N",
      description = "Campaigns whose contact is lost (default: ${DEFAULT-VALUE}).")
  private int campaigns = 200;

  @Option(
      names = "--days",
      paramLabel = "D",
      description = "Days from separation to the diagnosis, 2 to 30 (default: ${DEFAULT-VALUE}).")
  private double days = 14;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Seed of all draws; 1 to 999 are for tuning (default: ${DEFAULT-VALUE}).")
  private long seed = 1;

  @Option(
      names = "--truth",
      paramLabel = "WORLD",
      description =
          "same: truths come from the mission's own beliefs. shifted: from a world the crew did not"
              + " think of (default: same).")
  private Settings.Kind truth = Settings.Kind.SAME;

  @Option(names = "--members", paramLabel = "N", description = AssessOptions.MEMBERS)
  private int members = AssessmentRequest.USUAL_MEMBERS;

  @Option(
      names = "--cases",
      paramLabel = "K",
      description =
          "Work out the first K campaigns once more with twenty times the bodies, and say how far"
              + " apart the answers are. Each takes minutes (default: ${DEFAULT-VALUE}).")
  private int cases;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Keep each campaign's outcome in this file, a line of JSON each.")
  private Path out;

  @Option(names = "--resume", description = "Go on with the file of --out where it ended.")
  private boolean resume;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Campaigns worked on at once; the figures do not depend on it.")
  private int threads = Math.max(1, Math.min(8, Runtime.getRuntime().availableProcessors()));

  @Option(
      names = "--format",
      paramLabel = "F",
      defaultValue = "table",
      converter = OutputFormat.Converter.class,
      description = "table (Markdown) or json (default: ${DEFAULT-VALUE}).")
  private OutputFormat format;

  @Override
  public Integer call() {
    Settings settings = settings();
    Trial trial = new Trial(MissionRecord.read(folder).mission(), settings, earth.earth());
    PrintWriter err = spec.commandLine().getErr();
    ProgressBar bar = new ProgressBar(err, "campaigns", campaigns);
    List<Outcome> outcomes;
    try {
      outcomes = trial.run(Optional.ofNullable(out), resume, threads, bar::show);
    } catch (Trial.Impossible e) {
      throw BadInput.of(
          e.getMessage(), folder.toString(), "a mission that is never lost needs no trial");
    } finally {
      bar.end();
    }
    List<Closeness> close = List.of();
    if (cases > 0) {
      ProgressBar more = new ProgressBar(err, "cases", cases);
      close = trial.cases(cases, threads, more::show);
      more.end();
    }
    Report report = Report.of(trial.subject(), outcomes, close);
    PrintWriter print = spec.commandLine().getOut();
    boolean json = format == OutputFormat.JSON;
    print.print(json ? ReportText.json(report) : ReportText.markdown(report));
    print.flush();
    return ExitCode.DONE;
  }

  private Settings settings() {
    if (format == OutputFormat.CSV) {
      throw new ParameterException(spec.commandLine(), "trial prints table or json");
    }
    if (resume && out == null) {
      throw new ParameterException(
          spec.commandLine(), "--resume needs the results file: add --out FILE");
    }
    if (threads < 1 || cases < 0) {
      throw new ParameterException(
          spec.commandLine(), "--threads is at least 1 and --cases at least 0");
    }
    try {
      return new Settings(campaigns, days, seed, truth, members);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage(), e);
    }
  }
}
