package hark.mission;

import hark.mission.YamlTree.Kind;
import hark.mission.YamlTree.Place;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays a mission's causes over the stock ones before either is read, so that every key keeps the
 * file and line it came from.
 */
final class CausesMerge {
  /** Keys of which a definition has one: writing one takes the stock's others away. */
  private static final List<List<String>> EITHER =
      List.of(List.of("probability", "hazard_per_day"), FaultTreeFile.JOINS);

  private CausesMerge() {}

  static YamlTree over(YamlTree stock, YamlTree own) {
    if (own.kind() != Kind.MAP) {
      return own;
    }
    Map<String, YamlTree> entries = new LinkedHashMap<>(own.entries());
    for (String part : List.of("events", "gates")) {
      entries.put(part, definitions(part(stock, part), part(own, part)));
    }
    stock.find("top").ifPresent(top -> entries.putIfAbsent("top", top));
    return YamlTree.map(place(own), entries);
  }

  private static YamlTree definitions(YamlTree stock, YamlTree own) {
    if (own.isNothing()) {
      return stock;
    }
    if (own.kind() != Kind.MAP) {
      return own;
    }
    Map<String, YamlTree> all = new LinkedHashMap<>(stock.entries());
    own.entries().forEach((id, written) -> all.merge(id, written, CausesMerge::definition));
    return YamlTree.map(place(own), all);
  }

  private static YamlTree definition(YamlTree stock, YamlTree own) {
    if (own.kind() != Kind.MAP) {
      return own;
    }
    Map<String, YamlTree> keys = new LinkedHashMap<>(stock.entries());
    for (List<String> group : EITHER) {
      if (group.stream().anyMatch(own.entries()::containsKey)) {
        group.forEach(keys::remove);
      }
    }
    keys.putAll(own.entries());
    return YamlTree.map(place(own), keys);
  }

  private static YamlTree part(YamlTree file, String key) {
    return file.find(key).orElseGet(() -> file.absent(key));
  }

  private static Place place(YamlTree node) {
    return new Place(node.file(), node.line(), node.path());
  }
}
