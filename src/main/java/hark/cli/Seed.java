package hark.cli;

import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** {@code --seed N} is accepted by every command, so that a script may give it to all. */
final class Seed {
  private static final String NAME = "--seed";

  private Seed() {}

  /** Adds the option to every command that draws nothing and so has none of its own. */
  static void acceptEverywhere(CommandLine line) {
    for (CommandLine command : line.getSubcommands().values()) {
      if (command.getCommandSpec().findOption(NAME) == null) {
        command
            .getCommandSpec()
            .addOption(
                OptionSpec.builder(NAME)
                    .type(long.class)
                    .paramLabel("N")
                    .description("Accepted by every command; nothing is random here.")
                    .build());
      }
    }
  }
}
