package hark.evidence;

import hark.problem.BadInput;
import hark.problem.Problem;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The record as it stands: corrections applied, nothing left of what they replaced. Pure. */
public final class EvidenceBook {
  private EvidenceBook() {}

  /** An entry checked and ready to be appended: its keys no longer depend on predictions. */
  public record Draft(String kind, Map<String, String> keys, Evidence evidence) {
    /** Keeps its own copy. */
    public Draft {
      keys = Map.copyOf(keys);
    }
  }

  /**
   * What counts at a time: entries over by {@code now}, each as the corrections made by then leave
   * it, ordered by time, then number. Corrections themselves are not in the list. A correction may
   * itself be corrected or withdrawn; several corrections of one entry apply in the order of their
   * numbers. The order of {@code journal} does not matter.
   *
   * @throws BadInput when a correction names no earlier entry, or leaves keys that cannot be read
   */
  public static List<Entry> effective(List<Entry> journal, Instant now) {
    return new Merge(journal).at(now);
  }

  /**
   * Checks a new entry against the mission and the journal, and settles its keys.
   *
   * @param journal every entry so far, as stored
   * @throws BadInput with all problems; nothing has been changed then
   */
  public static Draft draft(
      List<Entry> journal, String kind, Map<String, String> keys, EvidenceContext context) {
    if (!kind.equals("correction")) {
      Evidence evidence = EvidenceText.parse(kind, keys, context);
      return new Draft(kind, EvidenceText.settled(keys, evidence), evidence);
    }
    Evidence.Correction asWritten = (Evidence.Correction) EvidenceText.parse(kind, keys, context);
    int root = root(journal, asWritten.of());
    Map<String, String> settled = settledCorrection(journal, root, keys, context);
    Evidence evidence = EvidenceText.parse(kind, settled, context);
    refuseBadResult(journal, root, settled, evidence, context);
    return new Draft(kind, settled, evidence);
  }

  /** The entry that a chain of corrections ends at. */
  private static int root(List<Entry> journal, int of) {
    Optional<Entry> target = journal.stream().filter(e -> e.number() == of).findFirst();
    if (target.isEmpty()) {
      throw unknown(of, "key of");
    }
    return target.get().evidence() instanceof Evidence.Correction c ? root(journal, c.of()) : of;
  }

  /** A correction that names a pass is settled as the entry it moves would be. */
  private static Map<String, String> settledCorrection(
      List<Entry> journal, int root, Map<String, String> keys, EvidenceContext context) {
    if (!keys.containsKey("pass")) {
      return keys;
    }
    Optional<Entry> standing = standing(journal, root);
    if (standing.isEmpty()) {
      throw BadInput.of(
          "entry " + root + " is withdrawn", "key pass", "give from and to instead of pass");
    }
    Map<String, String> whole = new TreeMap<>(standing.get().keys());
    whole.remove("from");
    whole.remove("to");
    Merge.replace(whole, keys);
    whole.remove("of");
    Evidence moved = EvidenceText.parse(standing.get().evidence().kind(), whole, context);
    Map<String, String> settled = new TreeMap<>(keys);
    settled.remove("pass");
    settled.put("from", moved.at().toString());
    settled.put("to", moved.end().toString());
    return settled;
  }

  private static void refuseBadResult(
      List<Entry> journal,
      int root,
      Map<String, String> settled,
      Evidence evidence,
      EvidenceContext context) {
    int number = journal.stream().mapToInt(Entry::number).max().orElse(0) + 1;
    List<Entry> after = new ArrayList<>(journal);
    after.add(new Entry(number, context.at(), "", "", settled, evidence));
    standing(after, root)
        .ifPresent(e -> EvidenceText.parse(e.evidence().kind(), e.keys(), context));
  }

  private static Optional<Entry> standing(List<Entry> journal, int number) {
    return effective(journal, Instant.MAX).stream().filter(e -> e.number() == number).findFirst();
  }

