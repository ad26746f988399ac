package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ArcTest {
  @Test
  void anglesAreThoseOfTheMachineEverywhere() {
    double rounding = 4e-15;
    for (int k = -100_000; k <= 100_000; k++) {
      double x = k / 100_000.0;
      assertEquals(Math.asin(x), Arc.ofSine(x), rounding, "asin " + x);
      assertEquals(Math.acos(x), Arc.ofCosine(x), rounding, "acos " + x);
    }
  }

  @Test
  void roundingBeyondTheEndsCountsAsTheEnds() {
    assertEquals(0, Arc.ofCosine(1 + 1e-15));
    assertEquals(Math.PI, Arc.ofCosine(-1 - 1e-15), 1e-12);
    assertEquals(Math.PI / 2, Arc.ofSine(1 + 1e-15));
  }
}
