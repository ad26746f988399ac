package hark.console;

import hark.assessment.Assessment;
import hark.evidence.Entry;
import hark.mission.CausesEdit;
import hark.mission.EditedFolder;
import hark.mission.FolderSource;
import hark.mission.Mission;
import hark.mission.MissionCheck;
import hark.mission.Missions;
import hark.mission.YamlEdit;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The files a mission is made of, as the page reads them and tries changes on copies. Nothing here
 * writes a file.
 */
public final class MissionPapers {
  static final String MISSION = "mission.yaml";

  private static final String CAUSES = "causes.yaml";

  /** The files a person may edit on the page. */
  static final List<String> EDITABLE = List.of(MISSION, CAUSES);

  private static final Pattern PRIOR = Pattern.compile("events\\.([^.\\[\\]]+)\\.probability");

  private final FolderSource folder;
  private final Mission mission;
  private final MissionModel.Assessing assessing;
  private final FutureTask<List<Problem>> tree;
  private boolean treeBegun;

  /**
   * A mission's papers.
   *
   * @param folder that does not change any more
   * @param tree what a simulation tells of the fault tree; asked once, and only when somebody asks
   */
  MissionPapers(
      FolderSource folder,
      Mission mission,
      MissionModel.Assessing assessing,
      Callable<List<Problem>> tree) {
    this.folder = folder;
    this.mission = mission;
    this.assessing = assessing;
    this.tree = new FutureTask<>(tree);
  }

  Mission mission() {
    return mission;
  }

  /** The editable files' texts; a causes file that is not there is one without own causes. */
  Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String file : EDITABLE) {
      texts.put(file, folder.text(file).orElseGet(CausesEdit::nothingOwn));
    }
    return texts;
  }

  /** What {@code hark check} finds, but for what only a simulation can tell. */
  MissionCheck check(Map<String, String> texts) {
    return Missions.check(new EditedFolder(folder, texts));
  }

  /**
   * What a simulation tells of the fault tree of the mission as it is. Takes seconds: the first who
   * asks sets it going, and until it is there the answer is empty.
   */
  synchronized Optional<List<Problem>> treeWarnings() {
    if (!treeBegun) {
      treeBegun = true;
      Thread thread = new Thread(tree, "hark-tree");
      thread.setDaemon(true);
      thread.start();
    }
    return tree.isDone() ? Optional.of(told()) : Optional.empty();
  }

  private List<Problem> told() {
    try {
      return tree.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return List.of();
    } catch (ExecutionException e) {
      String why = String.valueOf(e.getCause().getMessage());
      return List.of(
          new Problem(
              "the fault tree could not be set against the simulation: " + why,
              CAUSES,
              "see what `hark check` says"));
    }
  }

  /**
   * A text with one key set.
   *
   * @throws BadInput when file, key or value cannot be read
   */
  static String set(String file, String text, String key, String value) {
    Matcher prior = PRIOR.matcher(key);
    if (file.equals(CAUSES) && prior.matches()) {
      return CausesEdit.prior(text, prior.group(1), value);
    }
    return YamlEdit.set(file, text, key, value);
  }

  /**
   * Works out what the record comes to under other texts.
   *
   * @throws BadInput with every problem of the texts
   */
  Assessment assess(Map<String, String> texts, List<Entry> entries, Instant now) {
    Mission edited = check(texts).orThrow();
    return assessing.assess(edited, entries, now).assessment();
  }
}
