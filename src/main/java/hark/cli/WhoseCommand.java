package hark.cli;

import hark.assessment.CurveDesk;
import hark.document.CurvePlot;
import hark.document.WhoseJson;
import hark.document.WhoseReport;
import hark.ensemble.Candidate;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.evidence.EvidenceBook;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.orbit.ElementText;
import hark.problem.BadInput;
import hark.problem.Problem;
import hark.signal.CurveFiles;
import hark.signal.DopplerCurve;
import hark.signal.Refinement;
import hark.signal.Whose;
import hark.signal.WhoseAnswer;
import hark.signal.WhoseQuestion;
import hark.station.Station;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code hark whose MISSION CURVE…}: which candidate sent what was measured. */
@Command(
    name = "whose",
    description = {
      "Compare Doppler curves with every candidate: one lateness for each, a carrier and a drift for"
          + " each pass, a clock error for each station, all with their priors.",
      "A curve is a CCSDS tracking data message (KVN or XML) or CSV with the columns"
          + " time,frequencyHz and, if wanted, sigmaHz and station: received frequencies in Hz.",
      "--times weighs start and end of what the record says was heard as well, or alone when no curve"
          + " is named."
    },
    footer = {
      "",
      "Examples:",
      "  hark whose my-mission curves/first-contact.csv --station Saltmere",
      "  hark whose my-mission mon.tdm tue.tdm --refine refined --plot whose.svg"
    },
    mixinStandardHelpOptions = true)
final class WhoseCommand implements Callable<Integer> {
  private static final long LONGEST_BYTES = 8 * 1024 * 1024;

  @Spec private CommandSpec spec;
  @Mixin private EarthOption earth;
  @Mixin private FormatOption format;

