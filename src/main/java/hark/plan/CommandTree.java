package hark.plan;

import hark.ensemble.CommandLink;
import hark.ensemble.Listening;
import hark.ensemble.Particles;
import hark.ensemble.SkyWindow;
import hark.power.OnboardCommand;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What several commands make of a sample of possibilities. Each command splits a possibility into
 * one that received it and one that did not; a later command splits both again, the first one from
 * where the earlier command left it. Receptions of one possibility are independent of each other
 * (its receiver, its distance and the station's health are in the chance already).
 */
final class CommandTree implements PlanProblem.CommandRows {
  /** Less likely than this is not followed. */
  private static final double NOT_WORTH = 1e-3;

  private final List<SkyWindow> windows;
  private final Particles sample;
  private final Chances all;
  private final int stride;
  private final List<List<WindowOption>> options;
  private final Map<List<PlanProblem.Sent>, List<List<Leaf>>> leaves = new HashMap<>();
  private final Map<List<Object>, Rows> rows = new HashMap<>();
  private final Map<List<Object>, Particles.Hearing> hearings = new HashMap<>();

  /** A possibility after a branch; {@code window} is where the command was sent. */
  private record Turn(int window, Particles.Branch branch) {}

  /** A possibility that received these commands, and how likely it did. */
  private record Leaf(int particle, List<Turn> turns, double weight) {
    Particles.Branch last() {
      return turns.get(turns.size() - 1).branch();
    }
  }

  /**
   * @param stride of the sample among all possibilities; odd, so that both halves are in it
   */
  CommandTree(
      List<SkyWindow> windows,
      Particles particles,
      Chances all,
      int stride,
      List<List<WindowOption>> options) {
    this.windows = windows;
    this.sample = particles.thinned(stride);
    this.all = all;
    this.stride = stride;
    this.options = options;
  }

  @Override
  public synchronized Rows of(List<PlanProblem.Sent> sent, int half) {
    return rows.computeIfAbsent(List.of(sent, half), key -> rows(leaves(sent, half), half));
  }

  private List<Leaf> leaves(List<PlanProblem.Sent> sent, int half) {
    List<List<Leaf>> known = leaves.get(sent);
    if (known == null) {
      known = new ArrayList<>(List.of(List.of(), List.of()));
      leaves.put(List.copyOf(sent), known);
    }
    if (known.get(half).isEmpty()) {
      known.set(half, sent.isEmpty() ? roots(half) : after(sent, half));
    }
    return known.get(half);
  }

  private List<Leaf> roots(int half) {
    List<Leaf> roots = new ArrayList<>();
    for (int p = half; p < sample.count(); p += 2) {
      roots.add(new Leaf(p, List.of(), 1));
    }
    return roots;
  }

  private List<Leaf> after(List<PlanProblem.Sent> sent, int half) {
    PlanProblem.Sent last = sent.get(sent.size() - 1);
    Procedure.Command command =
        (Procedure.Command) options.get(last.window()).get(last.move()).procedure().change();
    CommandLink link = sample.commandLink(windows.get(last.window()), command.anyCounter());
    double works = command.command() == OnboardCommand.RELEASE ? CommandLink.RELEASE_WORKS : 1;
    List<Leaf> next = new ArrayList<>();
    List<Leaf> fresh = new ArrayList<>();
    List<Leaf> turned = new ArrayList<>();
    for (Leaf leaf : leaves(sent.subList(0, sent.size() - 1), half)) {
      double received = works * received(leaf, link, command);
      if (leaf.weight() * received <= NOT_WORTH) {
        next.add(leaf);
        continue;
      }
      next.add(new Leaf(leaf.particle(), leaf.turns(), leaf.weight() * (1 - received)));
      (leaf.turns().isEmpty() ? fresh : turned)
          .add(new Leaf(leaf.particle(), leaf.turns(), leaf.weight() * received));
    }
    next.addAll(turn(fresh, last.window(), branches(fresh, link, command.command())));
    next.addAll(turn(turned, last.window(), further(turned, link, command.command())));
    return next;
  }

  private double received(Leaf leaf, CommandLink link, Procedure.Command command) {
    int p = leaf.particle();
    if (leaf.turns().isEmpty()) {
      return sample.leavesAlone(p, command.command())
          ? 0
          : sample.received(p, link, command.repeats());
    }
    return sample.leavesAlone(p, command.command())
        ? 0
        : sample.received(p, leaf.last(), link, command.repeats());
  }

  private List<Particles.Branch> branches(
      List<Leaf> from, CommandLink link, OnboardCommand command) {
    List<Integer> particles = from.stream().map(Leaf::particle).toList();
    return sample.branches(particles, link.seconds(), command, true);
  }

  private List<Particles.Branch> further(
      List<Leaf> from, CommandLink link, OnboardCommand command) {
    List<Integer> particles = from.stream().map(Leaf::particle).toList();
    List<Particles.Branch> before = from.stream().map(Leaf::last).toList();
    return sample.further(particles, before, link.seconds(), command);
  }

  private static List<Leaf> turn(List<Leaf> from, int window, List<Particles.Branch> branches) {
    List<Leaf> turned = new ArrayList<>();
    for (int k = 0; k < branches.size(); k++) {
      List<Turn> turns = new ArrayList<>(from.get(k).turns());
      turns.add(new Turn(window, branches.get(k)));
      turned.add(new Leaf(from.get(k).particle(), turns, from.get(k).weight()));
    }
    return turned;
  }

  /** A row more for each possibility that received something, a row less for what it was before. */
  private Rows rows(List<Leaf> all, int half) {
    List<Leaf> turned = all.stream().filter(leaf -> !leaf.turns().isEmpty()).toList();
    double[] received = new double[sample.count()];
    turned.forEach(leaf -> received[leaf.particle()] += leaf.weight());
    List<Leaf> list = new ArrayList<>(turned);
    int sampled = 0;
    for (int p = half; p < received.length; p += 2) {
      sampled++;
      if (received[p] > 0) {
        list.add(new Leaf(p, List.of(), -received[p]));
      }
    }
    double[] weight = new double[list.size()];
    double[][] works = new double[list.size()][];
    for (int k = 0; k < weight.length; k++) {
      weight[k] = list.get(k).weight() / sampled;
      works[k] = this.all.works[list.get(k).particle() * stride];
    }
    Map<List<Integer>, float[]> heard = new HashMap<>();
    return new Rows(
        weight, works, (w, m) -> heard.computeIfAbsent(List.of(w, m), key -> heard(list, w, m)));
  }

  private float[] heard(List<Leaf> list, int window, int move) {
    WindowOption option = options.get(window).get(move);
    float[] heard = new float[list.size()];
    if (!option.listens()) {
      return heard;
    }
    for (int k = 0; k < heard.length; k++) {
      Leaf leaf = list.get(k);
      Particles.Branch branch = null;
      for (Turn turn : leaf.turns()) {
        branch = turn.window() < window ? turn.branch() : branch;
      }
      heard[k] =
          branch == null
              ? all.heard[window][move][leaf.particle() * stride]
              : (float) hearing(window, option.listening()).chance(leaf.particle(), branch);
    }
    return heard;
  }

  private Particles.Hearing hearing(int window, Listening listening) {
    return hearings.computeIfAbsent(
        List.of(window, listening), key -> sample.hearing(windows.get(window), listening));
  }
}
