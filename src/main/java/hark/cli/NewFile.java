package hark.cli;

import hark.problem.BadInput;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Where a document goes: the terminal, or a file that is not there yet; use as a mixin. */
final class NewFile {
  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write it there and print the file's name; nothing is overwritten.")
  private Path out;

  /** Before anything slow: refuses a file that is there already. */
  void refuseOccupied() {
    if (out != null && Files.exists(out)) {
      throw occupied();
    }
  }

  /** Prints the text, or writes it and prints the file's name. */
  void put(String text, CommandSpec spec) {
    if (out == null) {
      spec.commandLine().getOut().print(text);
    } else {
      spec.commandLine().getOut().println(write(text));
    }
    spec.commandLine().getOut().flush();
  }

  private Path write(String text) {
    try {
      return Files.writeString(out, text, StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      throw occupied();
    } catch (IOException e) {
      throw new CouldNot(out + " could not be written: " + e.getMessage(), e);
    }
  }

  private BadInput occupied() {
    return BadInput.of(
        "there is a file already, and nothing is overwritten", out.toString(), "name another file");
  }
}
