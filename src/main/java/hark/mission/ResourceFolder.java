package hark.mission;

import hark.problem.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * A folder that lies on the class path, such as the stock procedures. Inside a jar nothing can be
 * listed, so a file {@code index} in each directory names its files, one a line.
 */
public final class ResourceFolder implements FolderSource {
  private static final String INDEX = "index";

  private final String base;

  private ResourceFolder(String base) {
    this.base = base;
  }

  /**
   * A folder on the class path.
   *
   * @param base such as {@code hark/demo}; empty for the root
   */
  public static ResourceFolder of(String base) {
    return new ResourceFolder(base.isEmpty() || base.endsWith("/") ? base : base + "/");
  }

  @Override
  public String label(String relativePath) {
    return relativePath;
  }

  @Override
  public Optional<String> text(String relativePath) {
    if (!RelativePath.staysInside(relativePath)) {
      throw BadInput.of("leads out of the folder", relativePath, "name a file inside");
    }
    String name = base + relativePath;
    try (InputStream stream = ResourceFolder.class.getClassLoader().getResourceAsStream(name)) {
      return stream == null
          ? Optional.empty()
          : Optional.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public List<String> list(String directory) {
    String index = directory.isEmpty() ? INDEX : directory + "/" + INDEX;
    return text(index)
        .map(lines -> lines.lines().map(String::strip).filter(l -> !l.isEmpty()).sorted().toList())
        .orElse(List.of());
  }
}
