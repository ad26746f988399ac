package hark.mission;

import hark.ensemble.Cause;
import hark.fault.FaultTree;
import hark.power.Face;
import hark.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Causes of silence and the fault tree over them, as {@code causes.yaml} states them: the stock
 * ones of this program, and a mission's own merged over them by id.
 *
 * <p>A mission's file may be as short as one key: what it does not write of an event stays as the
 * stock has it. A gate that is written again replaces the inputs of the stock gate.
 *
 * @param causes basic events in the order written, nuisances not among them
 * @param tree the fault tree, sound
 * @param warnings sensible to know, not wrong
 * @param notes what was left out because it cannot happen to the spacecraft
 */
public record CausesFile(
    List<Cause> causes, FaultTree tree, List<Problem> warnings, List<Problem> notes) {
  private static final String STOCK = "/hark/causes.yaml";

  /** A file that leaves the stock causes as they are. */
  static final String NOTHING_OWN = "hark: 1\n";

  /** Keeps its own copies. */
  public CausesFile {
    causes = List.copyOf(causes);
    warnings = List.copyOf(warnings);
    notes = List.copyOf(notes);
  }

  /** The stock causes alone. */
  public static CausesFile stock() {
    return read("causes.yaml", NOTHING_OWN);
  }

  /**
   * A mission's file over the stock one.
   *
   * @param fileName as problems name it
   * @throws hark.problem.BadInput with every problem of the file
   */
  public static CausesFile read(String fileName, String yaml) {
    Problems problems = new Problems();
    Optional<CausesFile> read = read(fileName, yaml, Optional.empty(), problems);
    problems.throwIfAny();
    return read.orElseThrow();
  }

  /**
   * The fault tree of a file standing alone, which need not have the keys of the diagnosis.
   *
   * @param missionHours time over which {@code hazard_per_day} becomes a probability, h
   * @throws hark.problem.BadInput with every problem of the file
   */
  public static FaultTree treeAlone(String fileName, String yaml, double missionHours) {
    Problems problems = new Problems();
    YamlTree file = YamlTree.parse(fileName, yaml, problems);
    problems.throwIfAny();
    FaultTree tree = FaultTreeFile.read(file, missionHours, problems).tree();
    problems.throwIfAny();
    return tree;
  }

  /**
   * As {@link #read(String, String)} for readers that gather problems of several files.
   *
   * @param faces of the spacecraft that the causes are to fit; empty to leave that out
   */
  static Optional<CausesFile> read(
      String fileName, String yaml, Optional<List<Face>> faces, Problems problems) {
    int before = problems.count();
    YamlTree own = YamlTree.parse(fileName, yaml, problems);
    if (problems.count() > before) {
      return Optional.empty();
    }
    YamlTree merged = CausesMerge.over(stockTree(problems), own);
    FaultTreeFile tree = FaultTreeFile.read(merged, FaultTreeFile.DAYS_OF_PRIOR * 24, problems);
    List<Cause> causes = CauseReader.list(tree, problems);
    if (problems.count() > before) {
      return Optional.empty();
    }
    CausesFit fit =
        faces
            .map(there -> CausesFit.to(there, causes, tree, problems))
            .orElse(CausesFit.unfitted(causes, tree.tree()));
    if (problems.count() > before) {
      return Optional.empty();
    }
    return Optional.of(new CausesFile(fit.causes(), fit.tree(), apart(tree), fit.notes()));
  }

  private static YamlTree stockTree(Problems problems) {
    try (InputStream stream = CausesFile.class.getResourceAsStream(STOCK)) {
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      return YamlTree.parse("stock causes.yaml", text, problems);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Events that no gate under the top names: the diagnosis knows them, the tree does not. */
  private static List<Problem> apart(FaultTreeFile file) {
    Set<String> met = new LinkedHashSet<>();
    List<String> open = new ArrayList<>(List.of(file.tree().top()));
    while (!open.isEmpty()) {
      String id = open.remove(open.size() - 1);
      if (met.add(id) && file.tree().gates().containsKey(id)) {
        open.addAll(file.tree().gates().get(id).inputs());
      }
    }
    return file.tree().events().keySet().stream()
        .filter(id -> !met.contains(id))
        .map(
            id ->
                new Problem(
                    "event '" + id + "' stands under no gate of the tree",
                    file.where(id),
                    "name it among the inputs of a gate, such as that of its branch"))
        .toList();
  }
}
