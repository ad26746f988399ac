package hark.evidence;

import hark.problem.BadInput;
import hark.problem.NearestWord;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Reads a correction. Its keys are checked for what they say only against the entry they replace,
 * by {@link EvidenceBook}; here only for being keys at all.
 */
final class CorrectionText {
  /** Key by which a correction takes an entry out of the record. */
  static final String WITHDRAWN = "withdrawn";

  private CorrectionText() {}

  static Evidence parse(Map<String, String> keys, EvidenceContext context) {
    List<Problem> problems = new ArrayList<>();
    int of = number(keys.get("of"), problems);
    Map<String, String> replacing = new TreeMap<>(keys);
    replacing.remove("of");
    String withdrawn = replacing.get(WITHDRAWN);
    if (withdrawn != null && !List.of("yes", "no").contains(withdrawn)) {
      problems.add(new Problem("withdrawn is neither yes nor no", "key withdrawn", "write yes"));
    }
    if (replacing.isEmpty()) {
      problems.add(
          new Problem(
              "the correction says nothing to replace",
              "correction",
              "add the keys that replace, or withdrawn=yes"));
    }
    boolean withdraws = "yes".equals(withdrawn);
    if (withdraws && replacing.size() > 1) {
      problems.add(
          new Problem(
              "withdrawn=yes stands beside other keys",
              "key withdrawn",
              "either withdraw the entry or replace keys of it"));
    }
    refuseStrangers(replacing, problems);
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    return new Evidence.Correction(context.at(), of, withdraws ? Map.of() : replacing);
  }

  private static void refuseStrangers(Map<String, String> keys, List<Problem> problems) {
    TreeSet<String> known = new TreeSet<>();
    EvidenceKinds.list().forEach(kind -> known.addAll(EvidenceKinds.keysOf(kind)));
    for (String key : keys.keySet()) {
      if (!known.contains(key)) {
        problems.add(
            new Problem(
                "no kind of entry has a key '" + key + "'",
                "key " + key,
                NearestWord.advice(key, known)));
      }
    }
  }

  private static int number(String text, List<Problem> problems) {
    if (text == null) {
      problems.add(
          new Problem(
              "correction needs of", "key of", "add of=N, the number that `hark journal` lists"));
      return 0;
    }
    try {
      int number = Integer.parseInt(text.strip());
      if (number >= 1) {
        return number;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    problems.add(
        new Problem(
            "of '" + text + "' is not the number of an entry",
            "key of",
            "take the number that `hark journal` lists"));
    return 0;
  }
}
