package hark.cli;

import hark.mission.Mission;
import hark.problem.BadInput;
import hark.trial.campaign.Settings;
import hark.trial.campaign.Trial;
import hark.trial.follow.FollowSettings;
import hark.trial.follow.FollowTrial;
import hark.trial.score.Closeness;
import hark.trial.score.FollowReport;
import hark.trial.score.FollowText;
import hark.trial.score.Followed;
import hark.trial.score.Outcome;
import hark.trial.score.Report;
import hark.trial.score.ReportText;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.IntConsumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code hark trial MISSION}: are the percentages true, and is the plan worth its hours? */
@Command(
    name = "trial",
    description = {
      "Simulates campaigns whose truth is known and holds the diagnosis against it.",
      "With --follow it follows campaigns under rules instead, the plan among them.",
      "Hundreds of campaigns take hours. The figures are explained in",
      "src/docs/trials.md."
    },
    mixinStandardHelpOptions = true)
final class TrialCommand implements Callable<Integer> {
  private static final double DIAGNOSED_DAYS = 14;
  private static final double FOLLOWED_DAYS = 30;

  @Spec private CommandSpec spec;
  @Mixin private EarthOption earth;
  @Mixin private DrawOptions draws;
  @Mixin private FollowOptions follow;

  @Parameters(
      paramLabel = "MISSION",
      description = "The mission folder; its journal is left alone.")
  private Path folder;

  @Option(
      names = "--campaigns",
      paramLabel = "N",
      description =
          "Campaigns whose contact is lost (default: ${DEFAULT-VALUE}). Seeds 1 to 999 are for"
              + " tuning.")
  private int campaigns = 200;

  @Option(
      names = "--days",
      paramLabel = "D",
      description =
          "Days from separation to the diagnosis, 2 to 30 (default: 14); with --follow from the"
              + " silence on, 1 to 30 (default: 30).")
  private Double days;

  @Option(
      names = "--truth",
      paramLabel = "WORLD",
      description =
          "same: truths come from the mission's own beliefs. shifted: from a world the crew did not"
              + " think of (default: same).")
  private Settings.Kind truth = Settings.Kind.SAME;

  @Option(
      names = "--cases",
      paramLabel = "K",
      description =
          "Work out the first K campaigns once more with twenty times the bodies, and say how far"
              + " apart the answers are. Each takes minutes (default: ${DEFAULT-VALUE}).")
  private int cases;

  @Option(
      names = "--own-bodies",
      description =
          "Diagnose each campaign with bodies drawn for its record, as users are; else all campaigns"
              + " share eight times as many, which is five to ten times faster.")
  private boolean ownBodies;

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
    refuseNonsense();
    Mission mission = MissionRecord.read(folder).mission();
    PrintWriter print = spec.commandLine().getOut();
    try {
      print.print(follow.isAsked() ? followed(mission) : examined(mission));
    } catch (Trial.Impossible e) {
      throw BadInput.of(
          e.getMessage(), folder.toString(), "a mission that is never lost needs no trial");
    }
    print.flush();
    return ExitCode.DONE;
  }

  private String examined(Mission mission) {
    Trial trial = new Trial(mission, settings(), earth.earth());
    List<Outcome> outcomes =
        withBar("campaigns", campaigns, bar -> trial.run(file(), resume, threads, bar));
    List<Closeness> close =
        cases == 0 ? List.of() : withBar("cases", cases, bar -> trial.cases(cases, threads, bar));
    Report report = Report.of(trial.subject(), outcomes, close);
    return format == OutputFormat.JSON ? ReportText.json(report) : ReportText.markdown(report);
  }

  private String followed(Mission mission) {
    FollowTrial trial = new FollowTrial(mission, followSettings(), earth.earth());
    List<Followed> all =
        withBar("campaigns", campaigns, bar -> trial.run(file(), resume, threads, bar));
    FollowReport report = FollowReport.of(trial.subject(), all);
    return format == OutputFormat.JSON ? FollowText.json(report) : FollowText.markdown(report);
  }

  private <T> T withBar(String what, int count, Function<IntConsumer, T> work) {
    ProgressBar bar = new ProgressBar(spec.commandLine().getErr(), what, count);
    try {
      return work.apply(bar::show);
    } finally {
      bar.end();
    }
  }

  private Optional<Path> file() {
    return Optional.ofNullable(out);
  }

  private void refuseNonsense() {
    if (format == OutputFormat.CSV) {
      throw refused("trial prints table or json", null);
    }
    if (resume && out == null) {
      throw refused("--resume needs the results file: add --out FILE", null);
    }
    if (threads < 1 || cases < 0) {
      throw refused("--threads is at least 1 and --cases at least 0", null);
    }
    if (follow.isAsked() && cases > 0) {
      throw refused("--cases belongs to a trial of the diagnosis, without --follow", null);
    }
  }

  private ParameterException refused(String why, Throwable cause) {
    return new ParameterException(spec.commandLine(), why, cause);
  }

  private Settings settings() {
    try {
      double until = days == null ? DIAGNOSED_DAYS : days;
      return new Settings(campaigns, until, draws.seed(), truth, draws.members(), ownBodies);
    } catch (IllegalArgumentException e) {
      throw refused(e.getMessage(), e);
    }
  }

  private FollowSettings followSettings() {
    try {
      return new FollowSettings(
          campaigns,
          days == null ? FOLLOWED_DAYS : days,
          draws.seed(),
          truth,
          draws.members(),
          follow.hours(),
          follow.rules(),
          follow.without(),
          follow.replanHours(),
          follow.planBy());
    } catch (IllegalArgumentException e) {
      throw refused(e.getMessage(), e);
    }
  }
}
