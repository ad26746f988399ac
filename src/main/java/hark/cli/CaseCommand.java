package hark.cli;

import hark.assessment.CaseDesk;
import hark.assessment.ReviewCase;
import hark.document.CaseJson;
import hark.document.CasePage;
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

/** {@code hark case MISSION}: the case for going on, one page for a review board. */
@Command(
    name = "case",
    description = {
      "The case for going on: what effort finds, what time brings, what would have to be true, the"
          + " cheapest watch to keep, and how far all of that hangs on what was assumed. It decides"
          + " nothing.",
      "Looks a year ahead for dates of return; --days sets how far the plan looks."
    },
    footer = {
      "",
      "Examples:",
      "  hark case my-mission",
      "  hark case my-mission --days 14 --format markdown --out case.md",
      "  hark case my-mission --gain 0.02        where ten hours add less than two percent"
    },
    mixinStandardHelpOptions = true)
final class CaseCommand implements Callable<Integer> {
  private enum Form {
    TEXT,
    JSON,
    MARKDOWN
  }

  @Spec private CommandSpec spec;
  @Mixin private AssessOptions options;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text, json or markdown (default: text).")
  private Form format = Form.TEXT;

  @Option(
      names = "--gain",
      paramLabel = "SHARE",
      description =
          "What counts as little for ten hours of people's time, 0 to 1 (default:"
              + " ${DEFAULT-VALUE}).")
  private double gain = CaseDesk.USUAL_GAIN;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write it there and print the file's name; nothing is overwritten.")
  private Path out;

  @Override
  public Integer call() {
    if (out != null && Files.exists(out)) {
      throw occupied(out);
    }
    MissionRecord mission = options.read();
    ReviewCase made = options.examine(mission).goingOn().made(gain);
    String text =
        switch (format) {
          case TEXT -> CasePage.text(made);
          case JSON -> CaseJson.text(made);
          case MARKDOWN -> CasePage.markdown(made);
        };
    if (out == null) {
      spec.commandLine().getOut().print(text);
    } else {
      spec.commandLine().getOut().println(write(text));
    }
    spec.commandLine().getOut().flush();
    return ExitCode.DONE;
  }

  private Path write(String text) {
    try {
      return Files.writeString(out, text, StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException e) {
      throw occupied(out);
    } catch (IOException e) {
      throw new CouldNot("the case could not be written: " + e.getMessage(), e);
    }
  }

  private static BadInput occupied(Path path) {
    return BadInput.of(
        "there is a file already, and nothing is overwritten",
        path.toString(),
        "name another file");
  }
}
