package hark.mission;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A dotted path of keys as problems and {@code --show-defaults} print it, such as {@code
 * spacecraft.solar.faces[2].normal}; an item of a list may also be named: {@code faces[+X]}.
 *
 * @param steps from the top
 */
record KeyPath(List<Step> steps) {
  /** Longer ones are no keys of a mission file. */
  private static final int MAX_LENGTH = 200;

  /**
   * One step down.
   *
   * @param word a key, or an item's name or number
   */
  record Step(String word, boolean item) {}

  KeyPath {
    steps = List.copyOf(steps);
  }

  /** Reads a path; empty when it is none. */
  static Optional<KeyPath> parse(String text) {
    if (text.length() > MAX_LENGTH) {
      return Optional.empty();
    }
    List<Step> steps = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      boolean item = text.charAt(at) == '[';
      int from = item || (at > 0 && text.charAt(at) == '.') ? at + 1 : at;
      int to = item ? text.indexOf(']', from) : endOfKey(text, from);
      boolean separated = at == 0 ? !item : item || from > at;
      if (to <= from || !separated) {
        return Optional.empty();
      }
      steps.add(new Step(text.substring(from, to), item));
      at = item ? to + 1 : to;
    }
    return steps.isEmpty() ? Optional.empty() : Optional.of(new KeyPath(steps));
  }

  private static int endOfKey(String text, int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) != '.' && text.charAt(at) != '[') {
      at++;
    }
    return at;
  }

  /**
   * Index of the item a step means: that of its name, else its number; empty when there is none.
   */
  static Optional<Integer> index(Step step, List<YamlTree> items) {
    for (int i = 0; i < items.size(); i++) {
      if (name(items.get(i)).filter(step.word()::equals).isPresent()) {
        return Optional.of(i);
      }
    }
    boolean number = step.word().matches("\\d{1,6}");
    return number && Integer.parseInt(step.word()) < items.size()
        ? Optional.of(Integer.parseInt(step.word()))
        : Optional.empty();
  }

  static Optional<String> name(YamlTree item) {
    return item.find("name").filter(n -> !n.text().isEmpty()).map(YamlTree::text);
  }

  /** The same key with the items of lists named where they have names. */
  static String named(YamlTree top, String path) {
    StringBuilder named = new StringBuilder();
    YamlTree at = top;
    for (Step step : parse(path).map(KeyPath::steps).orElse(List.of())) {
      YamlTree here = at;
      if (step.item()) {
        YamlTree item = index(step, here.items()).map(here.items()::get).orElse(here);
        named.append('[').append(name(item).orElse(step.word())).append(']');
        at = item;
      } else {
        named.append(named.isEmpty() ? "" : ".").append(step.word());
        at = here.find(step.word()).orElseGet(() -> here.absent(step.word()));
      }
    }
    return named.toString();
  }
}
