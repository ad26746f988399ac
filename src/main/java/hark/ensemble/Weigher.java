package hark.ensemble;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;

/**
 * Weighs one member at every node of a group, clue by clue. What a clue means stands with its kind;
 * here it is only multiplied in where it belongs.
 */
final class Weigher {
  private final DiagnosisInput input;
  private final Receptions receptions;
  private final List<List<StationMode>> modes = new ArrayList<>();
  private final Map<CommandGiven, Map<HearingNodes, double[][]>> levels = new ConcurrentHashMap<>();

  /** A weigher for a population; {@code bodies} is how many it has. */
  Weigher(DiagnosisInput input, Ear ear, int bodies) {
    this(input, ear, bodies, StationModes::of);
  }

  /** The same with chosen modes of each station's health. */
  Weigher(
      DiagnosisInput input,
      Ear ear,
      int bodies,
      BiFunction<DiagnosisInput, Integer, List<StationMode>> modesOf) {
    this.input = input;
    this.receptions =
        new Receptions(input.beacons(), ear, new HeardMemory(input.evidence().size(), bodies));
    for (int s = 0; s < input.stations().size(); s++) {
      modes.add(modesOf.apply(input, s));
    }
  }

  /** The same with a memory of its own. */
  Weigher(DiagnosisInput input, Ear ear, Remembering memory) {
    this.input = input;
    this.receptions = new Receptions(input.beacons(), ear, memory);
    for (int s = 0; s < input.stations().size(); s++) {
      modes.add(StationModes.of(input, s));
    }
  }

  /** A state before any clue. */
  NodeState begin(HearingNodes nodes) {
    return new NodeState(nodes, modes);
  }

  /** Modes of a station's health, the one that works as believed first. */
  List<StationMode> modes(int station) {
    return modes.get(station);
  }

  /** Forgets a body of which every member has been weighed. */
  void forget(int body) {
    receptions.forget(body);
  }

  /**
   * What the nodes of a group would meet, by {@code [mode][beacon]}; empty for clues that are not
   * listening.
   */
  LazyTables tables(Clue clue, HearingNodes group) {
    int rows = clue instanceof ListeningClue ours ? modes.get(ours.window().station()).size() : 0;
    return new LazyTables(rows, () -> made(clue, group));
  }

  private HearingTable[][] made(Clue clue, HearingNodes group) {
    if (clue instanceof OutsideClue outside) {
      SkyWindow[] windows = Receptions.windows(outside);
      HearingTable[][] tables = new HearingTable[windows.length][];
      for (int k = 0; k < tables.length; k++) {
        tables[k] =
            Tables.elsewhere(input, outside.station(), windows[k], outside.listening(), group);
      }
      return tables;
    }
    return clue instanceof ListeningClue listened
        ? Tables.of(
            input,
            listened.window(),
            listened.listening(),
            group,
            modes.get(listened.window().station()))
        : new HearingTable[0][];
  }

  /**
   * Multiplies one clue into the state; returns the chance of its kind of outcome together with all
   * before.
   */
  double apply(Clue clue, Member member, Body body, LazyTables tables, NodeState state) {
    if (clue instanceof ListeningClue listened) {
      return applyHeard(clue, heard(listened, member, body, tables), state);
    }
    if (clue instanceof OutsideClue outside) {
      return applyHeard(clue, heard(outside, member, body, tables), state);
    }
    if (clue instanceof CommandGiven given) {
      command(given, member, body, state);
      return state.total();
    }
    if (clue instanceof BodyClue told) {
      state.multiply(told.likelihood(member, body));
      return state.total();
    }
    return applyHeard(clue, null, state);
  }

  /** What a clue of ours says of a member. */
  Heard heard(ListeningClue clue, Member member, Body body, LazyTables tables) {
    return receptions.of(clue, member, body, tables);
  }

  /** What somebody else's report says of a member. */
  Heard heard(OutsideClue clue, Member member, Body body, LazyTables tables) {
    return receptions.of(clue, member, body, tables);
  }

  /**
   * As {@link #apply}, for clues that say nothing of the body itself; such as do leave the state.
   *
   * @param heard where somebody listened, what the clue says of the member
   */
  double applyHeard(Clue clue, Heard heard, NodeState state) {
    if (clue instanceof ListeningClue listened) {
      return listen(listened, heard, state);
    }
    if (clue instanceof StationClue check) {
      return check(check, state);
    }
    if (clue instanceof OutsideClue) {
      state.multiplyNodes(n -> heard.likelihood()[0][n]);
    } else if (clue instanceof NodeClue known) {
      state.multiplyNodes(n -> known.likelihood(state.nodes(), n));
    }
    return state.total();
  }

  private void command(CommandGiven given, Member member, Body body, NodeState state) {
    double[][] arriving =
        levels
            .computeIfAbsent(given, each -> new ConcurrentHashMap<>())
            .computeIfAbsent(state.nodes(), given.link()::levelsDbm);
    boolean taken = given.sent().isTakenBy(body);
    double[][] received = given.link().received(member, body, arriving, given.sent().repeats());
    if (received == null) {
      state.multiply(given.likelihood(taken, 0));
      return;
    }
    for (double[] row : received) {
      for (int n = 0; n < row.length; n++) {
        row[n] = given.likelihood(taken, row[n] * given.sent().works());
      }
    }
    state.multiply(given.link().station(), received, 1);
  }

  private double check(StationClue clue, NodeState state) {
    List<StationMode> all = modes.get(clue.station());
    double[][] outcome = new double[all.size()][state.nodes().count()];
    for (int m = 0; m < outcome.length; m++) {
      Arrays.fill(outcome[m], clue.outcome(all.get(m)));
    }
    double total = state.totalIf(clue.station(), outcome, 1);
    state.multiplyHealth(clue.station(), all.stream().mapToDouble(clue::likelihood).toArray());
    return total;
  }

  private static double listen(ListeningClue clue, Heard heard, NodeState state) {
    int station = clue.window().station();
    double outcome =
        clue.readsNumber()
            ? state.totalIf(station, heard.outcome(), heard.deafOutcome())
            : Double.NaN;
    state.multiply(station, heard.likelihood(), heard.deaf());
    return clue.readsNumber() ? outcome : state.total();
  }
}
