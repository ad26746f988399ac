package hark.ensemble;

import hark.power.BodyHistory;
import hark.power.Illumination;
import hark.power.OnboardCommand;
import hark.power.Simulation;
import hark.power.SimulationRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Equally weighted possibilities, each a member at one hearing node, drawn systematically in the
 * order of event sets and bodies so that their shares follow the weights closely. What a station
 * can hear, and what a command would change, is asked of them.
 */
public final class Particles {
  /** A fault of the sending station less likely than this is not asked what it would change. */
  private static final double NEGLIGIBLE_MODE = 1e-3;

  private final Source source;
  private final int[] member;
  private final int[] node;

  /** What particles are drawn from. */
  record Source(
      DiagnosisInput input,
      Illumination light,
      Population population,
      Body[] ahead,
      HearingNodes[] nodes,
      Weighing weighing,
      Ear ear,
      double[] checkpoints) {}

  private Particles(Source source, int[] member, int[] node) {
    this.source = source;
    this.member = member;
    this.node = node;
  }

  static Particles draw(Source source, double[] memberWeight, int count) {
    double total = Arrays.stream(memberWeight).sum();
    int[] members = new int[count];
    int[] nodes = new int[count];
    double sum = 0;
    int next = 0;
    for (int m = 0; m < memberWeight.length && next < count; m++) {
      float[] share = source.weighing().nodeShare[m];
      for (int n = 0; n < share.length && next < count; n++) {
        sum += memberWeight[m] * share[n] / total;
        while (next < count && sum * count > next + 0.5) {
          members[next] = m;
          nodes[next] = n;
          next++;
        }
      }
    }
    return new Particles(source, Arrays.copyOf(members, next), Arrays.copyOf(nodes, next));
  }

  /** How many. */
  public int count() {
    return member.length;
  }

  /** Every {@code stride}-th of them. */
  public Particles thinned(int stride) {
    int kept = (member.length + stride - 1) / stride;
    int[] members = new int[kept];
    int[] nodes = new int[kept];
    for (int k = 0; k < kept; k++) {
      members[k] = member[k * stride];
      nodes[k] = node[k * stride];
    }
    return new Particles(source, members, nodes);
  }

  /** Index of the event set. */
  public int set(int particle) {
    return member(particle).set();
  }

  /** Group of bodies, for errors. */
  public int group(int particle) {
    return member(particle).group();
  }

  /** Onsets of the set's events, s since separation. */
  public double[] onsets(int particle) {
    return member(particle).onsets().clone();
  }

  /** Chance that a station works, given this possibility and the evidence. */
  public double works(int particle, int station) {
    return source.weighing().works[station][member[particle]][node[particle]];
  }

  private Member member(int particle) {
    return source.population().members.get(member[particle]);
  }

  private int hearings(int particle) {
    return member(particle).hearings(source.nodes().length);
  }

  private Body body(int particle) {
    return source.ahead()[member(particle).body()];
  }

  /**
   * What {@link Hearing#chance} says, for several ways of listening at once, {@code
   * [way][particle]}: bursts are looked up once for all of them, and ways that aim alike share what
   * they meet.
   */
  public float[][] chances(SkyWindow window, List<Listening> ways) {
    HearingNodes[] groups = source.nodes();
    HearingTable[][][][] tables = new HearingTable[groups.length][groups[0].count()][][];
    float[][] chances = new float[ways.size()][count()];
    Bursts bursts = null;
    int sender = -1;
    for (int p = 0; p < count(); p++) {
      if (!mayHear(window, member(p), body(p))) {
        continue;
      }
      if (member[p] != sender) {
        sender = member[p];
        bursts = Bursts.of(member(p), body(p), window.from(), window.to());
      }
      HearingTable[][] byWay = tables[hearings(p)][node[p]];
      if (byWay == null) {
        byWay = tables(window, ways, groups[hearings(p)], node[p]);
        tables[hearings(p)][node[p]] = byWay;
      }
      for (int w = 0; w < byWay.length; w++) {
        double miss = source.ear().miss(bursts, byWay[w], ways.get(w).way())[0];
        chances[w][p] = (float) (1 - miss);
      }
    }
    return chances;
  }

