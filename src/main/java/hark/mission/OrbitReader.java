package hark.mission;

import hark.ensemble.OrbitSource;
import hark.ensemble.OrbitSource.AlongTrack;
import hark.mission.YamlTree.Kind;
import hark.orbit.DragBody;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.SetScale;
import hark.orbit.StateSpread;
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

  static List<OrbitSource> read(
      Section orbit, FolderSource folder, DragBody body, Reading reading) {
    return orbit.parts("sources", source -> source(source, folder, body, reading));
  }

  private static OrbitSource source(
      Section source, FolderSource folder, DragBody body, Reading reading) {
    Optional<List<ElementSet>> read = SetFiles.read(source, folder, body, reading);
    Map<String, String> sameAs = sameAs(source.at("same_as"), reading);
    Map<String, Double> candidates = candidates(source.required("candidates"), reading);
    Optional<List<ElementSet>> sets =
        read.map(
            all ->
                all.stream()
                    .map(
                        set ->
                            sameAs.containsKey(set.objectId())
                                ? set.named(sameAs.get(set.objectId()))
                                : set)
                    .sorted(
                        Comparator.comparing(ElementSet::objectId)
                            .thenComparing(ElementSet::epoch, Comparator.reverseOrder()))
                    .toList());
    AlongTrack usual = AlongTrack.PUBLISHED;
    AlongTrack alongTrack =
        source.partOrDefaults(
            "along_track_s",
            a ->
                new AlongTrack(
                    a.mean("initial", SECONDS, usual.initialSeconds()),
                    a.mean("per_day", SECONDS, usual.perDaySeconds()),
                    a.mean("per_day2", SECONDS, usual.perDay2Seconds())));
    sets.ifPresent(found -> requireSets(source, candidates, found, reading));
    boolean measured = source.at("along_track_s").isNothing();
    return new OrbitSource(
        sets.orElse(List.of()),
        measured ? measured(usual, sets.orElse(List.of()), candidates.keySet()) : alongTrack,
        candidates,
        listens(source.at("listens_MHz"), candidates.keySet(), reading));
  }

  /**
   * Where the mission says nothing, successive sets of the candidates say how well they foretell.
   */
  private static AlongTrack measured(AlongTrack usual, List<ElementSet> sets, Set<String> ids) {
    SetScale scale =
        SetScale.of(
            sets.stream().filter(set -> ids.contains(set.objectId())).toList(),
            new StateSpread(usual.initialSeconds(), usual.perDaySeconds(), usual.perDay2Seconds()),
            EarthModel.bundled());
    return usual.times(scale.factor());
  }

  /** In which bands other crews listen, by object. */
  private static Map<String, List<double[]>> listens(
      YamlTree node, Set<String> candidates, Reading reading) {
    Map<String, List<double[]>> listens = new LinkedHashMap<>();
    if (!node.isNothing() && node.kind() != Kind.MAP) {
      reading.problems.add(
          node,
          "found " + node.found() + ", expected object ids with bands",
          "write { \"98002\": [[435, 438]] }");
      return listens;
    }
    node.entries()
        .forEach(
            (id, bands) -> {
              if (!candidates.contains(id)) {
                reading.problems.add(
                    bands, "'" + id + "' is not among the candidates", "take one of them");
              }
              listens.put(id, Bands.read(bands, reading));
            });
    return listens;
  }

  private static Map<String, String> sameAs(YamlTree node, Reading reading) {
    Map<String, String> names = new LinkedHashMap<>();
    if (!node.isNothing() && node.kind() != Kind.MAP) {
      reading.problems.add(
          node,
          "found " + node.found() + ", expected what a message calls an object and its number",
          "write { \"CORNCRAKE\": \"98001\" }");
      return names;
    }
    node.entries()
        .forEach(
            (name, id) ->
                YamlValues.text(id, reading.problems).ifPresent(text -> names.put(name, text)));
    return names;
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
            "object '" + id + "' has no element set in " + SetFiles.named(source),
            "there are sets of " + String.join(", ", known.stream().limit(12).toList()));
      }
    }
  }
}
