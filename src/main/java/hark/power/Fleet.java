package hark.power;

import java.util.stream.IntStream;

/**
 * Bodies on one trajectory, taken through time together: from each shared place to the next (the
 * grid of steps and the shadow edges) in one go. Bodies to which nothing can happen glide, their
 * numbers side by side; the others go alone, by {@link Machine}. Which way a body goes depends on
 * that body alone.
 */
final class Fleet {
  private final Machine[] machines;
  private final Illumination light;
  private final Lanes lanes;
  private final Glide glide;
  private final Foretold foretold;
  private final boolean[] walked;
  private final boolean[] switched;
  private final double[] switchAfter;
  private final int[] turning;
  private final boolean[] wasHeating;
  private final boolean[] wasInhibited;
  private long steps;
  private long walks;

  /**
   * @param machines all at the same time, settled; best {@link Simulation#BLOCK} of them
   */
  Fleet(Machine[] machines, Illumination light) {
    this.machines = machines;
    this.light = light;
    lanes = new Lanes(machines.length);
    glide = new Glide(lanes);
    foretold = new Foretold(lanes);
    walked = new boolean[machines.length];
    switched = new boolean[machines.length];
    switchAfter = new double[machines.length];
    wasHeating = new boolean[machines.length];
    wasInhibited = new boolean[machines.length];
    for (int i = 0; i < machines.length; i++) {
      lanes.load(i, machines[i]);
    }
    turning =
        IntStream.range(0, machines.length).filter(i -> machines[i].circuit.swings()).toArray();
  }

  /** From where to where, with the next shadow edge at either end. */
  private record Way(double from, double to, int edgeFrom, int edgeTo) {}

  /** Flies to the end of the request. */
  void fly(SimulationRequest request) {
    double end = request.endSeconds();
    double now = machines[0].s.seconds;
    int edge = light.firstEdgeAfter(now, 0);
    while (now < end) {
      double grid = PowerPhysics.nextPlace(request.longestStepSeconds(), now);
      double shadow = light.edgeSeconds(edge);
      double to = Math.min(Math.min(end, grid), shadow);
      int passed = to >= shadow ? light.firstEdgeAfter(to, edge) : edge;
      step(new Way(now, to, edge, passed));
      now = to;
      edge = passed;
    }
    for (int i = 0; i < machines.length; i++) {
      lanes.store(i, machines[i].s, now, edge);
    }
  }

  private void step(Way way) {
    int count = machines.length;
    steps += count;
    Glide.Stretch stretch = new Glide.Stretch(way.from(), way.to(), light, way.edgeFrom());
    if (stretch.sun > 0) {
      sweep(way);
    }
    foretold.step(stretch.step);
    for (int i = 0; i < count; i++) {
      double until = foretold.switchesAfter(i, stretch.step);
      switched[i] = until <= stretch.step;
      if (switched[i]) {
        switchAfter(i, until, stretch.step);
      }
    }
    glide.attempt(stretch, 0, count);
    for (int i = 0; i < count; i++) {
      walked[i] = !glide.holds(i) || (switched[i] && !glide.calm(i));
      if (walked[i] || switched[i] || lanes.records[i] < way.to()) {
        follow(i, way);
      }
    }
    glide.keep(0, count);
    for (int i = 0; i < count; i++) {
      arrive(i, way);
    }
  }

  /** Bodies that turn: what their arrays see of the Sun on the way. */
  private void sweep(Way way) {
    for (int i : turning) {
      machines[i].circuit.sweep(lanes, i, machines[i].s, way.from(), way.to());
    }
  }

  /** Heater or charge inhibit will switch within the step, which gets the mean of both. */
  private void switchAfter(int i, double until, double step) {
    Machine machine = machines[i];
    BodyState s = machine.s;
    double share = until / step;
    double heater = lanes.heater[i];
    double open = lanes.limitAmps[i];
    boolean inhibited = s.chargeInhibited;
    switchAfter[i] = until;
    wasHeating[i] = s.heating;
    wasInhibited[i] = inhibited;
    machine.switchAt(foretold.rises(i), lanes.batteryC[i]);
    lanes.limits(i, machine);
    double mean = share * heater + (1 - share) * lanes.heater[i];
    lanes.burst[i] +=
        Math.max(heater, lanes.heater[i]) - mean; // in full the heater pulls as a burst does
    lanes.load[i] += mean - lanes.heater[i];
    lanes.heater[i] = mean;
    if (inhibited != s.chargeInhibited) {
      lanes.limitAmps[i] = Math.max(open, lanes.limitAmps[i]);
      lanes.chargeShare[i] = inhibited ? 1 - share : share;
    }
  }

  /** A body that walks, is looked at on its way, or switches by warmth. */
  private void follow(int i, Way way) {
    Machine machine = machines[i];
    boolean looked = lanes.records[i] < way.to();
    boolean heats = machine.s.heating;
    boolean inhibits = machine.s.chargeInhibited;
    if (switched[i] && (walked[i] || looked)) {
      machine.setSwitches(wasHeating[i], wasInhibited[i]); // not yet
    }
    lanes.store(i, machine.s, way.from(), way.edgeFrom());
    if (walked[i]) {
      walks++;
      machine.advanceTo(way.to());
      return;
    }
    if (looked) {
      if (switched[i]) {
        machine.look(way.from() + switchAfter[i]);
        machine.setSwitches(heats, inhibits);
      }
      machine.look(way.to());
      lanes.records[i] = machine.nextRecord();
    }
    if (switched[i]) {
      lanes.limits(i, machine);
      lanes.burst[i] = machine.s.burstWatts;
    }
  }

  /** What is left to do for a body when all are at the end of a step. */
  private void arrive(int i, Way way) {
    if (walked[i]) {
      lanes.load(i, machines[i]);
      return;
    }
    if (glide.bends(i)) {
      machines[i].circuit.fillCurve(lanes, i, glide.locked(i));
    }
    if (lanes.off[i] && way.edgeFrom() != way.edgeTo()) {
      lanes.store(i, machines[i].s, way.to(), way.edgeTo());
      machines[i].passEdge();
      lanes.schedule(i, machines[i]);
    }
    if (lanes.records[i] <= way.to()) {
      record(i, way);
    }
  }

  private void record(int i, Way way) {
    Machine machine = machines[i];
    if (!machine.keepGrid(way.to(), lanes.soc[i])) {
      lanes.store(i, machine.s, way.to(), way.edgeTo());
      machine.keepNow();
    }
    lanes.records[i] = machine.nextRecord();
  }

  /** Share of the steps that bodies have glided so far. */
  double glidedShare() {
    return 1 - (double) walks / steps;
  }
}
