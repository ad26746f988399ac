package hark.assessment;

import hark.ensemble.Cause;
import hark.ensemble.Effect;
import hark.ensemble.RadioChange;
import hark.power.OnboardChange;
import hark.power.OnboardChange.Clearing;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What a cause does, read off its effects and off what clears it; nothing is looked up by its name.
 * Sizes are taken at their median.
 *
 * @param radio what becomes of the radio
 * @param power the electrical system is changed
 * @param standing a change on board that something can clear: a hung computer, a beacon kept off
 * @param cleared by what
 * @param commanded a command ends it
 * @param sights what could be noticed without any signal
 */
record Traits(
    RadioChange radio,
    boolean power,
    boolean standing,
    Set<Clearing> cleared,
    boolean commanded,
    Set<Effect.Sight> sights) {

  static Traits of(Cause cause) {
    RadioChange radio = RadioChange.NONE;
    boolean power = false;
    boolean standing = false;
    EnumSet<Effect.Sight> sights = EnumSet.noneOf(Effect.Sight.class);
    for (Effect effect : cause.effects()) {
      radio = radio.plus(effect.radio(MEDIAN));
      power |= effect.onboard(MEDIAN, Set.of()).isPresent();
      standing |= stands(effect);
      sights.addAll(effect.sights());
    }
    boolean commanded = cause.clearsOn().contains(Cause.ClearsOn.COMMAND);
    return new Traits(radio, power, standing, cause.clearings(), commanded, Set.copyOf(sights));
  }

  private static final double MEDIAN = 0.5;

  /** A change that knows by what it is cleared is another one when that is another. */
  private static boolean stands(Effect effect) {
    Optional<OnboardChange> never = effect.onboard(MEDIAN, Set.of());
    return !never.equals(effect.onboard(MEDIAN, Set.of(Clearing.values())));
  }

  /** No command is heard or obeyed. */
  boolean unreachable() {
    return radio.deaf() || radio.refusesCommands();
  }

  /** Weaker both or one way; at a median of nought decibels it is not. */
  boolean weak() {
    return !radio.mute() && radio.downlinkLossDb() > 0;
  }

  /** A shift's median may be nought, so that its spread is asked. */
  static boolean shifted(Cause cause) {
    return cause.effects().stream()
        .anyMatch(
            effect ->
                effect.radio(1 - MEDIAN / 10).frequencyShiftHz()
                    != effect.radio(MEDIAN / 10).frequencyShiftHz());
  }
}
