package hark.ensemble;

import hark.power.OnboardChange;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A basic event of the diagnosis: a root cause, independent of the others.
 *
 * @param id as in the fault tree
 * @param title what people call it, lower case
 * @param branch power, computer, radio, antenna, thermal or mechanical
 * @param probability belief at separation that it happens within 30 days, 0…1
 * @param onset when it begins, given that it happens
 * @param effects what it does; one or more
 * @param clearsOn what ends it
 * @param mechanism how it comes about, a sentence
 * @param signature what would tell it, a short phrase
 * @param sources where the prior is anchored
 */
public record Cause(
    String id,
    String title,
    String branch,
    double probability,
    Onset onset,
    List<Effect> effects,
    Set<ClearsOn> clearsOn,
    String mechanism,
    String signature,
    List<String> sources) {
  /** Refuses what is not a probability. */
  public Cause {
    if (!(probability >= 0 && probability < 1)) {
      throw new IllegalArgumentException(
          "probability " + probability + " of " + id + " is outside [0, 1)");
    }
    effects = List.copyOf(effects);
    clearsOn = Set.copyOf(clearsOn);
    sources = List.copyOf(sources);
  }

  /** What ends its standing changes on board, as the simulation knows it. */
  public Set<OnboardChange.Clearing> clearings() {
    EnumSet<OnboardChange.Clearing> set = EnumSet.noneOf(OnboardChange.Clearing.class);
    for (ClearsOn clears : clearsOn) {
      switch (clears) {
        case POWER_CYCLE -> set.add(OnboardChange.Clearing.POWER_CYCLE);
        case POWER_REMOVED -> set.add(OnboardChange.Clearing.POWER_REMOVED);
        case WATCHDOG -> set.add(OnboardChange.Clearing.WATCHDOG);
        case COMMAND ->
            Collections.addAll(
                set, OnboardChange.Clearing.RESET_COMMAND, OnboardChange.Clearing.BEACON_COMMAND);
        case SEASON -> {
          // a season changes the balance of power, which the simulation finds by itself
        }
      }
    }
    return set;
  }

  /**
   * A stowed antenna or panel that a release command can free; a broken one has the same effect and
   * no cure.
   */
  boolean isReleased() {
    return isUnfolded() || isFreedBy(Effect.AntennaStowed.class);
  }

  /** Panels that a release unfolds, so that the electrical system changes too. */
  boolean isUnfolded() {
    return isFreedBy(Effect.PanelsStowed.class);
  }

  private boolean isFreedBy(Class<? extends Effect> effect) {
    return clearsOn.contains(ClearsOn.COMMAND) && effects.stream().anyMatch(effect::isInstance);
  }

  /** True when it may begin at any time in its 30 days. */
  boolean beginsAnyTime() {
    return onset == Onset.UNIFORM || onset == Onset.HAZARD;
  }

  /** When an event begins, given that it happens within its 30 days. */
  public enum Onset {
    /** Present when released. */
    SEPARATION,
    /** Any time in 30 days, evenly. */
    UNIFORM,
    /** A constant hazard over 30 days: slightly earlier than evenly. */
    HAZARD,
    /** At the first entry into shadow. */
    FIRST_ECLIPSE,
    /** At the end of the quiet time, when the first transmission is made. */
    FIRST_TRANSMISSION
  }

  /** What ends an event. */
  public enum ClearsOn {
    POWER_CYCLE,
    POWER_REMOVED,
    WATCHDOG,
    COMMAND,
    SEASON
  }
}
