package hark.mission;

import java.util.List;
import java.util.Optional;

/** The text files of a mission folder, wherever they lie. */
public interface FolderSource {
  /** The name people know a file by, as problems should print it. */
  String label(String relativePath);

  /**
   * A file's text.
   *
   * @param relativePath with forward slashes, inside the folder
   * @return empty when there is no such file
   * @throws hark.problem.BadInput when it is there and cannot be read as text
   */
  Optional<String> text(String relativePath);

  /** Names of the files in a directory, sorted, not those of its sub-directories. */
  List<String> list(String directory);
}