  /** Tables of one node, {@code [way][beacon]}. */
  private HearingTable[][] tables(
      SkyWindow window, List<Listening> ways, HearingNodes nodes, int n) {
    HearingTable[][] tables = new HearingTable[ways.size()][];
    for (int w = 0; w < tables.length; w++) {
      Listening way = ways.get(w);
      for (int known = 0; known < w && tables[w] == null; known++) {
        if (way.aimsAs(ways.get(known))) {
          tables[w] =
              Arrays.stream(tables[known])
                  .map(table -> table.within(way.windowHz()))
                  .toArray(HearingTable[]::new);
        }
      }
      tables[w] = tables[w] == null ? Tables.of(source.input(), window, way, nodes, n) : tables[w];
    }
    return tables;
  }

  private static boolean mayHear(SkyWindow window, Member possible, Body body) {
    double until = Math.min(window.to(), possible.radio().muteFrom());
    return Ear.Segments.any(body.history().segments(), window.from(), until);
  }

  /** What a window offers under one way of listening; tables are made once for all particles. */
  public Hearing hearing(SkyWindow window, Listening listening) {
    return new Hearing(window, listening);
  }

  /** A window listened to in one way. */
  public final class Hearing {
    private final SkyWindow window;
    private final Listening listening;
    private final HearingTable[][][] tables;

    private Hearing(SkyWindow window, Listening listening) {
      this.window = window;
      this.listening = listening;
      HearingNodes[] groups = source.nodes();
      tables = new HearingTable[groups.length][][];
      boolean[][] used = new boolean[groups.length][groups[0].count()];
      for (int p = 0; p < count(); p++) {
        used[hearings(p)][node[p]] |= mayHear(window, member(p), body(p));
      }
      for (int g = 0; g < groups.length; g++) {
        tables[g] = new HearingTable[groups[g].count()][];
        for (int n = 0; n < groups[g].count(); n++) {
          tables[g][n] =
              used[g][n] ? Tables.of(source.input(), window, listening, groups[g], n) : null;
        }
      }
    }

    /**
     * Chance that at least one burst is noticed, given that the station works and the sitting does
     * not slip.
     */
    public double chance(int particle) {
      return chance(particle, member(particle), body(particle));
    }

    /** The same after a command was received. */
    public double chance(int particle, Branch branch) {
      return chance(particle, branch.member, branch.body);
    }

    private double chance(int particle, Member possible, Body body) {
      if (!mayHear(window, possible, body)) {
        return 0;
      }
      HearingTable[] byBeacon = tables[hearings(particle)][node[particle]];
      if (byBeacon == null) {
        byBeacon =
            Tables.of(
                source.input(),
                window,
                listening,
                source.nodes()[hearings(particle)],
                node[particle]);
      }
      return 1
          - source
              .ear()
              .miss(possible, body, byBeacon, listening.way(), window.from(), window.to());
    }
  }

  /** Chance that a sitting does not fail unnoticed. */
  public static double noSlip() {
    return 1 - Receptions.SLIP;
  }

  /** Whether a command sent in a window, with the counter believed next, would be received. */
  public CommandLink commandLink(SkyWindow window) {
    return commandLink(window, false);
  }

  /**
   * Whether a command sent in a window would be received.
   *
   * @param anyCounter sent with one counter value after the other, so that one of them fits
   */
  public CommandLink commandLink(SkyWindow window, boolean anyCounter) {
    return new CommandLink(source.input(), window, anyCounter);
  }

  /**
   * Chance that a command sent so often in the window is received and accepted, over the modes of
   * the sending station's health.
   */
  public double received(int particle, CommandLink link, int repeats) {
    return received(particle, member(particle), body(particle), link, repeats);
  }

  /** The same for a possibility that already received a command. */
  public double received(int particle, Branch branch, CommandLink link, int repeats) {
    return received(particle, branch.member, branch.body, link, repeats);
  }

