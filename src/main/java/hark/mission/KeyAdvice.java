package hark.mission;

import hark.problem.NearestWord;
import java.util.Collection;
import java.util.List;

/** Finds the key that somebody most likely meant among all that a mission file knows. */
final class KeyAdvice {
  private KeyAdvice() {}

  /** "did you mean 'x'?" with the whole path, or where to find a list. */
  static String advice(String key, Collection<String> known) {
    String last = last(key);
    List<String> ending = known.stream().filter(k -> k.endsWith("." + key)).toList();
    List<String> alike = known.stream().filter(k -> last(k).equals(last)).toList();
    for (List<String> group : List.of(ending, alike)) {
      if (!group.isEmpty()) {
        return meant(NearestWord.find(key, group).orElse(group.get(0)));
      }
    }
    return NearestWord.find(last, known.stream().map(KeyAdvice::last).distinct().toList())
        .flatMap(
            word -> {
              List<String> group = known.stream().filter(k -> last(k).equals(word)).toList();
              return NearestWord.find(key, group).or(() -> group.stream().findFirst());
            })
        .or(() -> NearestWord.find(key, known))
        .map(KeyAdvice::meant)
        .orElse("hark check --show-defaults lists keys");
  }

  private static String meant(String key) {
    return "did you mean '" + key + "'?";
  }

  private static String last(String key) {
    return key.substring(key.lastIndexOf('.') + 1);
  }
}
