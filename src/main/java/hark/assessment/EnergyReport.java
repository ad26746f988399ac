package hark.assessment;

import hark.assessment.Assessment.EnergyPoint;
import hark.assessment.Assessment.Shadow;
import java.time.Instant;
import java.util.List;

/**
 * The electrical system in numbers: how the battery may be, where the energy goes, and what the Sun
 * will do over a year.
 *
 * @param members number of all bodies
 * @param simulated number of bodies behind the balance; the fan is made of all
 * @param energy the fan, as in the assessment
 * @param balance one for each orbit from a day before now to the horizon
 * @param year one for each month from now on; empty when the orbit cannot be followed that far
 * @param fullSun seasons without shadow within that year
 * @param seasons in words: what those seasons mean for a satellite that lacks power
 * @param examples members worth a look, the heaviest of each state now
 */
public record EnergyReport(
    String mission,
    Instant now,
    Instant end,
    int members,
    int simulated,
    List<EnergyPoint> energy,
    List<Shadow> shadows,
    double cutoffSoc,
    List<OrbitBalance> balance,
    List<SunMonth> year,
    List<FullSun> fullSun,
    String seasons,
    List<Example> examples) {

  /**
   * Energy over one orbit, Wh, weighted mean over the possibilities: {@code array = loads + losses
   * + stored + removed}.
   *
   * <p>What a full battery leaves untaken is in {@code offered} alone, and a bus that is off needs
   * little; so the margin tells of the life that is led, and {@code safe} and {@code nominal} of
   * those it could be compared with.
   *
   * @param orbitStart sunrise on board; in full sun, one period after the last start
   * @param arrayWh drawn from the arrays
   * @param loadsWh taken by the loads, heater and bursts included
   * @param lossesWh lost in charger and battery
   * @param storedWh gained by the battery; negative when it is drained
   * @param removedWh gone with lost strings or faded capacity
   * @param offeredWh what the arrays could have given at full power, taken or not
   * @param safeWh what safe mode all the orbit long would take from the arrays: loads, bursts,
   *     receiver, the charger's loss
   * @param nominalWh the same for nominal mode
   */
  public record OrbitBalance(
      Instant orbitStart,
      Instant orbitEnd,
      double arrayWh,
      double loadsWh,
      double lossesWh,
      double storedWh,
      double removedWh,
      double offeredWh,
      double safeWh,
      double nominalWh) {
    /** What loads and losses took, Wh. */
    public double neededWh() {
      return loadsWh + lossesWh;
    }

    /** What the arrays could have given beyond that, Wh; negative when the battery pays. */
    public double marginWh() {
      return offeredWh - neededWh();
    }

    /** The margin as a share of what was needed; NaN when nothing was. */
    public double margin() {
      return neededWh() > 0 ? marginWh() / neededWh() : Double.NaN;
    }
  }

  /**
   * A season in which all of the Sun is always seen.
   *
   * @param fromSpreadDays one standard deviation of its beginning; 0 where the year begins or ends
   * @param sure false when the season does not come at all if the orbit is a little lower than
   *     thought
   */
  public record FullSun(
      Instant from, Instant to, double fromSpreadDays, double toSpreadDays, boolean sure) {}

  /**
   * A month of sunlight.
   *
   * @param from its beginning, or now
   * @param betaLeastDeg least angle between the Sun and the plane of the orbit, degrees
   * @param betaMostDeg greatest
   * @param eclipseFraction mean share of light that is lost to shadow, 0…1
   * @param longestShadowMinutes longest shadow, minutes
   */
  public record SunMonth(
      Instant from,
      double betaLeastDeg,
      double betaMostDeg,
      double eclipseFraction,
      double longestShadowMinutes) {}

  /**
   * A member to look at with {@link EnergyDesk#trace}.
   *
   * @param state of the bus now
   * @param share of all possibilities that are in this state now
   */
  public record Example(String state, double share, int member, String explanation) {}
}
