package hark.power;

/**
 * Bodies on one trajectory, taken through time together: from each shared place to the next (the
 * grid of steps and the shadow edges) in one go. Bodies to which nothing can happen glide, their
 * numbers side by side in arrays; the others go alone, by {@link Machine}. Which way a body goes
 * depends on that body alone.
 */
final class Fleet {
  private final Machine[] machines;
  private final Illumination light;
  private final Lanes lanes;
  private final Glide glide;
  private long glided;
  private long walked;

  /**
   * @param machines all at the same time, settled
   */
  Fleet(Machine[] machines, Illumination light) {
    this.machines = machines;
    this.light = light;
    lanes = new Lanes(machines.length);
    glide = new Glide(lanes);
    for (int i = 0; i < machines.length; i++) {
      lanes.load(i, machines[i]);
    }
  }

  /** Flies to the end of the request. */
  void fly(SimulationRequest request) {
    double step = request.longestStepSeconds();
    double end = request.endSeconds();
    double now = machines[0].s.seconds;
    int edge = light.firstEdgeAfter(now, 0);
    while (now < end) {
      double grid = PowerPhysics.nextPlace(step, now);
      double shadow = light.edgeSeconds(edge);
      double to = Math.min(Math.min(end, grid), shadow);
      glide.attempt(new Glide.Stretch(now, to, light, edge));
      int passed = to >= shadow ? light.firstEdgeAfter(to, edge) : edge;
      boolean atEdge = passed != edge;
      for (int i = 0; i < machines.length; i++) {
        boolean asleep = lanes.wakes[i] > to && !(atEdge && lanes.off[i]);
        if (asleep && glide.quiet(i)) {
          glided++;
          glide.keep(i, machines[i].circuit);
        } else {
          wake(i, new Way(now, to, edge, passed));
        }
      }
      now = to;
      edge = passed;
    }
    for (int i = 0; i < machines.length; i++) {
      lanes.store(i, machines[i].s, now, edge);
    }
  }

  /** Share of the steps that bodies have glided so far. */
  double glidedShare() {
    return (double) glided / (glided + walked);
  }

  /** From where to where, with the next shadow edge at either end. */
  private record Way(double from, double to, int edgeFrom, int edgeTo) {}

  private void wake(int i, Way way) {
    Machine machine = machines[i];
    boolean onlyLooks =
        machine.nextEvent() > way.to()
            && machine.nextRecord() == way.to()
            && !(way.edgeFrom() != way.edgeTo() && lanes.off[i]);
    if (onlyLooks && glide.quiet(i)) {
      glided++;
      glide.keep(i, machine.circuit);
      lanes.store(i, machine.s, way.to(), way.edgeTo());
      machine.keepNow();
      lanes.wakes[i] = Math.min(machine.nextEvent(), machine.nextRecord());
      return;
    }
    walked++;
    lanes.store(i, machine.s, way.from(), way.edgeFrom());
    machine.advanceTo(way.to());
    lanes.load(i, machine);
  }
}
