package hark.power;

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
  private final boolean[] walked;
  private final boolean[] switched;
  private final double[] switchAfter;
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
    walked = new boolean[machines.length];
    switched = new boolean[machines.length];
    switchAfter = new double[machines.length];
    for (int i = 0; i < machines.length; i++) {
      lanes.load(i, machines[i]);
    }
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
    glide.foretell(stretch.step);
    for (int i = 0; i < count; i++) {
      double until = glide.switchesAfter(i, stretch.step);
      switched[i] = until <= stretch.step;
      if (switched[i]) {
        switchHeater(i, until, stretch.step);
      }
    }
    glide.attempt(stretch, 0, count);
    for (int i = 0; i < count; i++) {
      walked[i] = !glide.holds(i);
      if (walked[i] || switched[i] || lanes.records[i] < way.to()) {
        follow(i, way);
      }
    }
    glide.keep(0, count);
    for (int i = 0; i < count; i++) {
      arrive(i, way);
    }
  }

  /** The thermostat will switch within the step: its heater draws the mean. */
  private void switchHeater(int i, double until, double step) {
    Machine machine = machines[i];
    double watts = machine.circuit.heaterWatts();
    double share = machine.s.heating ? until / step : 1 - until / step;
    double plain = lanes.load[i] - lanes.heater[i];
    switchAfter[i] = until;
    machine.switchHeater();
    lanes.limits(i, machine);
    lanes.load[i] = plain + watts * share;
    lanes.heater[i] = watts * share;
    lanes.burst[i] += watts; // at its full power the heater pulls as a burst does
  }

  /** A body that walks, is looked at on its way, or whose thermostat switches. */
  private void follow(int i, Way way) {
    Machine machine = machines[i];
    if (switched[i] && (walked[i] || lanes.records[i] < way.to())) {
      machine.switchHeater(); // not yet
    }
    lanes.store(i, machine.s, way.from(), way.edgeFrom());
    if (walked[i]) {
      walks++;
      machine.advanceTo(way.to());
      return;
    }
    if (lanes.records[i] < way.to()) {
      if (switched[i]) {
        machine.look(way.from() + switchAfter[i]);
        machine.switchHeater();
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