  @Parameters(index = "0", paramLabel = "MISSION", description = "The mission folder.")
  private Path folder;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "CURVE",
      description = "Files of curves; several passes and stations may be in one or in many.")
  private List<Path> files = List.of();

  @Option(
      names = "--times",
      description =
          "Weigh start and end of each entry 'heard' against the candidates' rise and set. Not for"
              + " --log: the assessment weighs those entries by itself.")
  private boolean times;

  @Option(
      names = "--station",
      paramLabel = "NAME",
      description = "The station of files that name none (default: the mission's, if it has one).")
  private String station;

  @Option(
      names = "--now",
      paramLabel = "T",
      description = "Use element sets known by this time, UTC (default: the mission's clock).")
  private Instant now;

  @Option(
      names = "--refine",
      paramLabel = "NAME",
      description =
          "Correct the orbit of the object found and write it to NAME.omm and NAME.tle; refuses when"
              + " it cannot tell.")
  private Path refine;

  @Option(
      names = "--plot",
      paramLabel = "FILE",
      description = "Draw measured and expected curves with their differences as SVG.")
  private Path plot;

  @Option(names = "--log", description = "Write the object found into the journal.")
  private boolean log;

  @Override
  public Integer call() {
    if (format.format() == OutputFormat.CSV) {
      throw new ParameterException(spec.commandLine(), "whose prints table or json");
    }
    MissionRecord record = MissionRecord.read(folder);
    Instant at = now == null ? record.now(Main.of(spec).clock()) : now;
    EarthModel model = earth.earth();
    refuseNothing();
    List<DopplerCurve> curves = curves(record.mission(), model);
    CurveDesk desk = new CurveDesk(record.mission(), model, at);
    PrintWriter out = spec.commandLine().getOut();
    boolean json = format.format() == OutputFormat.JSON;
    Map<String, Double> weights =
        times ? byTimes(record, desk, at, json && files.isEmpty()) : Map.of();
    if (files.isEmpty()) {
      out.flush();
      return ExitCode.DONE;
    }
    WhoseQuestion question = desk.question(curves, weights);
    WhoseAnswer answer = Whose.of(question);
    out.print(json ? WhoseJson.text(answer) : WhoseReport.of(question, answer));
    if (plot != null) {
      write(plot, CurvePlot.of(question, answer));
    }
    if (refine != null) {
      Refinement refined = refine(desk, question, answer, at);
      out.print(json ? "" : WhoseReport.of(refined));
    }
    if (log) {
      note(record, model, curves, answer);
    }
    out.flush();
    return ExitCode.DONE;
  }

  private void refuseNothing() {
    if (files.isEmpty() && !times) {
      throw new ParameterException(
          spec.commandLine(), "Which curves? Name files, or give --times for what was heard.");
    }
    boolean wantsFit = refine != null || plot != null || log;
    boolean tooLittle = files.isEmpty() ? wantsFit : times && log;
    if (tooLittle) {
      throw new ParameterException(
          spec.commandLine(), "--times says too little for --refine, --plot and --log.");
    }
  }

  private Map<String, Double> byTimes(
      MissionRecord record, CurveDesk desk, Instant at, boolean alone) {
    List<Evidence.Heard> contacts =
        EvidenceBook.effective(record.entries(), at).stream()
            .map(Entry::evidence)
            .filter(Evidence.Heard.class::isInstance)
            .map(Evidence.Heard.class::cast)
            .toList();
    if (contacts.isEmpty()) {
      throw new CouldNot("nothing was heard by then, so there are no times to weigh", null);
    }
    Map<String, Double> weights = desk.byTimes(contacts);
    PrintWriter out = spec.commandLine().getOut();
    boolean json = format.format() == OutputFormat.JSON;
    out.print(
        !json
            ? WhoseReport.byTimes(contacts.size(), weights)
            : alone ? WhoseJson.byTimes(weights) : "");
    return weights;
  }

  private List<DopplerCurve> curves(Mission mission, EarthModel model) {
    List<String> stations = mission.stations().stream().map(Station::name).toList();
    String named = station == null ? "" : station;
    if (station == null && stations.size() == 1) {
      named = stations.get(0);
    }
    if (!named.isEmpty() && !stations.contains(named)) {
      throw BadInput.of(
          "no station is called " + named,
          "--station",
          hark.problem.NearestWord.advice(named, stations));
    }
    CurveFiles.Setting setting =
        new CurveFiles.Setting(stations, named, mission.beacons().get(0).frequencyHz(), model);
    List<DopplerCurve> curves = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Path file : files) {
      try {
        curves.addAll(
            CurveFiles.parse(file.toString(), InputText.read(file, LONGEST_BYTES), setting));
      } catch (BadInput bad) {
        problems.addAll(bad.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    return curves;
  }

  private Refinement refine(
      CurveDesk desk, WhoseQuestion question, WhoseAnswer answer, Instant at) {
    int found = found(answer);
    String object = answer.found().get(found).objectId();
    Refinement refined = Refinement.of(question, found, desk.perDaySeconds(object));
    String remark =
        String.format(
            java.util.Locale.ROOT,
            "from Doppler curves; along track known to %.1f km (1 sigma) at %s",
            refined.alongTrackSdMeters() / 1000,
            UtcTime.print(refined.at()));
    write(Path.of(refine + ".omm"), ElementText.omm(refined.elements(), at, remark));
    write(Path.of(refine + ".tle"), ElementText.twoLines(refined.elements()));
    return refined;
  }

  /** The suspect that was found, or a refusal: nothing is built on a guess. */
  private static int found(WhoseAnswer answer) {
    WhoseAnswer.Found top = answer.likeliest();
    boolean named = !top.objectId().equals(Candidate.NONE);
    if (answer.verdict() != WhoseAnswer.Verdict.FOUND || !named) {
      throw new CouldNot("not refined, not logged: " + WhoseReport.verdict(answer), null);
    }
    return answer.found().indexOf(top);
  }

  private void note(
      MissionRecord record, EarthModel model, List<DopplerCurve> curves, WhoseAnswer answer) {
    String object = answer.found().get(found(answer)).objectId();
    DopplerCurve first = curves.get(0);
    Instant time = first.points().get(0).time();
    java.util.Map<String, String> keys = new java.util.TreeMap<>();
    keys.put("file", folder.toAbsolutePath().relativize(files.get(0).toAbsolutePath()).toString());
    keys.put("station", first.station());
    keys.put("object", object);
    int number = record.log(Main.of(spec).clock(), model, time, "doppler", keys).number();
    spec.commandLine().getErr().println("Entry " + number + " says: object " + object + ".");
  }

  private static void write(Path file, String text) {
    try {
      Files.writeString(file, text, StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      throw BadInput.of("the file is there already", file.toString(), "name another");
    } catch (IOException e) {
      throw new CouldNot(file + " could not be written: " + e.getMessage(), e);
    }
  }
}
