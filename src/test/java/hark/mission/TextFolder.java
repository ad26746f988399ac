package hark.mission;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A folder in memory, for tests: a file's text by its path. */
record TextFolder(Map<String, String> files) implements FolderSource {
  /** The valid mission of the tests. */
  static TextFolder kittiwake() {
    ResourceFolder folder = ResourceFolder.of("missions/kittiwake");
    return new TextFolder(
        Map.of(
            "mission.yaml", folder.text("mission.yaml").orElseThrow(),
            "orbit/shared.tle", folder.text("orbit/shared.tle").orElseThrow()));
  }

  TextFolder with(String path, String text) {
    Map<String, String> changed = new TreeMap<>(files);
    changed.put(path, text);
    return new TextFolder(changed);
  }

  TextFolder without(String path) {
    Map<String, String> changed = new TreeMap<>(files);
    changed.remove(path);
    return new TextFolder(changed);
  }

  /** With one piece of the mission file replaced, which must be there once. */
  TextFolder replacing(String before, String after) {
    String yaml = files.get("mission.yaml");
    int at = yaml.indexOf(before);
    if (at < 0 || yaml.indexOf(before, at + 1) >= 0) {
      throw new IllegalArgumentException("'" + before + "' is not there exactly once");
    }
    return with("mission.yaml", yaml.replace(before, after));
  }

  @Override
  public String label(String relativePath) {
    return relativePath;
  }

  @Override
  public Optional<String> text(String relativePath) {
    return Optional.ofNullable(files.get(relativePath));
  }

  @Override
  public List<String> list(String directory) {
    String prefix = directory.isEmpty() ? "" : directory + "/";
    return files.keySet().stream()
        .filter(path -> path.startsWith(prefix))
        .map(path -> path.substring(prefix.length()))
        .filter(name -> name.indexOf('/') < 0)
        .sorted()
        .toList();
  }
}
