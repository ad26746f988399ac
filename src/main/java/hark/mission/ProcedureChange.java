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
  private static final int MAX_REPEATS = 1000;

  private ProcedureChange() {}

  /** Which of the candidate objects to follow. */
  private enum Candidate {
    FIRST,
    NEXT
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
          case DESK -> selfCheck(map, problems);
          case WAIT -> new Procedure.Wait();
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
        YamlValues.number(map.get("extra_gain_dB"), GAIN_DB, problems).orElse(0));
  }

  private static Change command(YamlMap map, Problems problems) {
    OnboardCommand command =
        YamlValues.choice(map.require("command"), OnboardCommand.class, problems)
            .orElse(OnboardCommand.RESET);
    YamlTree repeats = map.get("repeats");
    return new Procedure.Command(
        command, YamlValues.whole(repeats, 1, MAX_REPEATS, problems).orElse(1));
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
