package hark.cli;

import java.util.Arrays;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How a table is printed: for people, as one JSON document, or as CSV with a heading. */
enum OutputFormat {
  TABLE,
  JSON,
  CSV;

  /** Reads {@code --format}. */
  static final class Converter implements ITypeConverter<OutputFormat> {
    @Override
    public OutputFormat convert(String text) {
      String word = text.toUpperCase(Locale.ROOT);
      return Arrays.stream(values())
          .filter(format -> format.name().equals(word))
          .findFirst()
          .orElseThrow(
              () ->
                  new TypeConversionException("'" + text + "' is not one of table, json and csv"));
    }
  }
}
