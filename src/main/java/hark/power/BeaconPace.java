package hark.power;

import hark.power.PowerModel.BusState;
import java.util.Map;
import java.util.Optional;

/**
 * When a beacon keeps another interval than its usual one. The first of these that holds counts:
 * the voltage, the time, the state.
 *
 * @param byState interval in a state, s
 * @param whenLow interval while the bus voltage was low at the last start of the beacon, change of
 *     state or minute's look
 * @param later interval from a time after separation on
 */
public record BeaconPace(
    Map<BusState, Double> byState, Optional<WhenLow> whenLow, Optional<Later> later) {
  /** Always the usual interval. */
  public static final BeaconPace STEADY =
      new BeaconPace(Map.of(), Optional.empty(), Optional.empty());

  /**
   * An interval for an empty battery.
   *
   * @param belowVolts at the loaded terminals, V
   */
  public record WhenLow(double belowVolts, double intervalSeconds) {
    /** Refuses what is not positive. */
    public WhenLow {
      Check.positive("voltage of the slower beacon", belowVolts);
      Check.positive("interval of the slower beacon", intervalSeconds);
    }
  }

  /**
   * An interval for later days.
   *
   * @param afterSeconds since separation, s
   */
  public record Later(double afterSeconds, double intervalSeconds) {
    /** Refuses what is not positive. */
    public Later {
      Check.positive("time of the later beacon interval", afterSeconds);
      Check.positive("later interval of the beacon", intervalSeconds);
    }
  }

  /** Keeps a copy and refuses intervals that are not positive. */
  public BeaconPace {
    byState = Map.copyOf(byState);
    byState.forEach((state, seconds) -> Check.positive("beacon interval in " + state, seconds));
  }

  /** Refuses an interval shorter than a burst. */
  void requireLongerThan(double burstSeconds, String name) {
    byState.values().forEach(interval -> require(burstSeconds, interval, name));
    whenLow.ifPresent(low -> require(burstSeconds, low.intervalSeconds(), name));
    later.ifPresent(late -> require(burstSeconds, late.intervalSeconds(), name));
  }

  private static void require(double burstSeconds, double interval, String name) {
    Check.ordered("burst of beacon " + name, burstSeconds, "its interval", interval);
  }
}
