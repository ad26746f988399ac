package hark.power;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Simulates bodies from separation: battery, temperatures, bus and beacons. Steps reach to the next
 * place on a grid that all bodies share, cut short where something happens. What is written down
 * never moves a step: looking does not disturb, and a run that resumes at a place of the grid
 * equals the whole run bit for bit. A body's history does not depend on the bodies simulated beside
 * it. Pure and single-threaded: callers run blocks of bodies in parallel.
 */
public final class Simulation {
  /** Bodies that are best simulated together: their numbers fit the fastest memory. */
  public static final int BLOCK = 64;

  private Simulation() {}

  /**
   * The last place of the usual grid of steps that is not after a time, s. A checkpoint there can
   * be gone on from exactly, wherever the run itself ended: {@link BodyHistory#followedBy} then
   * gives what one run to the later end would have given, bit for bit.
   */
  public static double lastPlace(double seconds) {
    double step = PowerPhysics.STEP_SECONDS;
    double place = PowerPhysics.nextPlace(step, seconds) - step;
    return place > seconds ? place - step : place;
  }

  /**
   * A body to simulate.
   *
   * @param model its numbers
   * @param request all requests that run together have the same end and longest step
   */
  public record Job(PowerModel model, SimulationRequest request) {}

  /** Runs a body from separation to the request's end. */
  public static BodyHistory run(PowerModel model, Illumination light, SimulationRequest request) {
    return runAll(List.of(new Job(model, request)), light).get(0);
  }

  /** Runs bodies that fly the same trajectory; histories in the order of the jobs. */
  public static List<BodyHistory> runAll(List<Job> jobs, Illumination light) {
    Machine[] machines = new Machine[jobs.size()];
    for (int i = 0; i < machines.length; i++) {
      machines[i] = new Machine(jobs.get(i).model(), light, jobs.get(i).request(), null);
    }
    return finish(machines, light, jobs.get(0).request());
  }

  /**
   * Goes on from a checkpoint as if nothing had happened. The request must hold the same events as
   * the run that made the checkpoint. The history keeps grid and probes from the checkpoint on and
   * checkpoints after it; a beacon or receiver that ran at the checkpoint keeps its earlier start.
   */
  public static BodyHistory resume(
      PowerModel model,
      Illumination light,
      SimulationRequest request,
      BodyHistory.Checkpoint checkpoint) {
    return finish(resumed(model, light, request, checkpoint), light, request);
  }

  /** A body to go on with, as {@link #resume} does. */
  public record Continuation(
      PowerModel model, SimulationRequest request, BodyHistory.Checkpoint from) {}

  /** As {@link #resume}, for bodies that stand at the same time. */
  public static List<BodyHistory> resumeAll(List<Continuation> jobs, Illumination light) {
    return finish(atOneTime(jobs, light), light, jobs.get(0).request());
  }

  private static Machine[] atOneTime(List<Continuation> jobs, Illumination light) {
    Machine[] machines = new Machine[jobs.size()];
    for (int i = 0; i < machines.length; i++) {
      Continuation job = jobs.get(i);
      machines[i] = resumed(job.model(), light, job.request(), job.from());
      if (machines[i].s.seconds != machines[0].s.seconds) {
        throw new IllegalArgumentException("the checkpoints are not at the same time");
      }
    }
    return machines;
  }

  /** As {@link #resume}, with a command that arrives at the checkpoint's time. */
  public static BodyHistory branch(
      PowerModel model,
      Illumination light,
      SimulationRequest request,
      BodyHistory.Checkpoint checkpoint,
      OnboardCommand command) {
    Continuation one = new Continuation(model, request, checkpoint);
    return branchAll(List.of(one), light, command).get(0);
  }

  /** As {@link #branch}, for bodies that stand at the same time and receive the same command. */
  public static List<BodyHistory> branchAll(
      List<Continuation> jobs, Illumination light, OnboardCommand command) {
    Machine[] machines = atOneTime(jobs, light);
    for (Machine machine : machines) {
      machine.command(command);
    }
    return finish(machines, light, jobs.get(0).request());
  }

  /** Where the energy of a run from separation goes. */
  public static EnergyBooks energy(
      PowerModel model, Illumination light, SimulationRequest request) {
    Machine machine = new Machine(model, light, request, null);
    finish(machine, light, request);
    return machine.circuit.books(machine.s);
  }

  private static Machine resumed(
      PowerModel model,
      Illumination light,
      SimulationRequest request,
      BodyHistory.Checkpoint checkpoint) {
    if (!(checkpoint instanceof Recorder.Kept kept)) {
      throw new IllegalArgumentException("the checkpoint does not come from this simulation");
    }
    if (kept.state().standing.length != request.events().size()) {
      throw new IllegalArgumentException(
          "the checkpoint belongs to a run with "
              + kept.state().standing.length
              + " changes, the request has "
              + request.events().size());
    }
    return new Machine(model, light, request, kept.state());
  }

  private static BodyHistory finish(
      Machine machine, Illumination light, SimulationRequest request) {
    return finish(new Machine[] {machine}, light, request).get(0);
  }

  private static List<BodyHistory> finish(
      Machine[] machines, Illumination light, SimulationRequest request) {
    for (Machine machine : machines) {
      machine.begin();
    }
    for (int from = 0; from < machines.length; from += BLOCK) {
      int to = Math.min(machines.length, from + BLOCK);
      new Fleet(Arrays.copyOfRange(machines, from, to), light).fly(request);
    }
    List<BodyHistory> histories = new ArrayList<>();
    for (Machine machine : machines) {
      histories.add(machine.close());
    }
    return histories;
  }
}
