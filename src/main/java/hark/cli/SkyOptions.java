package hark.cli;

import static java.util.stream.Collectors.toCollection;

import hark.orbit.DragBody;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.orbit.StateSpread;
import hark.problem.NearestWord;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Options shared by the commands that compute from element sets: which objects, which Earth. */
final class SkyOptions {
  private static final Instant EARLIEST = Instant.parse("1957-10-04T00:00:00Z");
  private static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");

  /** Object ids named in a message at most: a file may hold a whole catalogue. */
  private static final int MOST_NAMED = 12;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--elements",
      paramLabel = "FILE",
      description = {
        "Element sets: two-line (with or without names) or OMM as KVN, XML or JSON, many"
            + " objects a file; or states: OPM or OEM as KVN or XML.",
        "Of several sets of one object the newest at --from is used.",
      })
  private Path elements;

  @Option(
      names = "--from",
      paramLabel = "T",
      description = "Begin, UTC such as 2026-10-02T03:14:00Z (default: now).")
  private Instant from;

  @Option(
      names = "--object",
      paramLabel = "ID",
      description = "Only this object; may be given several times.")
  private List<String> objects = List.of();

  @Mixin private EarthOption earth;

  /** One set for each object, the newest in force at the begin. */
  List<ElementSet> elementSets(Clock clock) {
    if (elements == null) {
      throw new ParameterException(
          command.commandLine(),
          command.positionalParameters().isEmpty()
              ? "Which objects? Give --elements FILE."
              : "Which objects? Give --elements FILE, or a MISSION folder.");
    }
    String text = InputText.read(elements, ElementSets.MAX_CHARACTERS);
    List<ElementSet> all =
        ElementSets.parse(elements.toString(), text, DragBody.USUAL, earth.earth());
    List<ElementSet> sets = ElementSets.inForce(only(all), from(clock));
    sets.stream().filter(ElementSet::isState).forEach(this::tellSpread);
    return sets;
  }

  /** Sets of the objects asked for; all when nothing was asked. */
  List<ElementSet> only(List<ElementSet> sets) {
    if (objects.isEmpty()) {
      return sets;
    }
    Set<String> known = sets.stream().map(ElementSet::objectId).collect(toCollection(TreeSet::new));
    for (String object : objects) {
      if (!known.contains(object)) {
        throw new ParameterException(
            command.commandLine(),
            "--object '"
                + object
                + "' is not among the objects; "
                + NearestWord.advice(object, known.stream().limit(MOST_NAMED).toList()));
      }
    }
    return sets.stream().filter(set -> objects.contains(set.objectId())).toList();
  }

  /** A state says less the longer it is ago; nobody should read its tables without knowing. */
  private void tellSpread(ElementSet state) {
    StateSpread spread = state.spread().orElseThrow();
    command
        .commandLine()
        .getErr()
        .println(
            String.format(
                Locale.ROOT,
                "%s: a state of %s, propagated with gravity and air; along its track it is known to"
                    + " %.1f s at first and %.0f s after a day",
                state.objectId(),
                UtcTime.print(state.epoch()),
                spread.sdSeconds(0),
                spread.sdSeconds(1)));
  }

  /** For a mission, which brings its own. */
  void refuseElements() {
    if (elements != null) {
      throw new ParameterException(
          command.commandLine(), "A MISSION brings its own element sets; leave out --elements.");
    }
  }

  /** The begin of the span. */
  Instant from(Clock clock) {
    Instant begin = from == null ? clock.instant() : from;
    if (begin.isBefore(EARLIEST) || begin.isAfter(LATEST)) {
      throw new ParameterException(
          command.commandLine(),
          "--from is " + begin + "; it must lie between " + EARLIEST + " and " + LATEST);
    }
    return begin;
  }

  /** The end of a span, refused when its length makes no sense. */
  Instant to(Clock clock, double length, Duration unit, Limit limit) {
    if (!(length > 0 && length <= limit.most())) {
      throw new ParameterException(
          command.commandLine(),
          limit.option()
              + " is "
              + length
              + "; it must lie above 0 and at most at "
              + limit.most());
    }
    Duration span = Duration.ofNanos(Math.round(length * unit.toNanos()));
    return from(clock).plus(span);
  }

  /** The most an option may be. */
  record Limit(String option, double most) {}

  /** The model of the Earth that was asked for. */
  EarthModel earth() {
    return earth.earth();
  }
}
