package hark.cli;

import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/**
 * What {@code --format} says, for commands that write one form more than tables.
 *
 * @param table empty when the extra form was asked for
 */
record ExtraFormat(java.util.Optional<OutputFormat> table) {
  /**
   * Reads the word.
   *
   * @param extra the one form more, in small letters
   */
  static ExtraFormat of(String word, String extra, CommandSpec spec) {
    String small = word.toLowerCase(Locale.ROOT);
    if (small.equals(extra)) {
      return new ExtraFormat(java.util.Optional.empty());
    }
    for (OutputFormat format : OutputFormat.values()) {
      if (format.name().equalsIgnoreCase(small)) {
        return new ExtraFormat(java.util.Optional.of(format));
      }
    }
    throw new ParameterException(
        spec.commandLine(),
        "Invalid value for option '--format': '"
            + word
            + "' is not one of "
            + String.join(", ", List.of("table", "json", "csv", extra)));
  }
}