  private double received(int particle, Member possible, Body body, CommandLink link, int repeats) {
    HearingNodes group = source.nodes()[hearings(particle)];
    int station = link.station();
    List<StationMode> modes = link.modes();
    float[] posterior = source.weighing().modes[station][member[particle]];
    double works = works(particle, station);
    double faults = 0;
    for (int m = 1; m < modes.size(); m++) {
      faults += posterior[m];
    }
    double sum = 0;
    for (int m = 0; m < modes.size(); m++) {
      double share = m == 0 ? works : faults > 0 ? (1 - works) * posterior[m] / faults : 0;
      if (share < NEGLIGIBLE_MODE) {
        continue;
      }
      sum += share * link.received(possible, body, group, node[particle], modes.get(m), repeats);
    }
    return sum;
  }

  /**
   * What becomes of possibilities that have received a command; in the order of the particles.
   * Bodies that several share are simulated once, all of them side by side.
   *
   * @param seconds when it was sent: one of the checkpoints
   */
  public List<Branch> branches(List<Integer> particles, double seconds, OnboardCommand command) {
    return branches(particles, seconds, command, false);
  }

  /**
   * The same.
   *
   * @param keep states at all later sending times, so that {@link #further} can go on
   */
  public List<Branch> branches(
      List<Integer> particles, double seconds, OnboardCommand command, boolean keep) {
    if (Arrays.binarySearch(source.checkpoints(), seconds) < 0) {
      throw new IllegalArgumentException("no checkpoint at " + seconds + " s");
    }
    int[] changed =
        particles.stream()
            .filter(p -> changesBody(p, command))
            .mapToInt(p -> member(p).body())
            .distinct()
            .toArray();
    Map<Integer, Body> after = commanded(changed, seconds, command, keep);
    List<Branch> branches = new ArrayList<>();
    for (int p : particles) {
      Member possible = member(p);
      Body body = changesBody(p, command) ? after.get(possible.body()) : body(p);
      boolean freed = command == OnboardCommand.RELEASE;
      branches.add(new Branch(freed ? freed(possible, seconds) : possible, body));
    }
    return branches;
  }

  /**
   * What becomes of possibilities that already received commands when they receive another one.
   *
   * @param before in the order of the particles, made with states kept
   * @param seconds when it is sent: one of the checkpoints, after those of the commands before
   */
  public List<Branch> further(
      List<Integer> particles, List<Branch> before, double seconds, OnboardCommand command) {
    IdentityHashMap<Body, Body> after = new IdentityHashMap<>();
    for (int k = 0; k < before.size(); k++) {
      if (changesBody(particles.get(k), command)) {
        after.put(before.get(k).body, before.get(k).body);
      }
    }
    List<Body> changed = List.copyOf(after.keySet());
    if (!changed.isEmpty()) {
      List<Simulation.Continuation> jobs =
          changed.stream().map(body -> onwards(body, seconds)).toList();
      List<BodyHistory> histories = Simulation.branchAll(jobs, source.light(), command);
      for (int k = 0; k < changed.size(); k++) {
        Simulation.Continuation job = jobs.get(k);
        after.put(changed.get(k), new Body(job.model(), job.request(), histories.get(k)));
      }
    }
    boolean freed = command == OnboardCommand.RELEASE;
    return before.stream()
        .map(
            branch ->
                new Branch(
                    freed ? freed(branch.member, seconds) : branch.member,
                    after.getOrDefault(branch.body, branch.body)))
        .toList();
  }

  private Simulation.Continuation onwards(Body body, double seconds) {
    BodyHistory.Checkpoint from =
        body.history().checkpoints().stream()
            .filter(point -> point.seconds() == seconds)
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no checkpoint at " + seconds + " s"));
    return new Simulation.Continuation(body.model(), keeping(body.request(), seconds), from);
  }

  private static Member freed(Member stowed, double seconds) {
    return new Member(
        stowed.set(),
        stowed.draw(),
        stowed.body(),
        stowed.onsets(),
        stowed.importance(),
        stowed.radio().withoutAntennaLossAfter(seconds));
  }

  /** A release that only frees an antenna leaves the electrical system as it is. */
  private boolean changesBody(int particle, OnboardCommand command) {
    return command != OnboardCommand.RELEASE
        || causes(particle).stream().anyMatch(Cause::isUnfolded);
  }

