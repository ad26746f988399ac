package hark.mission;

import hark.ensemble.Uncertain;
import hark.power.PowerModel.Charging;
import hark.power.PowerModel.Scheme;
import java.util.OptionalDouble;

/**
 * Reads {@code spacecraft.solar.charging}. Where a charge ends and begins again follows from the
 * battery, which stands further down in the file: so the section is read first and fitted later.
 */
final class ChargerReader {
  private static final Span EFFICIENCY = Span.of(0.05, 1).usually(0.5, 1).orIn("percent", 0.01);
  private static final Span AMPS = Span.of(0.001, 200).usually(0.05, 50).orIn("milliamperes", 1e-3);
  private static final Span END_AMPS = Span.of(0, 200).usually(0, 5).orIn("milliamperes", 1e-3);

  /**
   * A CC/CV charge ends when its current is below this share of the capacity, 1/h. Common practice.
   */
  private static final double END_PER_HOUR = 0.02;

  /** An ended charge begins again so far below the charge voltage, V a cell. Common practice. */
  private static final double RESUME_BELOW_V = 0.1;

  private ChargerReader() {}

  /** The pack that is charged. */
  record Pack(int series, double capacityAh) {}

  /** A charger as written, its end not yet known. */
  record Draft(
      Section section, Charging plain, OptionalDouble endAmps, OptionalDouble resumeVolts) {
    static final Draft NONE =
        new Draft(
            null,
            new Charging(Scheme.CC_CV, 1, 1, 4.2),
            OptionalDouble.empty(),
            OptionalDouble.empty());

    /** The charger with its ends, those that are not written following from the pack. */
    Charging fitting(Pack pack) {
      double full = plain.chargeVolts();
      double end = endAmps.orElseGet(() -> usualEnd(pack));
      double resume = resumeVolts.orElseGet(() -> usualResume(pack));
      return new Charging(
          plain.scheme(),
          plain.efficiency(),
          plain.maxCurrentAmps(),
          full,
          Math.min(end, plain.maxCurrentAmps()),
          Math.min(resume, full));
    }

    private double usualEnd(Pack pack) {
      double share = plain.scheme() == Scheme.CC_CV ? END_PER_HOUR : 0;
      return section.numberOtherwise("end_A", END_AMPS, share * pack.capacityAh());
    }

    private double usualResume(Pack pack) {
      double volts = plain.chargeVolts() - RESUME_BELOW_V * pack.series();
      return section.numberOtherwise("resume_V", Spans.VOLTS, volts);
    }
  }

  static Draft read(Section charging, Reading reading) {
    int before = reading.problems.count();
    Charging plain =
        new Charging(
            charging.choice("scheme", Scheme.class),
            charging.number("efficiency", EFFICIENCY, new Uncertain.Normal(0.8, 0.06)),
            charging.number("max_current_A", AMPS),
            charging.number("charge_V", Spans.VOLTS));
    OptionalDouble end = charging.numberIfWritten("end_A", END_AMPS);
    OptionalDouble resume = charging.numberIfWritten("resume_V", Spans.VOLTS);
    if (reading.isFirst() && reading.problems.count() == before) {
      checkEnds(charging, plain, end, resume, reading);
    }
    return new Draft(charging, plain, end, resume);
  }

  private static void checkEnds(
      Section at, Charging plain, OptionalDouble end, OptionalDouble resume, Reading reading) {
    if (end.isPresent() && end.getAsDouble() >= plain.maxCurrentAmps()) {
      reading.problems.add(
          at.at("end_A"),
          "found "
              + Span.print(end.getAsDouble())
              + ", expected less than max_current_A "
              + Span.print(plain.maxCurrentAmps()),
          "end_A is the small current at which a full charge ends; 0 for a charger that never ends it");
    }
    if (resume.isPresent() && resume.getAsDouble() > plain.chargeVolts()) {
      reading.problems.add(
          at.at("resume_V"),
          "found "
              + Span.print(resume.getAsDouble())
              + ", expected at most charge_V "
              + Span.print(plain.chargeVolts()),
          "an ended charge begins again when the battery has fallen below resume_V");
    }
  }
}
