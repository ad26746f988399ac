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

  /** Reads {@code --format}; forms that are planned are refused by name. */
  static final class Converter implements ITypeConverter<OutputFormat> {
    @Override
    public OutputFormat convert(String text) {
      String word = text.toUpperCase(Locale.ROOT);
      if (word.equals("OEM")) {
        throw new TypeConversionException(
            "OEM comes with a later version; use table, json or csv for now");
      }
      return Arrays.stream(values())
          .filter(format -> format.name().equals(word))
          .findFirst()
          .orElseThrow(
              () ->
                  new TypeConversionException("'" + text + "' is not one of table, json and csv"));
    }
  }
}
