package hark.mission;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A folder in which some files have other texts; nothing on disk changes. */
public final class EditedFolder implements FolderSource {
  private final FolderSource base;
  private final Map<String, String> texts;

  /**
   * Lays texts over a folder.
   *
   * @param texts by relative path; a file that the folder lacks is added
   */
  public EditedFolder(FolderSource base, Map<String, String> texts) {
    this.base = base;
    this.texts = Map.copyOf(texts);
  }

  /** Where an edited file lies says nothing about its text, so it goes by its short name. */
  @Override
  public String label(String relativePath) {
    return texts.containsKey(relativePath) ? relativePath : base.label(relativePath);
  }

  @Override
  public Optional<String> text(String relativePath) {
    return texts.containsKey(relativePath)
        ? Optional.of(texts.get(relativePath))
        : base.text(relativePath);
  }

  @Override
  public List<String> list(String directory) {
    return base.list(directory);
  }
}
