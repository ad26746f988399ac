package hark.mission;

import hark.ensemble.Uncertain;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What reading a mission file gathers beside its values: problems, warnings, defaults, keys nothing
 * is computed from, and the uncertain numbers of the body.
 *
 * <p>A mission file is read once to check it and to learn which numbers are uncertain; then once
 * more for each body, with the drawn values in their place ({@link #drawn}). So there is one
 * reader, and a key is uncertain or not without the reader knowing.
 */
final class Reading {
  final Problems problems = new Problems();
  final List<Problem> warnings = new ArrayList<>();
  final List<DefaultUsed> defaults = new ArrayList<>();
  final Set<String> notComputed = new LinkedHashSet<>();

  /** Paths of all keys that were asked for, written or not. */
  final Set<String> known = new LinkedHashSet<>();

  /** Numbers met, written or taken by default, by path. */
  final Map<String, MissionNumbers.Met> numbers = new LinkedHashMap<>();

  private final Map<String, Uncertain> uncertain = new LinkedHashMap<>();
  private final Map<String, Double> drawn;
  private final boolean first;

  private Reading(Map<String, Double> drawn, boolean first) {
    this.drawn = drawn;
    this.first = first;
  }

  /** The first reading: every number at its mean. */
  static Reading first() {
    return new Reading(Map.of(), true);
  }

  /** A later reading, with one value for each uncertain key. */
  static Reading drawn(Map<String, Double> values) {
    return new Reading(values, false);
  }

  /** The uncertain numbers of the body by key path, in the order read. */
  Map<String, Uncertain> uncertain() {
    return uncertain;
  }

  /** True when this reading brings its own value for a key, so that the file's need not be read. */
  boolean isDrawn(YamlTree at) {
    return drawn.containsKey(at.path());
  }

  /** That value, within its span. */
  double drawnValue(YamlTree at, Span span) {
    return span.clamp(drawn.get(at.path()));
  }

  /** The value of a body's number in this reading, within its span. */
  double value(YamlTree at, Uncertain number, Span span) {
    if (number.isFixed()) {
      return span.clamp(number.mean());
    }
    uncertain.putIfAbsent(at.path(), number);
    Double value = drawn.get(at.path());
    return span.clamp(value == null ? number.mean() : value);
  }

  /** Remembers a number for those who ask what is there to be changed. */
  void met(YamlTree at, Uncertain number, Span span) {
    met(new MissionNumbers.Met(at.path(), number, span, false));
  }

  void met(MissionNumbers.Met number) {
    if (first) {
      numbers.put(number.path(), number);
    }
  }

  /** Remembers that a key is known, written or not. */
  YamlTree asked(YamlTree value) {
    if (first) {
      known.add(value.path());
    }
    return value;
  }

  /** True for the reading that checks, false for those that only draw. */
  boolean isFirst() {
    return first;
  }

  void warn(YamlTree at, String what, String mend) {
    warnings.add(new Problem(what, at.where(), mend));
  }
}