  private Map<Integer, Body> commanded(
      int[] bodies, double seconds, OnboardCommand command, boolean keep) {
    Map<Integer, Body> after = new HashMap<>();
    if (bodies.length == 0) {
      return after;
    }
    List<Simulation.Continuation> jobs = new ArrayList<>();
    List<BodyHistory.Checkpoint> standing = standing(bodies, seconds);
    for (int k = 0; k < bodies.length; k++) {
      Body body = source.ahead()[bodies[k]];
      SimulationRequest request = keep ? keeping(body.request(), seconds) : bare(body.request());
      jobs.add(new Simulation.Continuation(body.model(), request, standing.get(k)));
    }
    List<BodyHistory> histories = Simulation.branchAll(jobs, source.light(), command);
    for (int k = 0; k < bodies.length; k++) {
      Simulation.Continuation job = jobs.get(k);
      after.put(bodies[k], new Body(job.model(), job.request(), histories.get(k)));
    }
    return after;
  }

  /** States at a time; bodies that keep none of it are flown there from the one before. */
  private List<BodyHistory.Checkpoint> standing(int[] bodies, double seconds) {
    List<BodyHistory.Checkpoint> known = new ArrayList<>();
    List<Simulation.Continuation> jobs = new ArrayList<>();
    for (int b : bodies) {
      Body body = source.ahead()[b];
      BodyHistory.Checkpoint last = lastBefore(body.history().checkpoints(), seconds);
      known.add(last);
      SimulationRequest request =
          new SimulationRequest(
              seconds,
              seconds,
              body.request().gridStepSeconds(),
              body.request().events(),
              new double[0],
              new double[] {seconds});
      jobs.add(new Simulation.Continuation(body.model(), request, last));
    }
    if (known.get(0).seconds() == seconds) {
      return known;
    }
    return Simulation.resumeAll(jobs, source.light()).stream()
        .map(history -> history.checkpoints().get(0))
        .toList();
  }

  private static BodyHistory.Checkpoint lastBefore(
      List<BodyHistory.Checkpoint> rising, double seconds) {
    int last = -1;
    while (last + 1 < rising.size() && rising.get(last + 1).seconds() <= seconds) {
      last++;
    }
    if (last < 0) {
      throw new IllegalStateException("no body stands anywhere before " + seconds + " s");
    }
    return rising.get(last);
  }

  /** The same to its end, with nothing written down on the way: only what it sends is asked for. */
  private static SimulationRequest bare(SimulationRequest request) {
    double end = request.endSeconds();
    return new SimulationRequest(
        end, end, request.gridStepSeconds(), request.events(), new double[0], new double[0]);
  }

  /** The same with the states kept at which later commands may be sent. */
  private SimulationRequest keeping(SimulationRequest request, double seconds) {
    double end = request.endSeconds();
    double[] later = Arrays.stream(source.checkpoints()).filter(t -> t > seconds).toArray();
    return new SimulationRequest(
        end, end, request.gridStepSeconds(), request.events(), new double[0], later);
  }

  private List<Cause> causes(int particle) {
    return source.population().sets.get(set(particle)).causes().stream()
        .map(source.input().causes()::get)
        .toList();
  }

  /**
   * True when the command cannot change what this possibility does, whatever the simulation: no
   * need to run it.
   */
  public boolean leavesAlone(int particle, OnboardCommand command) {
    List<Cause> causes = causes(particle);
    return switch (command) {
      case RELEASE -> causes.stream().noneMatch(Cause::isReleased);
      case BEACON_ON ->
          causes.stream()
              .flatMap(cause -> cause.effects().stream())
              .noneMatch(Effect.BeaconDisabled.class::isInstance);
      case RESET, LOW_POWER ->
          member(particle).radio().muteFrom() <= source.input().seconds(source.input().now());
    };
  }

  /** A possibility after a command. */
  public static final class Branch {
    private final Member member;
    private final Body body;

    private Branch(Member member, Body body) {
      this.member = member;
      this.body = body;
    }
  }
}
