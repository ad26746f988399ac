package hark.cli;

import picocli.CommandLine.Option;

/** {@code --format}, for every command that prints a table: use as a mixin. */
final class FormatOption {
  @Option(
      names = "--format",
      defaultValue = "table",
      converter = OutputFormat.Converter.class,
      paramLabel = "table|json|csv",
      description = "How to print (default: ${DEFAULT-VALUE}).")
  private OutputFormat format;

  OutputFormat format() {
    return format;
  }
}
