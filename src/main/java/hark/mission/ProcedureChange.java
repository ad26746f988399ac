package hark.mission;

import hark.link.Way;
import hark.mission.YamlTree.Kind;
import hark.plan.Procedure;
import hark.plan.Procedure.Change;
import hark.power.OnboardCommand;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads {@code changes} of a procedure: what it changes for the model, by its kind. */
final class ProcedureChange {
  private static final Span WINDOW_HZ = Span.of(1, 1e7).orIn("kHz", 1e3);
  private static final Span OFFSET_S = Span.of(-3600, 3600);
  private static final Span GAIN_DB = Span.of(-20, 60);
  private static final Span SUNRISE_MINUTES = Span.of(0, 120);
  private static final int MAX_REPEATS = 1000;

  private ProcedureChange() {}

  /** Which of the candidate objects to follow. */
  private enum Candidate {
    FIRST,
    NEXT
  }

  /** Which hand of circular polarisation. */
  private enum Hand {
    OWN,
    OTHER
  }

  /** Which counter a command carries. */
  private enum Counter {
    NEXT,
    ANY
  }

  static Change read(YamlTree node, Procedure.Kind kind, Problems problems) {
    YamlTree tree =
        node.isNothing()
            ? YamlTree.map(
                new YamlTree.Place(node.file(), node.line(), node.path()), java.util.Map.of())
            : node;
    YamlMap map = YamlMap.of(tree, problems);
    if (tree.kind() != Kind.MAP) {
      return new Procedure.Wait();
    }
    Change change =
        switch (kind) {
          case LISTEN -> listen(map, problems);
          case COMMAND -> command(map, problems);
          case DESK -> desk(map, problems);
          case WAIT ->
              YamlValues.choice(map.get("until"), Procedure.Until.class, problems)
                  .map(Procedure.Wait::new)
                  .orElseGet(Procedure.Wait::new);
        };
    map.finish();
    return change;
  }

  private static Change listen(YamlMap map, Problems problems) {
    Optional<Way> way = YamlValues.choice(map.get("way"), Way.class, problems);
    OptionalDouble window = YamlValues.number(map.get("window_Hz"), WINDOW_HZ, problems);
    Optional<Candidate> object = YamlValues.choice(map.get("object"), Candidate.class, problems);
    return new Procedure.Listen(
        way,
        window.isPresent() ? Optional.of(window.getAsDouble()) : Optional.empty(),
        YamlValues.number(map.get("offset_s"), OFFSET_S, problems).orElse(0),
        object.filter(o -> o == Candidate.NEXT).isPresent(),
        YamlValues.number(map.get("extra_gain_dB"), GAIN_DB, problems).orElse(0),
        setting(map, problems));
  }

  private static Procedure.Setting setting(YamlMap map, Problems problems) {
    return new Procedure.Setting(
        YamlValues.choice(map.get("who"), Procedure.Who.class, problems).orElse(Procedure.Who.CREW),
        YamlValues.choice(map.get("hand"), Hand.class, problems)
            .filter(hand -> hand == Hand.OTHER)
            .isPresent(),
        YamlValues.number(map.get("after_sunrise_min"), SUNRISE_MINUTES, problems));
  }

  private static Change command(YamlMap map, Problems problems) {
    OnboardCommand command =
        YamlValues.choice(map.require("command"), OnboardCommand.class, problems)
            .orElse(OnboardCommand.RESET);
    YamlTree repeats = map.get("repeats");
    return new Procedure.Command(
        command,
        YamlValues.whole(repeats, 1, MAX_REPEATS, problems).orElse(1),
        YamlValues.choice(map.get("counter"), Counter.class, problems)
            .filter(counter -> counter == Counter.ANY)
            .isPresent());
  }

  /** A desk checks a station, or settles a question. */
  private static Change desk(YamlMap map, Problems problems) {
    YamlTree settles = map.get("settles");
    if (settles.isNothing()) {
      return selfCheck(map, problems);
    }
    if (!map.get("self_check").isNothing()) {
      problems.add(
          settles, "a desk does one thing: self_check or settles", "make two procedures of it");
    }
    return YamlValues.choice(settles, Procedure.Question.class, problems)
        .<Change>map(Procedure.Settle::new)
        .orElseGet(Procedure.SelfCheck::new);
  }

  private static Change selfCheck(YamlMap map, Problems problems) {
    YamlTree node = map.require("self_check");
    if (YamlValues.bool(node, problems).filter(check -> !check).isPresent()) {
      problems.add(
          node,
          "a desk procedure that checks no station changes nothing the model knows",
          "write self_check: true");
    }
    return new Procedure.SelfCheck();
  }
}
