package hark.assessment;

import hark.ensemble.OrbitSource;
import hark.ensemble.OrbitSource.AlongTrack;
import hark.mission.Mission;
import hark.orbit.Decay;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.SetHistory;
import hark.orbit.SetScale;
import hark.orbit.SetStep;
import hark.orbit.StateSpread;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Gathers what a mission's element sets say of each object's orbit, and how well. Pure. */
public final class OrbitDesk {
  /** An object that appears so much after the others is a newcomer. */
  private static final Duration LATE_COMER = Duration.ofHours(36);

  /** An object without a set for so long, while others have new ones, has been given up. */
  private static final Duration SILENT = Duration.ofDays(2);

  /** A jump lands on another object when it lies so near to its track, in usual spreads. */
  private static final double LANDS_WITHIN_SIGMAS = 3;

  private final OrbitSource source;
  private final EarthModel earth;
  private final Instant now;
  private final Map<String, List<ElementSet>> byObject = new LinkedHashMap<>();

  private OrbitDesk(OrbitSource source, EarthModel earth, Instant now) {
    this.source = source;
    this.earth = earth;
    this.now = now;
    source.sets().stream()
        .filter(set -> !set.epoch().isAfter(now))
        .sorted(Comparator.comparing(ElementSet::epoch))
        .forEach(set -> byObject.computeIfAbsent(set.objectId(), id -> new ArrayList<>()).add(set));
  }

  /** Everything known by a time. */
  public static OrbitKnowledge of(Mission mission, EarthModel earth, Instant now) {
    List<OrbitKnowledge.Known> all = new ArrayList<>();
    for (OrbitSource source : mission.sources()) {
      OrbitDesk desk = new OrbitDesk(source, earth, now);
      desk.byObject.keySet().forEach(id -> all.add(desk.known(id)));
    }
    all.sort(
        Comparator.comparingDouble((OrbitKnowledge.Known k) -> -k.weight().orElse(-1))
            .thenComparing(OrbitKnowledge.Known::objectId));
    return new OrbitKnowledge(now, all);
  }

  private OrbitKnowledge.Known known(String id) {
    List<ElementSet> sets = byObject.get(id);
    ElementSet last = sets.get(sets.size() - 1);
    double age = Assessor.days(last.epoch(), now);
    AlongTrack believed = source.alongTrack().of(last);
    StateSpread usual = spread(source.alongTrack());
    List<ElementSet> published = sets.stream().filter(set -> !set.isState()).toList();
    SetScale scale = SetScale.of(published, usual, earth);
    Double weight = source.candidates().get(id);
    List<SetStep> steps = SetHistory.steps(sets, usual, earth);
    return new OrbitKnowledge.Known(
        id,
        weight == null ? OptionalDouble.empty() : OptionalDouble.of(weight),
        sets,
        age,
        believed.sdSeconds(age),
        steps,
        scale.steps() == 0 ? OptionalDouble.empty() : OptionalDouble.of(scale.perDaySeconds()),
        Math.hypot(believed.perDaySeconds(), believed.perDay2Seconds()),
        Decay.of(sets, earth),
        standing(id, steps, usual));
  }

  private static StateSpread spread(AlongTrack a) {
    return new StateSpread(
        Math.max(1e-3, a.initialSeconds()), a.perDaySeconds(), a.perDay2Seconds());
  }

  private OrbitKnowledge.Standing standing(String id, List<SetStep> steps, StateSpread usual) {
    List<ElementSet> sets = byObject.get(id);
    Instant first = sets.get(0).epoch();
    Instant last = sets.get(sets.size() - 1).epoch();
    Instant begin =
        byObject.values().stream().map(s -> s.get(0).epoch()).min(order()).orElse(first);
    Instant end =
        byObject.values().stream().map(s -> s.get(s.size() - 1).epoch()).max(order()).orElse(last);
    Duration silence = Duration.between(last, end);
    Duration notable = usualGap().multipliedBy(3).dividedBy(2);
    boolean silent = silence.compareTo(SILENT) > 0 && silence.compareTo(notable) > 0;
    return new OrbitKnowledge.Standing(
        Duration.between(begin, first).compareTo(LATE_COMER) > 0
            ? Optional.of(first)
            : Optional.empty(),
        silent ? Optional.of(last) : Optional.empty(),
        steps.stream()
            .filter(SetStep::isJump)
            .reduce((a, b) -> b)
            .flatMap(jump -> landing(id, jump.after(), usual)));
  }

  private static Comparator<Instant> order() {
    return Comparator.naturalOrder();
  }

  /** Half the sets of the source come sooner after the one before than this. */
  private Duration usualGap() {
    List<Duration> gaps = new ArrayList<>();
    for (List<ElementSet> sets : byObject.values()) {
      for (int i = 1; i < sets.size(); i++) {
        gaps.add(Duration.between(sets.get(i - 1).epoch(), sets.get(i).epoch()));
      }
    }
    gaps.sort(Comparator.naturalOrder());
    return gaps.isEmpty() ? Duration.ZERO : gaps.get(gaps.size() / 2);
  }

  /** The object whose foretold place a set took: a candidate where one is near, else another. */
  private Optional<String> landing(String id, ElementSet after, StateSpread usual) {
    return landing(id, after, usual, true).or(() -> landing(id, after, usual, false));
  }

  private Optional<String> landing(
      String id, ElementSet after, StateSpread usual, boolean candidates) {
    String nearest = null;
    double least = LANDS_WITHIN_SIGMAS;
    for (Map.Entry<String, List<ElementSet>> other : byObject.entrySet()) {
      if (source.candidates().containsKey(other.getKey()) != candidates) {
        continue;
      }
      List<ElementSet> before =
          other.getValue().stream().filter(set -> set.epoch().isBefore(after.epoch())).toList();
      if (other.getKey().equals(id)) {
        continue;
      }
      // the other's last set may already be the one it got in exchange, so the two last count
      for (ElementSet set : before.subList(Math.max(0, before.size() - 2), before.size())) {
        SetStep step = SetHistory.step(set, after, usual, earth);
        if (Math.abs(step.sigmas()) < least && !step.isJump()) {
          least = Math.abs(step.sigmas());
          nearest = other.getKey();
        }
      }
    }
    return Optional.ofNullable(nearest);
  }
}
