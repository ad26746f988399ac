package hark.mission;

/**
 * The spans of the numbers that a mission file gives. Limits are physical or so wide that only a
 * wrong unit lies beyond them; usual ranges are <em>common practice</em> for spacecraft up to some
 * 100 kg.
 */
final class Spans {
  static final Span FRACTION = Span.of(0, 1).orIn("percent", 0.01);
  static final Span FREQUENCY_MHZ =
      Span.of(1, 50_000).usually(20, 40_000).orIn("Hz", 1e-6).orIn("kHz", 1e-3).orIn("GHz", 1e3);
  static final Span TEMPERATURE_C = Span.of(-100, 150).usually(-60, 80);
  static final Span VOLTS = Span.of(0.5, 200).usually(1, 60).orIn("millivolts", 1e-3);
  static final Span WATTS = Span.of(0, 500).usually(0, 200).orIn("milliwatts", 1e-3);
  static final Span DB = Span.of(0, 60);

  private Spans() {}
}