  private static BadInput unknown(int number, String where) {
    return BadInput.of(
        "there is no entry " + number,
        where,
        "take the number of an earlier entry that `hark journal` lists");
  }

  /** One pass over a journal from its newest entry to its oldest. */
  private static final class Merge {
    private final List<Entry> newestFirst;
    private final Map<Integer, List<Entry>> correctionsOf = new HashMap<>();

    Merge(List<Entry> journal) {
      newestFirst =
          journal.stream().sorted(Comparator.comparingInt(Entry::number).reversed()).toList();
    }

    List<Entry> at(Instant now) {
      List<Entry> standing = new ArrayList<>();
      for (Entry entry : newestFirst) {
        if (entry.evidence() instanceof Evidence.Correction && entry.evidence().at().isAfter(now)) {
          continue;
        }
        corrected(entry).ifPresent(e -> keep(e, now, standing));
      }
      standing.sort(
          Comparator.comparing((Entry e) -> e.evidence().at()).thenComparing(Entry::number));
      return List.copyOf(standing);
    }

    private void keep(Entry entry, Instant now, List<Entry> standing) {
      if (entry.evidence() instanceof Evidence.Correction correction) {
        requireEarlier(entry.number(), correction.of());
        correctionsOf.computeIfAbsent(correction.of(), n -> new ArrayList<>()).add(0, entry);
      } else if (!entry.evidence().end().isAfter(now)) {
        standing.add(entry);
      }
    }

    private void requireEarlier(int number, int of) {
      if (of >= number || newestFirst.stream().noneMatch(e -> e.number() == of)) {
        throw unknown(of, "entry " + number + ", key of");
      }
    }

    /** The entry as its corrections leave it; empty when withdrawn. */
    private Optional<Entry> corrected(Entry entry) {
      List<Entry> corrections = correctionsOf.getOrDefault(entry.number(), List.of());
      if (corrections.isEmpty()) {
        return Optional.of(entry);
      }
      Map<String, String> keys = new TreeMap<>(keysOf(entry));
      boolean withdrawn = false;
      for (Entry correction : corrections) {
        Map<String, String> replacing =
            new TreeMap<>(((Evidence.Correction) correction.evidence()).keys());
        boolean restores = replacing.remove(CorrectionText.WITHDRAWN) != null;
        withdrawn = !restores && (withdrawn || replacing.isEmpty());
        replace(keys, replacing);
      }
      return withdrawn ? Optional.empty() : Optional.of(reread(entry, keys));
    }

    private static Map<String, String> keysOf(Entry entry) {
      if (!(entry.evidence() instanceof Evidence.Correction correction)) {
        return entry.keys();
      }
      Map<String, String> keys = new TreeMap<>(correction.keys());
      if (keys.isEmpty()) {
        keys.put(CorrectionText.WITHDRAWN, "yes");
      }
      keys.put("of", Integer.toString(correction.of()));
      return keys;
    }

    private static Entry reread(Entry entry, Map<String, String> keys) {
      String kind = entry.evidence().kind();
      EvidenceContext context = EvidenceContext.alreadyChecked(entry.evidence().at());
      try {
        Evidence evidence = EvidenceText.parse(kind, keys, context);
        return new Entry(
            entry.number(), entry.recordedAt(), entry.who(), entry.note(), keys, evidence);
      } catch (BadInput bad) {
        String place = "entry " + entry.number() + " as corrected, ";
        throw new BadInput(
            bad.problems().stream()
                .map(p -> new Problem(p.what(), place + p.where(), p.mend()))
                .toList());
      }
    }

    static void replace(Map<String, String> keys, Map<String, String> replacing) {
      replacing.forEach(
          (key, value) -> {
            if (value.isEmpty()) {
              keys.remove(key);
            } else {
              keys.put(key, value);
            }
          });
    }
  }
}
