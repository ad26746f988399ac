package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.orbit.Eclipse;
import hark.orbit.Sun;
import hark.power.Illumination;
import hark.power.SunPath;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The Sun's path that the bodies fly with. */
class SunWalkTest {
  private static final double DAY = 86400;

  private final SmallCase smallCase = new SmallCase();

  private Illumination light(DiagnosisInput input) {
    return Sky.of(input).illumination();
  }

  @Test
  void thePathReachesFromSeparationToTheHorizon() {
    DiagnosisInput input = smallCase.input();
    SunPath path = light(input).path().orElseThrow();
    double whole = path.stepSeconds() * (path.phase().length - 1);
    double horizon = input.seconds(input.end());
    assertTrue(whole >= horizon && whole < horizon + 2 * path.stepSeconds(), "length " + whole);
  }

  @Test
  void thePhaseRisesOverTheChangeOfDays() {
    double[] phase = light(smallCase.input()).path().orElseThrow().phase();
    double usual = 2 * Math.PI * 15.1921 / DAY * 240;
    for (int k = 1; k < phase.length; k++) {
      assertEquals(usual, phase[k] - phase[k - 1], 0.02 * usual, "at " + k);
    }
  }

  /** The shadow is behind the Earth: its middle lies half a turn after noon. */
  @Test
  void shadowsLieAboutMidnight() {
    double twoDeg = 2;
    DiagnosisInput input = smallCase.input();
    Sky sky = Sky.of(input);
    List<Eclipse> eclipses = sky.eclipses();
    SunPath path = sky.illumination().path().orElseThrow();
    assertTrue(eclipses.size() > 50);
    for (Eclipse eclipse : eclipses.subList(1, eclipses.size() - 1)) {
      double middle =
          (input.seconds(eclipse.penumbraEntry()) + input.seconds(eclipse.penumbraExit())) / 2;
      double at = middle / path.stepSeconds();
      int k = (int) at;
      double phase = path.phase()[k] + (at - k) * (path.phase()[k + 1] - path.phase()[k]);
      double off = Math.IEEEremainder(phase - Math.PI, 2 * Math.PI);
      assertEquals(0, Math.toDegrees(off), twoDeg, "shadow at " + middle + " s");
    }
  }

  @Test
  void irradianceFollowsTheSunsDistance() {
    DiagnosisInput input = smallCase.input();
    double[] watts = light(input).path().orElseThrow().irradiance();
    int k = 1000;
    double au = Sun.at(input.instant(k * 240)).distanceMeters() / Sun.ASTRONOMICAL_UNIT_METERS;
    assertEquals(1361 / (au * au), watts[k], 1e-9);
    assertTrue(watts[watts.length - 1] > watts[0] + 2, "the Sun comes nearer in October");
  }
}
