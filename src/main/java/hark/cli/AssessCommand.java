package hark.cli;

import hark.document.AssessmentJson;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code hark assess MISSION}: everything that is worked out, for programs. */
@Command(
    name = "assess",
    description = {
      "Everything Hark works out about a mission, as one JSON document.",
      "For people there are `hark brief` and `hark note`."
    },
    mixinStandardHelpOptions = true)
final class AssessCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private AssessOptions options;
  @Mixin private RecoveryOption recovery;

  @Option(
      names = "--format",
      defaultValue = "json",
      paramLabel = "json",
      converter = OutputFormat.Converter.class,
      description = "json, the only form it has.")
  private OutputFormat format;

  @Override
  public Integer call() {
    if (format != OutputFormat.JSON) {
      throw new ParameterException(
          spec.commandLine(), "assess prints JSON only; for people there is `hark brief --all`");
    }
    PrintWriter out = spec.commandLine().getOut();
    out.print(AssessmentJson.text(options.assess(options.read(), recovery.daysOr(0))));
    out.flush();
    return ExitCode.DONE;
  }
}
