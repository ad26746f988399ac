package hark.mission;

import hark.ensemble.OrbitSource;
import hark.ensemble.OrbitSource.AlongTrack;
import hark.mission.YamlTree.Kind;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.problem.BadInput;
import hark.problem.NearestWord;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Reads {@code orbit}: element-set files and which of their objects may be ours. */
final class OrbitReader {
  private static final Span SECONDS = Span.of(0, 10_000).usually(0, 300).orIn("milliseconds", 1e-3);

  /** Weights may miss 1 by so much through rounding in decimal notation. */
  private static final double ROUNDING = 1e-9;

  private OrbitReader() {}

  static List<OrbitSource> read(Section orbit, FolderSource folder, Reading reading) {
    return orbit.parts("sources", source -> source(source, folder, reading));
  }

  private static OrbitSource source(Section source, FolderSource folder, Reading reading) {
    Optional<List<ElementSet>> sets = sets(source, folder, reading);
    AlongTrack alongTrack =
        source.partOrDefaults(
            "along_track_s",
            a ->
                new AlongTrack(
                    a.mean("initial", SECONDS, 1.5),
                    a.mean("per_day", SECONDS, 2),
                    a.mean("per_day2", SECONDS, 0.5)));
    Map<String, Double> candidates = candidates(source.required("candidates"), reading);
    sets.ifPresent(found -> requireSets(source, candidates, found, reading));
    return new OrbitSource(sets.orElse(List.of()), alongTrack, candidates);
  }

  private static Optional<List<ElementSet>> sets(
      Section source, FolderSource folder, Reading reading) {
    String file = source.text("file");
    YamlTree at = source.at("file");
    if (file.isEmpty()) {
      return Optional.empty();
    }
    if (!RelativePath.staysInside(file)) {
      reading.problems.add(
          at, "'" + file + "' leads out of the mission folder", "copy the file into orbit/");
      return Optional.empty();
    }
    try {
      Optional<String> text = folder.text(file);
      if (text.isEmpty()) {
        reading.problems.add(at, "there is no file '" + file + "'", missing(file, folder));
        return Optional.empty();
      }
      List<ElementSet> read = ElementSets.parse(folder.label(file), text.get());
      return Optional.of(
          read.stream()
              .sorted(
                  Comparator.comparing(ElementSet::objectId)
                      .thenComparing(ElementSet::epoch, Comparator.reverseOrder()))
              .toList());
    } catch (BadInput bad) {
      reading.problems.addAll(bad.problems());
      return Optional.empty();
    }
  }

  private static String missing(String file, FolderSource folder) {
    int slash = file.lastIndexOf('/');
    String directory = slash < 0 ? "" : file.substring(0, slash);
    List<String> there = folder.list(directory);
    return NearestWord.find(file.substring(slash + 1), there)
        .map(near -> "did you mean '" + (slash < 0 ? "" : directory + "/") + near + "'?")
        .orElse("save the element sets there, as TLE or OMM");
  }

  private static Map<String, Double> candidates(YamlTree node, Reading reading) {
    Map<String, Double> weights = new LinkedHashMap<>();
    if (!node.isNothing() && (node.kind() != Kind.MAP || node.entries().isEmpty())) {
      reading.problems.add(
          node,
          "found " + node.found() + ", expected object ids with weights",
          "write { \"98001\": 0.5, \"98002\": 0.3 }");
      return weights;
    }
    int before = reading.problems.count();
    node.entries()
        .forEach(
            (id, weight) -> {
              if (weight.isNothing()) {
                reading.problems.add(weight, "the object has no weight", "write a weight 0…1");
              }
              YamlValues.number(weight, Spans.FRACTION, reading.problems)
                  .ifPresent(value -> weights.put(id, value));
            });
    double sum = weights.values().stream().mapToDouble(w -> w).sum();
    if (reading.problems.count() == before && (sum > 1 + ROUNDING || sum <= 0)) {
      reading.problems.add(
          node,
          "the weights sum to " + Span.print(sum) + ", expected more than 0 and at most 1",
          "what is missing to 1 belongs to none of them");
    }
    return weights;
  }

  private static void requireSets(
      Section source, Map<String, Double> candidates, List<ElementSet> sets, Reading reading) {
    Set<String> known = new TreeSet<>(sets.stream().map(ElementSet::objectId).toList());
    YamlTree node = source.at("candidates");
    for (String id : candidates.keySet()) {
      if (!known.contains(id)) {
        reading.problems.add(
            node.find(id).orElse(node),
            "object '" + id + "' has no element set in " + source.at("file").text(),
            "the file has " + String.join(", ", known.stream().limit(12).toList()));
      }
    }
  }
}
