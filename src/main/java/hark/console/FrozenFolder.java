package hark.console;

import hark.mission.FolderSource;
import hark.mission.Missions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A mission folder as it was when the console started. The console goes on with the mission it has
 * read; a "what if" must differ from that one by its overrides alone, whatever somebody has since
 * changed on disk.
 */
final class FrozenFolder implements FolderSource {
  private final FolderSource live;
  private final Map<String, Optional<String>> texts = new ConcurrentHashMap<>();
  private final Map<String, List<String>> lists = new ConcurrentHashMap<>();

  /** Reads the mission once, and with it every file it is made of. */
  FrozenFolder(FolderSource live) {
    this.live = live;
    Missions.check(this);
  }

  @Override
  public String label(String relativePath) {
    return live.label(relativePath);
  }

  @Override
  public Optional<String> text(String relativePath) {
    return texts.computeIfAbsent(relativePath, live::text);
  }

  @Override
  public List<String> list(String directory) {
    return lists.computeIfAbsent(directory, live::list);
  }
}
