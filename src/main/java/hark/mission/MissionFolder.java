package hark.mission;

import hark.problem.BadInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A mission folder on disk: the only class of this room that touches one. */
public final class MissionFolder implements FolderSource {
  /** A longer file is refused without being read; element sets of a whole catalogue fit. */
  static final long MAX_BYTES = 64L * 1024 * 1024;

  /** The mission file itself is written by hand; a longer one is refused without being read. */
  static final long MAX_MISSION_BYTES = 4L * YamlParser.MAX_CHARACTERS;

  private final Path root;

  private MissionFolder(Path root) {
    this.root = root;
  }

  /**
   * Reads and validates a folder.
   *
   * @throws BadInput with every problem in it
   */
  public static Mission read(Path folder) {
    return Missions.read(at(folder));
  }

  /** Reads a folder and reports on it; throws {@link BadInput} only when there is no folder. */
  public static MissionCheck check(Path folder) {
    return Missions.check(at(folder));
  }

  /** The folder's files; throws {@link BadInput} when there is no such folder. */
  public static FolderSource at(Path folder) {
    if (!Files.isDirectory(folder)) {
      boolean file = Files.exists(folder);
      throw BadInput.of(
          file ? "this is a file, expected a mission folder" : "there is no such folder",
          folder.toString(),
          file ? "name the folder that holds mission.yaml" : "check the path");
    }
    return new MissionFolder(folder);
  }

  @Override
  public String label(String relativePath) {
    return root.resolve(relativePath).toString();
  }

  @Override
  public Optional<String> text(String relativePath) {
    String label = label(relativePath);
    if (!RelativePath.staysInside(relativePath)) {
      throw BadInput.of("leads out of the mission folder", label, "copy the file into the folder");
    }
    Path file = root.resolve(relativePath);
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try {
      requireShort(file, relativePath);
      byte[] bytes = Files.readAllBytes(file);
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      throw BadInput.of("not text in UTF-8", label, "check that it is the file you meant");
    } catch (IOException e) {
      throw BadInput.of("cannot be read: " + e.getMessage(), label, "check its permissions");
    }
  }

  private void requireShort(Path file, String relativePath) throws IOException {
    boolean elements = !relativePath.endsWith(".yaml") && !relativePath.endsWith(".md");
    long most = elements ? MAX_BYTES : MAX_MISSION_BYTES;
    if (Files.size(file) > most) {
      throw BadInput.of(
          Files.size(file) + " bytes, at most " + most + " are read",
          label(relativePath),
          "check that it is the file you meant");
    }
  }

  @Override
  public List<String> list(String directory) {
    if (!directory.isEmpty() && !RelativePath.staysInside(directory)) {
      return List.of();
    }
    Path at = root.resolve(directory);
    if (!Files.isDirectory(at)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(at)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> file.getFileName().toString())
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
