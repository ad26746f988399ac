package hark.plan;

import hark.ensemble.Diagnosis;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.Particles;
import hark.ensemble.SkyWindow;
import hark.station.Station;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts windows, options and possibilities into the bare numbers of a {@link PlanProblem}. */
final class Setup {
  /** A reception this much later is worth 1/e, d. Judged: within days batteries and hope fade. */
  static final double EARLY_DAYS = 3;

  /** Commands in one plan: more would rest on possibilities of possibilities. Judged. */
  static final int MOST_COMMANDS = 3;

  /** Possibilities that follow commands: every so manieth, odd, so that both halves are there. */
  private static final int COMMAND_STRIDE = 5;

  /** What a check shows to be deaf is mended so often by the next day, 0…1. Judged. */
  private static final double MENDED = 0.8;

  private static final double DAY_SECONDS = 86_400;

  private final Diagnosis diagnosis;
  private final DiagnosisInput input;
  private final List<List<WindowOption>> options;
  private final Chances chances;
  private final Costs costs;
  private final PlanSettings settings;
  private final Settling settling;

  Setup(
      Diagnosis diagnosis,
      List<List<WindowOption>> options,
      Chances chances,
      Costs costs,
      PlanSettings settings,
      Settling settling) {
    this.diagnosis = diagnosis;
    this.input = diagnosis.input();
    this.options = options;
    this.chances = chances;
    this.costs = costs;
    this.settings = settings;
    this.settling = settling;
  }

  PlanProblem problem(Particles particles, Weeks weeks) {
    CommandTree tree =
        new CommandTree(diagnosis.windows(), particles, chances, COMMAND_STRIDE, options);
    return new PlanProblem(
        timetable(weeks),
        moves(),
        limits(weeks),
        List.of(half(PlanProblem.CHOOSE), half(PlanProblem.VALUE)),
        tree,
        Particles.noSlip(),
        EARLY_DAYS,
        settings.leastGainPerHour());
  }

  private Rows half(int first) {
    int all = chances.works.length;
    double[] weight = new double[all];
    Arrays.fill(weight, 1.0 / Math.max(1, (all - first + 1) / 2));
    Map<List<Object>, float[]> known = new HashMap<>();
    Rows.Heard heard =
        new Rows.Heard() {
          @Override
          public float[] at(int window, int move) {
            return options.get(window).get(move).listens() ? chances.heard[window][move] : null;
          }

          @Override
          public float[] better(Procedure.Question question, int window) {
            return known.computeIfAbsent(
                List.of(question, window), key -> settling.betters(question, window));
          }
        };
    return new Rows(weight, chances.works, heard, first, 2);
  }

  private Timetable timetable(Weeks weeks) {
    List<SkyWindow> windows = diagnosis.windows();
    int count = windows.size();
    double now = input.seconds(input.now());
    int[] station = new int[count];
    int[] week = new int[count];
    double[] begin = new double[count];
    double[] end = new double[count];
    double[] session = new double[count];
    double[] pass = new double[count];
    double[] antenna = new double[count];
    for (int w = 0; w < count; w++) {
      SkyWindow window = windows.get(w);
      station[w] = window.station();
      Instant from = input.instant(window.from());
      week[w] = weeks.index(from);
      begin[w] = (window.from() - now) / DAY_SECONDS;
      end[w] = (window.to() - now) / DAY_SECONDS;
      session[w] = costs.sessionHours(w);
      pass[w] = costs.passHours(w);
      antenna[w] = 24 * (end[w] - begin[w]);
    }
    double horizon = (input.seconds(input.end()) - now) / DAY_SECONDS;
    return new Timetable(station, begin, end, session, pass, antenna, week, horizon);
  }

  private List<List<Move>> moves() {
    List<List<Move>> moves = new ArrayList<>();
    for (int w = 0; w < options.size(); w++) {
      List<Move> here = new ArrayList<>();
      for (WindowOption option : options.get(w)) {
        here.add(move(w, option));
      }
      moves.add(here);
    }
    return moves;
  }

  private Move move(int window, WindowOption option) {
    Procedure procedure = option.procedure();
    Procedure.Change change = procedure.change();
    double hours = costs.extraHours(window, procedure);
    if (!option.listens()) {
      return new Move(Move.Kind.STAY, 0, false, 0, 0, Optional.empty());
    }
    if (change instanceof Procedure.Command) {
      return new Move(Move.Kind.COMMAND, hours, false, 0, 0, Optional.empty());
    }
    if (change instanceof Procedure.Listen listen) {
      boolean outside = listen.setting().who() == Procedure.Who.OUTSIDE || listen.extraGainDb() > 0;
      return new Move(Move.Kind.LISTEN, hours, outside, departures(listen), 0, Optional.empty());
    }
    double mends =
        change instanceof Procedure.SelfCheck ? MENDED * (1 - Diagnosis.checkHeard(0)) : 0;
    Optional<Procedure.Question> settles =
        change instanceof Procedure.Settle settle
            ? Optional.of(settle.question())
            : Optional.empty();
    return new Move(Move.Kind.DESK, hours, false, 1, mends, settles);
  }

  /** How far a way of listening departs from the station's usual one. */
  private static int departures(Procedure.Listen listen) {
    return (listen.windowHz().isPresent() ? 1 : 0)
        + (listen.way().isPresent() ? 1 : 0)
        + (listen.offsetSeconds() != 0 ? 2 : 0)
        + (listen.setting().otherHand() ? 2 : 0)
        + (listen.otherCandidate() ? 3 : 0)
        + (listen.extraGainDb() > 0 ? 4 : 0);
  }

  private Limits limits(Weeks weeks) {
    List<Station> stations = input.stations();
    return new Limits(
        weeks.grantedHours(),
        stations.stream().mapToDouble(station -> station.use().hoursPerWeek()).toArray(),
        settings.outsideHoursPerWeek(),
        settings.commandGapHours() / 24,
        MOST_COMMANDS);
  }
}
