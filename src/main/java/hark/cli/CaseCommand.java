package hark.cli;

import hark.assessment.CaseDesk;
import hark.assessment.ReviewCase;
import hark.document.CaseJson;
import hark.document.CasePage;
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
  @Mixin private NewFile file;

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

  @Override
  public Integer call() {
    file.refuseOccupied();
    MissionRecord mission = options.read();
    ReviewCase made = options.examine(mission).goingOn().made(gain);
    String text =
        switch (format) {
          case TEXT -> CasePage.text(made);
          case JSON -> CaseJson.text(made);
          case MARKDOWN -> CasePage.markdown(made);
        };
    file.put(text, spec);
    return ExitCode.DONE;
  }
}
