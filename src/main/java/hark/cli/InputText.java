package hark.cli;

import hark.problem.BadInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a file that the user named. */
final class InputText {
  private InputText() {}

  /**
   * The whole file as UTF-8; bytes that are not become U+FFFD.
   *
   * @param limitBytes larger files are refused unread
   */
  static String read(Path file, long limitBytes) {
    try {
      if (Files.isDirectory(file)) {
        throw BadInput.of("this is a folder", file.toString(), "name a file");
      }
      long size = Files.size(file);
      if (size > limitBytes) {
        throw BadInput.of(
            "the file has " + size + " bytes, the limit is " + limitBytes,
            file.toString(),
            "keep only what you need");
      }
      return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    } catch (NoSuchFileException e) {
      throw BadInput.of("there is no such file", file.toString(), "check the path");
    } catch (IOException e) {
      throw BadInput.of(
          "the file cannot be read (" + e.getMessage() + ")", file.toString(), "check its rights");
    }
  }
}
