package hark.mission;

import hark.mission.KeyPath.Step;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Compares what two YAML texts say, wherever it stands in them. */
final class YamlSame {
  private YamlSame() {}

  /**
   * Whether {@code after} says what {@code before} says, but {@code wanted} at the end of a path.
   */
  static boolean onlySet(YamlTree before, YamlTree after, List<Step> steps, YamlTree wanted) {
    return find(after, steps).filter(set -> same(set, wanted)).isPresent()
        && sameBut(before, after, steps);
  }

  static Optional<YamlTree> find(YamlTree tree, List<Step> steps) {
    YamlTree at = tree;
    for (Step step : steps) {
      YamlTree here = at;
      Optional<YamlTree> next =
          step.item()
              ? KeyPath.index(step, here.items()).map(here.items()::get)
              : here.find(step.word());
      if (next.isEmpty()) {
        return Optional.empty();
      }
      at = next.get();
    }
    return Optional.of(at);
  }

  private static boolean same(YamlTree a, YamlTree b) {
    return a.kind() == b.kind()
        && a.text().equals(b.text())
        && a.entries().keySet().equals(b.entries().keySet())
        && a.items().size() == b.items().size()
        && a.entries().entrySet().stream()
            .allMatch(e -> same(e.getValue(), b.entries().get(e.getKey())))
        && IntStream.range(0, a.items().size())
            .allMatch(i -> same(a.items().get(i), b.items().get(i)));
  }

  /** Whether nothing differs beside the way to the key that was set. */
  private static boolean sameBut(YamlTree before, YamlTree after, List<Step> steps) {
    if (steps.isEmpty()) {
      return true;
    }
    Step step = steps.get(0);
    List<Step> rest = steps.subList(1, steps.size());
    if (step.item()) {
      int at = KeyPath.index(step, before.items()).orElse(-1);
      return before.items().size() == after.items().size()
          && IntStream.range(0, before.items().size())
              .allMatch(
                  i ->
                      i == at
                          ? sameBut(before.items().get(i), after.items().get(i), rest)
                          : same(before.items().get(i), after.items().get(i)));
    }
    return before.entries().entrySet().stream()
        .allMatch(
            e ->
                after.entries().containsKey(e.getKey())
                    && (e.getKey().equals(step.word())
                        ? sameBut(e.getValue(), after.entries().get(e.getKey()), rest)
                        : same(e.getValue(), after.entries().get(e.getKey()))));
  }
}
