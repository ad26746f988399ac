package hark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words are never more exact than the numbers, and read as people write. */
class WordsTest {
  @ParameterizedTest(name = "{0} s is {1}")
  @CsvSource({
    "0, 0 s",
    "59, 59 s",
    "60, 1 m",
    "4335, 1 h 12 m",
    "3599, 1 h",
    "86399, 1 d",
    "86400, 1 d",
    "532800, 6 d 4 h",
    "-5, 0 s",
    "3600, 1 h",
    "172740, 2 d"
  })
  void spansHaveTwoPartsAtMostAndCarryOver(long seconds, String said) {
    assertEquals(said, Words.span(Duration.ofSeconds(seconds)));
  }

  @ParameterizedTest(name = "{0} ± {1} is {2}")
  @CsvSource({
    "0.41, 0.02, 41 ± 2 %",
    "0.41, 0.004, 41 %",
    "0.004, 0.02, under 1 %",
    "0.997, 0.01, over 99 %",
    "0, 0, 0 %",
    "1, 0, 100 %",
    "0.005, 0, 1 %",
    "NaN, 0, ? %",
    "0.415, NaN, 42 %"
  })
  void percentagesShowTheirErrorWhenItIsNotSmall(double value, double error, String said) {
    assertEquals(said, Words.percent(value, error));
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "1, pass, one pass",
    "11, pass, eleven passes",
    "13, minute, 13 minutes",
    "0, entry, no entries",
    "2, day, two days",
    "3, body, three bodies"
  })
  void pluralsAreNatural(long count, String noun, String said) {
    assertEquals(said, Words.countSpoken(count, noun));
  }

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({
    "0, none",
    "0.01, fewer than one in twenty",
    "0.06, one in ten",
    "0.44, four in ten",
    "0.5, half",
    "0.94, nine in ten",
    "0.96, nearly all",
    "1, all"
  })
  void sharesAreSaidInTens(double share, String said) {
    assertEquals(said, Words.inTen(share));
  }

  @Test
  void timesAreUtcAndSaySo() {
    Instant time = Instant.parse("2026-11-02T04:03:20.9Z");
    assertEquals("04:03:20Z", Words.clock(time));
    assertEquals("2 Nov 04:03Z", Words.dayAndMinute(time));
    assertEquals("2 Nov 2026 04:03Z", Words.yearAndMinute(time));
  }

  @Test
  void listsReadAloud() {
    assertEquals("", Words.list(List.of()));
    assertEquals("a", Words.list(List.of("a")));
    assertEquals("a, b and c", Words.list(List.of("a", "b", "c")));
    assertEquals("a or b", Words.choice(List.of("a", "b")));
  }

  @Test
  void titlesInsideASentenceKeepTheirAbbreviations() {
    assertEquals("listen wide", Words.inSentence("Listen wide"));
    assertEquals("TX dead", Words.inSentence("TX dead"));
  }

  @Test
  void signsAreShownAndNothingIsMinusNothing() {
    assertEquals("+0.3", Words.signed(0.31));
    assertEquals("−1.2", Words.signed(-1.21));
    assertEquals("+0.0", Words.signed(-0.01));
  }
}
