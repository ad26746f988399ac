package hark.assessment;

import hark.power.OnboardChange;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** What a change does to the electrical system, in words with units. Pure. */
final class ChangeWords {
  private static final Map<Class<? extends OnboardChange>, Function<OnboardChange, String>> WORDS =
      new LinkedHashMap<>();

  static {
    say(
        OnboardChange.Commanded.class,
        c -> "command received: " + c.command().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    say(OnboardChange.ArrayFactor.class, c -> "arrays give " + percent(c.factor()) + " %");
    say(OnboardChange.ArrayStringLost.class, c -> "array string " + c.string() + " gives nothing");
    say(OnboardChange.FaceLost.class, c -> "face " + c.face() + " gives nothing");
    say(OnboardChange.PanelsStowed.class, c -> "panels stay stowed");
    say(
        OnboardChange.ChargePathOpen.class,
        c ->
            "arrays no longer charge" + (c.feedsBus() ? ", but feed the bus" : " or feed the bus"));
    say(OnboardChange.BatteryOpen.class, c -> "battery disconnected");
    say(OnboardChange.StringsOpen.class, c -> c.count() + " battery string(s) lost");
    say(
        OnboardChange.CapacityFactor.class,
        c -> percent(c.factor()) + " % of the cells' capacity left");
    say(
        OnboardChange.ExtraLoad.class,
        c -> number(c.watts()) + " W more load" + (c.alsoWhenOff() ? ", also when off" : ""));
    say(OnboardChange.TemperatureShift.class, c -> signed(c.kelvin()) + " K against the design");
    say(OnboardChange.ThresholdShift.class, c -> "all thresholds " + signed(c.volts()) + " V");
    say(OnboardChange.HoldOffLost.class, c -> "no hold-off any more");
    say(OnboardChange.BeaconDisabled.class, c -> "beacon disabled");
    say(
        OnboardChange.ComputerHung.class,
        c ->
            "computer hung"
                + (c.extraWatts() > 0 ? ", drawing " + number(c.extraWatts()) + " W more" : ""));
    say(OnboardChange.BootLoop.class, c -> "boots over and over");
    say(
        OnboardChange.TimersRestart.class,
        c -> "timers restart every " + Math.round(c.periodSeconds() / 60) + " min");
  }

  private ChangeWords() {}

  private static <C extends OnboardChange> void say(Class<C> kind, Function<C, String> words) {
    WORDS.put(kind, change -> words.apply(kind.cast(change)));
  }

  static String of(OnboardChange change) {
    return WORDS.get(change.getClass()).apply(change);
  }

  private static long percent(double share) {
    return Math.round(100 * share);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private static String signed(double value) {
    return String.format(Locale.ROOT, "%+.2f", value);
  }
}
