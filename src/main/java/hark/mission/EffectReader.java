package hark.mission;

import hark.ensemble.Effect;
import hark.ensemble.Uncertain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads {@code effect: { KEY: size, … }}: one key an effect, its unit in the key. */
final class EffectReader {
  private static final Span FRACTION = Span.of(0, 1).orIn("percent", 0.01);
  private static final Span WATTS = Span.of(0, 200);
  private static final Span DECIBELS = Span.of(0, 100);

  /** A key's reader; empty when the key is switched off or wrong. */
  private interface Form {
    Optional<Effect> read(YamlTree value, YamlMap all, Problems problems);
  }

  private static final Map<String, Form> FORMS = forms();

  private EffectReader() {}

  /** All effects written; none at all is a problem. */
  static List<Effect> list(YamlTree node, Problems problems) {
    if (node.isNothing()) {
      return List.of();
    }
    int before = problems.count();
    YamlMap map = YamlMap.of(node, problems);
    List<Effect> effects = new ArrayList<>();
    FORMS.forEach(
        (key, form) -> {
          YamlTree value = map.get(key);
          if (!value.isNothing()) {
            form.read(value, map, problems).ifPresent(effects::add);
          }
        });
    map.finish();
    if (effects.isEmpty() && problems.count() == before) {
      problems.add(
          node, "the event has no effect", "write one of " + String.join(", ", FORMS.keySet()));
    }
    return effects;
  }

  private static Map<String, Form> forms() {
    Map<String, Form> forms = new LinkedHashMap<>();
    forms.put("array_loss", size(FRACTION, Effect.ArrayLoss::new));
    forms.put("array_string_lost", name(Effect.ArrayStringLost::new));
    forms.put("face_lost", name(Effect.FaceLost::new));
    forms.put("panels_stowed", flag(new Effect.PanelsStowed()));
    forms.put("charge_path_open", EffectReader::chargePath);
    forms.put("battery_open", flag(new Effect.BatteryOpen()));
    forms.put("strings_open", EffectReader::strings);
    forms.put("capacity_loss", size(FRACTION, Effect.CapacityFade::new));
    forms.put("parasitic_load_W", EffectReader::parasiticLoad);
    forms.put("temperature_shift_K", size(Span.of(-100, 100), Effect.TemperatureShift::new));
    forms.put(
        "threshold_shift_V", size(Span.of(-20, 20).orIn("mV", 1e-3), Effect.ThresholdShift::new));
    forms.put("hold_off_lost", flag(new Effect.HoldOffLost()));
    forms.put("beacon_disabled", flag(new Effect.BeaconDisabled()));
    forms.put("computer_hung_extra_W", size(WATTS, Effect.ComputerHung::new));
    forms.put("boot_loop", flag(new Effect.BootLoop()));
    forms.put("timers_restarted_hours", size(Span.of(0.01, 1000), Effect.TimersRestarted::new));
    forms.put("transmitter_off", flag(new Effect.TransmitterOff()));
    forms.put("transmitter_weak_dB", size(DECIBELS, Effect.TransmitterWeak::new));
    forms.put("off_frequency_Hz", size(Span.of(-1e7, 1e7), Effect.OffFrequency::new));
    forms.put("receiver_deaf", flag(new Effect.ReceiverDeaf()));
    forms.put("counter_out_of_step", flag(new Effect.CounterOutOfStep()));
    forms.put("antenna_stowed_dB", size(DECIBELS, Effect.AntennaStowed::new));
    forms.put("spacecraft_lost", flag(new Effect.SpacecraftLost()));
    return forms;
  }

  private static Form flag(Effect effect) {
    return (value, all, problems) ->
        YamlValues.bool(value, problems).filter(on -> on).map(on -> effect);
  }

  private static Form name(Function<String, Effect> make) {
    return (value, all, problems) -> YamlValues.text(value, problems).map(make);
  }

  private static Form size(Span span, Function<Uncertain, Effect> make) {
    return (value, all, problems) -> UncertainNumbers.read(value, span, problems).map(make);
  }

  private static Optional<Effect> strings(YamlTree value, YamlMap all, Problems problems) {
    return YamlValues.whole(value, 1, 100, problems).map(Effect.StringOpen::new);
  }

  private static Optional<Effect> chargePath(YamlTree value, YamlMap all, Problems problems) {
    YamlMap map = YamlMap.of(value, problems);
    Optional<Boolean> feeds = YamlValues.bool(map.require("feeds_bus"), problems);
    map.finish();
    return feeds.map(Effect.ChargePathOpen::new);
  }

  private static Optional<Effect> parasiticLoad(YamlTree value, YamlMap all, Problems problems) {
    boolean whenOff = YamlValues.bool(all.get("parasitic_load_when_off"), problems).orElse(false);
    return UncertainNumbers.read(value, WATTS, problems)
        .map(watts -> new Effect.ParasiticLoad(watts, whenOff));
  }
}
