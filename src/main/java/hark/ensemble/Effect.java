package hark.ensemble;

import hark.power.OnboardChange;
import java.util.Optional;
import java.util.Set;

/**
 * What a basic event does, with the uncertain size of it. A closed set; each effect answers for the
 * electrical system and for the radio by itself, so that no reader has to list them again.
 */
public sealed interface Effect {
  /**
   * The change to the electrical system for a size drawn at quantile {@code u}; empty when it is
   * left alone.
   */
  default Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
    return Optional.empty();
  }

  /** The change to the radio for a size drawn at quantile {@code u}. */
  default RadioChange radio(double u) {
    return RadioChange.NONE;
  }

  /** What could be noticed of it without any signal from the spacecraft; mostly nothing. */
  default Set<Sight> sights() {
    return Set.of();
  }

  /** What an observer notices who needs no signal. */
  enum Sight {
    /** Radar or telescope: pieces, or not where the elements put it. */
    PIECES,
    /** It loses height at another rate than its neighbours, since its area is another. */
    DRAG
  }

  /** A drawn share; the tails of a distribution reach beyond 0…1 and mean its ends. */
  private static double share(Uncertain number, double u) {
    return Math.min(1, notNegative(number, u));
  }

  private static double notNegative(Uncertain number, double u) {
    return Math.max(0, number.quantile(u));
  }

  /** Lost fraction of the array's power, 0…1. */
  record ArrayLoss(Uncertain fraction) implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.ArrayFactor(1 - share(fraction, u)));
    }
  }

  /** Every face of one string gives nothing. */
  record ArrayStringLost(String string) implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.ArrayStringLost(string));
    }
  }

  /** One face gives nothing. */
  record FaceLost(String face) implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.FaceLost(face));
    }
  }

  /** Panels that should unfold stay folded, until a release frees them. */
  record PanelsStowed() implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.PanelsStowed());
    }

    @Override
    public Set<Sight> sights() {
      return Set.of(Sight.DRAG);
    }
  }

  /** The arrays no longer charge the battery. */
  record ChargePathOpen(boolean feedsBus) implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.ChargePathOpen(feedsBus));
    }
  }

  /** The battery is disconnected. */
  record BatteryOpen() implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.BatteryOpen());
    }
  }

  /** So many strings are lost. */
  record StringOpen(int count) implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.StringsOpen(count));
    }
  }

  /** Lost fraction of the cells' capacity, 0…1. */
  record CapacityFade(Uncertain fraction) implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.CapacityFactor(1 - share(fraction, u)));
    }
  }

  /** A load nobody asked for, W. */
  record ParasiticLoad(Uncertain watts, boolean alsoWhenOff) implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.ExtraLoad(notNegative(watts, u), alsoWhenOff));
    }
  }

  /** Colder or warmer than designed, K. */
  record TemperatureShift(Uncertain kelvin) implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.TemperatureShift(kelvin.quantile(u)));
    }
  }

  /** Thresholds set wrong, V. */
  record ThresholdShift(Uncertain volts) implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.ThresholdShift(volts.quantile(u)));
    }
  }

  /** No waiting before a restart. */
  record HoldOffLost() implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.HoldOffLost());
    }
  }

  /** Beacon not started by the computer. */
  record BeaconDisabled() implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.BeaconDisabled(clearedBy));
    }
  }

  /** Computer hung, drawing so much on top, W. */
  record ComputerHung(Uncertain extraWatts) implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.ComputerHung(notNegative(extraWatts, u), clearedBy));
    }
  }

  /** Computer restarting over and over. */
  record BootLoop() implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(new OnboardChange.BootLoop(clearedBy));
    }
  }

  /** Separation timers begin again and again, every so many hours. */
  record TimersRestarted(Uncertain periodHours) implements Effect {
    @Override
    public Optional<OnboardChange> onboard(double u, Set<OnboardChange.Clearing> clearedBy) {
      return Optional.of(
          new OnboardChange.TimersRestart(Math.max(60, 3600 * periodHours.quantile(u))));
    }
  }

  /** No radio output at all; its supply is taken to draw as before. */
  record TransmitterOff() implements Effect {
    @Override
    public RadioChange radio(double u) {
      return RadioChange.MUTE;
    }
  }

  /** Weaker by so many dB. */
  record TransmitterWeak(Uncertain lossDb) implements Effect {
    @Override
    public RadioChange radio(double u) {
      return new RadioChange(false, lossDb.quantile(u), 0, 0, false, false);
    }
  }

  /** Off by so many Hz. */
  record OffFrequency(Uncertain hertz) implements Effect {
    @Override
    public RadioChange radio(double u) {
      return new RadioChange(false, 0, 0, hertz.quantile(u), false, false);
    }
  }

  /** The receiver hears nothing. */
  record ReceiverDeaf() implements Effect {
    @Override
    public RadioChange radio(double u) {
      return new RadioChange(false, 0, 0, 0, true, false);
    }
  }

  /** Commands arrive and are refused. */
  record CounterOutOfStep() implements Effect {
    @Override
    public RadioChange radio(double u) {
      return new RadioChange(false, 0, 0, 0, false, true);
    }
  }

  /** The antenna is stowed or broken: weaker both ways by so many dB. */
  record AntennaStowed(Uncertain lossDb) implements Effect {
    @Override
    public RadioChange radio(double u) {
      double loss = lossDb.quantile(u);
      return new RadioChange(false, loss, loss, 0, false, false);
    }
  }

  /** Nothing is left to hear. */
  record SpacecraftLost() implements Effect {
    @Override
    public RadioChange radio(double u) {
      return new RadioChange(true, 0, 0, 0, true, false);
    }

    @Override
    public Set<Sight> sights() {
      return Set.of(Sight.PIECES);
    }
  }
}
