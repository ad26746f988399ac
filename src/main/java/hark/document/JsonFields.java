package hark.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** Writes fields of one object in the forms of the contract. */
record JsonFields(ObjectNode node) {
  private static final MathContext DIGITS = new MathContext(6, RoundingMode.HALF_EVEN);
  private static final long HALF_A_MILLISECOND = 500_000;
  private static final DateTimeFormatter MILLIS =
      new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

  /** Six significant digits; null for what is not a finite number. */
  void number(String name, double value) {
    if (Double.isFinite(value)) {
      node.put(name, new BigDecimal(value).round(DIGITS).doubleValue());
    } else {
      node.putNull(name);
    }
  }

  void text(String name, String value) {
    node.put(name, value);
  }

  /** Null when empty. */
  void text(String name, Optional<String> value) {
    node.put(name, value.orElse(null));
  }

  void texts(String name, List<String> values) {
    values.forEach(node.putArray(name)::add);
  }

  /** To the nearest millisecond. */
  void time(String name, Instant value) {
    node.put(name, millis(value));
  }

  /** Null when empty. */
  void time(String name, Optional<Instant> value) {
    node.put(name, value.map(JsonFields::millis).orElse(null));
  }

  JsonFields object(String name) {
    return new JsonFields(node.putObject(name));
  }

  private static String millis(Instant time) {
    return MILLIS.format(time.plusNanos(HALF_A_MILLISECOND).truncatedTo(ChronoUnit.MILLIS));
  }
}
