package hark.orbit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.orekit.time.DateComponents;
import org.orekit.time.OffsetModel;

/**
 * TAI − UTC since 1972, whole seconds.
 *
 * <p>Source: IERS Bulletin C; the last step is 2017-01-01, and none has been announced since.
 */
final class LeapSeconds {
  /** Days on which TAI − UTC grew by one second; before the first it was 10 s since 1972-01-01. */
  private static final List<String> STEPS =
      List.of(
          "1972-07-01",
          "1973-01-01",
          "1974-01-01",
          "1975-01-01",
          "1976-01-01",
          "1977-01-01",
          "1978-01-01",
          "1979-01-01",
          "1980-01-01",
          "1981-07-01",
          "1982-07-01",
          "1983-07-01",
          "1985-07-01",
          "1988-01-01",
          "1990-01-01",
          "1991-01-01",
          "1992-07-01",
          "1993-07-01",
          "1994-07-01",
          "1996-01-01",
          "1997-07-01",
          "1999-01-01",
          "2006-01-01",
          "2009-01-01",
          "2012-07-01",
          "2015-07-01",
          "2017-01-01");

  private static final LocalDate FIRST = LocalDate.of(1972, 1, 1);
  private static final int FIRST_SECONDS = 10;

  private LeapSeconds() {}

  /** The table as Orekit wants it. */
  static List<OffsetModel> offsets() {
    List<OffsetModel> offsets = new ArrayList<>();
    offsets.add(new OffsetModel(components(FIRST), FIRST_SECONDS));
    for (String step : STEPS) {
      int seconds = FIRST_SECONDS + offsets.size();
      offsets.add(new OffsetModel(components(LocalDate.parse(step)), seconds));
    }
    return offsets;
  }

  private static DateComponents components(LocalDate day) {
    return new DateComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
  }
}
