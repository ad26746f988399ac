package hark.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that somebody most likely meant, by edit distance. Pure. */
public final class NearestWord {
  /** Longer words are not compared: nobody mistypes them into a short one. */
  private static final int MAX_LENGTH = 80;

  private NearestWord() {}

  /**
   * The known word nearest to {@code word}, letter case ignored; empty when even that one would
   * need more than half of its letters changed.
   */
  public static Optional<String> find(String word, Collection<String> known) {
    if (word.length() > MAX_LENGTH) {
      return Optional.empty();
    }
    return known.stream()
        .filter(k -> k.length() <= MAX_LENGTH)
        .min(Comparator.comparingInt((String k) -> distance(word, k)).thenComparing(k -> k))
        .filter(k -> 2 * distance(word, k) <= Math.max(k.length(), word.length()));
  }

  /** "did you mean 'x'?", or else all that is known. */
  public static String advice(String word, Collection<String> known) {
    return find(word, known)
        .map(k -> "did you mean '" + k + "'?")
        .orElse("known here: " + String.join(", ", known));
  }

  /** Letters to insert, delete or replace to turn one word into the other. */
  static int distance(String one, String other) {
    String a = one.toLowerCase(Locale.ROOT);
    String b = other.toLowerCase(Locale.ROOT);
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replace = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replace, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
