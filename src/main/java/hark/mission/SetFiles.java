package hark.mission;

import hark.orbit.DragBody;
import hark.orbit.EarthModel;
import hark.orbit.ElementSet;
import hark.orbit.ElementSets;
import hark.problem.BadInput;
import hark.problem.NearestWord;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the sets of one orbit source: a file, or a folder with files of many dates. */
final class SetFiles {
  /** Files in a folder; a set a day of everything is three years. */
  private static final int MOST_FILES = 1000;

  private final FolderSource folder;
  private final DragBody body;
  private final Reading reading;

  /** By object and epoch: the same set in two files counts once, as the later file has it. */
  private final Map<String, ElementSet> sets = new LinkedHashMap<>();

  private SetFiles(FolderSource folder, DragBody body, Reading reading) {
    this.folder = folder;
    this.body = body;
    this.reading = reading;
  }

  /** What a source calls the place of its sets. */
  static String named(Section source) {
    YamlTree file = source.at("file");
    return file.isNothing() ? source.at("folder").text() : file.text();
  }

  /** All sets in the order read; empty when there is any problem. */
  static Optional<List<ElementSet>> read(
      Section source, FolderSource folder, DragBody body, Reading reading) {
    int before = reading.problems.count();
    SetFiles files = new SetFiles(folder, body, reading);
    YamlTree directory = source.at("folder");
    if (directory.isNothing()) {
      String file = source.text("file");
      if (!file.isEmpty()) {
        files.one(source.at("file"), file);
      }
    } else {
      if (!source.at("file").isNothing()) {
        reading.problems.add(
            source.at("file"), "there is a file and a folder", "keep one of the two");
      }
      files.all(directory);
    }
    return reading.problems.count() > before || files.sets.isEmpty()
        ? Optional.empty()
        : Optional.of(List.copyOf(files.sets.values()));
  }

  private void all(YamlTree at) {
    String directory = at.text();
    if (!RelativePath.staysInside(directory)) {
      reading.problems.add(
          at, "'" + directory + "' leads out of the mission folder", "copy the files into orbit/");
      return;
    }
    List<String> names =
        folder.list(directory).stream().filter(name -> !name.startsWith(".")).toList();
    if (names.isEmpty()) {
      reading.problems.add(
          at, "there are no files in '" + directory + "'", "save element sets there, TLE or OMM");
    }
    if (names.size() > MOST_FILES) {
      reading.problems.add(
          at,
          names.size() + " files, the limit is " + MOST_FILES,
          "keep the sets of some weeks, or join files");
      return;
    }
    List<String> sorted = new ArrayList<>(names);
    sorted.sort(null);
    sorted.forEach(name -> one(at, directory + "/" + name));
  }

  private void one(YamlTree at, String file) {
    if (!RelativePath.staysInside(file)) {
      reading.problems.add(
          at, "'" + file + "' leads out of the mission folder", "copy the file into orbit/");
      return;
    }
    try {
      Optional<String> text = folder.text(file);
      if (text.isEmpty()) {
        reading.problems.add(at, "there is no file '" + file + "'", missing(file));
        return;
      }
      List<ElementSet> read =
          ElementSets.parse(folder.label(file), text.get(), body, EarthModel.bundled());
      for (ElementSet set : read) {
        Instant epoch = set.epoch();
        sets.put(set.objectId() + " " + epoch + (set.isState() ? " state" : ""), set);
      }
    } catch (BadInput bad) {
      reading.problems.addAll(bad.problems());
    }
  }

  private String missing(String file) {
    int slash = file.lastIndexOf('/');
    String directory = slash < 0 ? "" : file.substring(0, slash);
    return NearestWord.find(file.substring(slash + 1), folder.list(directory))
        .map(near -> "did you mean '" + (slash < 0 ? "" : directory + "/") + near + "'?")
        .orElse("save the element sets there, as TLE or OMM");
  }
}
