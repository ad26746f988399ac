package hark.cli;

import hark.assessment.Assessment;
import hark.document.MissionFacts;
import hark.document.RunbookEntry;
import hark.evidence.EvidenceBook;
import hark.problem.BadInput;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code hark note MISSION}: writes the runbook entry for the present assessment. */
@Command(
    name = "note",
    description = {
      "Write the runbook entry for the present assessment, in Markdown: anomaly record, procedure,"
          + " pass plan, handover. Prints the file's name.",
      "Nothing is ever overwritten: people fill in what only they can say."
    },
    mixinStandardHelpOptions = true)
final class NoteCommand implements Callable<Integer> {
  /** Entries for one and the same time; more are a loop in somebody's script. */
  private static final int MOST_ALIKE = 1000;

  @Spec private CommandSpec spec;
  @Mixin private AssessOptions options;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where to write; - for the terminal (default: MISSION/entries/ID.md).")
  private String out;

  @Override
  public Integer call() {
    MissionRecord mission = options.read();
    if (out != null && !out.equals("-") && Files.exists(Path.of(out))) {
      throw occupied(Path.of(out));
    }
    Assessment assessment = options.assess(mission);
    String text =
        RunbookEntry.of(
            assessment,
            MissionFacts.of(mission.mission()),
            EvidenceBook.effective(mission.entries(), assessment.now()));
    if ("-".equals(out)) {
      spec.commandLine().getOut().print(text);
    } else {
      spec.commandLine().getOut().println(write(mission, assessment, text));
    }
    spec.commandLine().getOut().flush();
    return ExitCode.DONE;
  }

  private Path write(MissionRecord mission, Assessment assessment, String text) {
    try {
      if (out != null) {
        return Files.writeString(Path.of(out), text, StandardOpenOption.CREATE_NEW);
      }
      Path entries = Files.createDirectories(mission.folder().resolve("entries"));
      return Files.writeString(
          free(entries, RunbookEntry.id(assessment)), text, StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      throw occupied(Path.of(e.getFile()));
    } catch (IOException e) {
      throw new CouldNot("the entry could not be written: " + e.getMessage(), e);
    }
  }

  private static Path free(Path folder, String id) {
    for (int copy = 1; copy <= MOST_ALIKE; copy++) {
      Path path = folder.resolve(id + (copy == 1 ? "" : "-" + copy) + ".md");
      if (!Files.exists(path)) {
        return path;
      }
    }
    throw occupied(folder.resolve(id + ".md"));
  }

  private static BadInput occupied(Path path) {
    return BadInput.of(
        "there is a file already, and nothing is overwritten",
        path.toString(),
        "name another file");
  }
}
