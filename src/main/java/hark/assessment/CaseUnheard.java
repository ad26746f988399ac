package hark.assessment;

import hark.assessment.ReviewCase.Part;
import hark.assessment.ReviewCase.Unheard;
import hark.ensemble.Cause;
import hark.ensemble.Diagnosis;
import hark.ensemble.EventSet;
import hark.plan.Reach;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What would have to be true for the satellite to be alive and unheard: the weight of every
 * explanation is divided by what the widest ears would hear of it within a day, by the horizon, by
 * what comes back later by itself, and by whether a command could end it; the rest stays silent.
 */
final class CaseUnheard {
  private static final int MOST_PARTS = 3;
  private static final double LEAST_PART = 0.003;

  /** In the order in which hope fades. */
  private enum Kind {
    SENDS(
        "sends",
        "It sends now, at least at times, and has been missed: by place, time or a deaf ear"),
    SOON(
        "comes back",
        "It is off or charging now, and sends again by itself before this look ahead ends"),
    LATER(
        "comes back later",
        "It sends again by itself, but later: with the seasons, or when a battery is flat"),
    COMMAND(
        "waits for a command",
        "It lives and is silent until a command reaches it that ends what is wrong"),
    OUT_OF_REACH(
        "out of reach",
        "It may live, and neither listening, waiting nor the commands there are would show it"),
    SILENT("silent", "It will not be heard again: its transmitter or all of it is lost");

    private final String id;
    private final String sentence;

    Kind(String id, String sentence) {
      this.id = id.replace(' ', '-');
      this.sentence = sentence;
    }
  }

  private final Diagnosis diagnosis;
  private final Assessment assessment;
  private final Map<Kind, List<Part>> parts = new EnumMap<>(Kind.class);

  private CaseUnheard(Diagnosis diagnosis, Assessment assessment) {
    this.diagnosis = diagnosis;
    this.assessment = assessment;
    for (Kind kind : Kind.values()) {
      parts.put(kind, new ArrayList<>());
    }
  }

  static List<Unheard> of(Diagnosis diagnosis, Assessment assessment, Reach reach) {
    CaseUnheard unheard = new CaseUnheard(diagnosis, assessment);
    double[] weights = diagnosis.setWeights();
    for (int s = 0; s < weights.length; s++) {
      unheard.divide(diagnosis.sets().get(s), weights[s], reach.sets().get(s));
    }
    return unheard.groups();
  }

  private void divide(EventSet set, double weight, Reach.OfSet heard) {
    List<Cause> causes = set.causes().stream().map(diagnosis.input().causes()::get).toList();
    String title = SetTitle.of(causes.stream().map(Cause::title).toList());
    add(Kind.SENDS, title, weight * heard.soon());
    add(Kind.SOON, title, weight * (heard.everywhere() - heard.soon()));
    double rest = weight * (1 - heard.everywhere());
    double later = Math.min(rest, weight * later(causes));
    add(Kind.LATER, title, later);
    add(kind(causes), title, rest - later);
  }

  /** All of a set must have come back; returns that were not followed count as none. */
  private double later(List<Cause> causes) {
    return causes.stream()
        .mapToDouble(
            cause ->
                assessment.longLook().map(LongLook::returns).orElse(List.of()).stream()
                    .filter(each -> each.cause().equals(cause.id()))
                    .mapToDouble(each -> Math.max(0, each.probability() - each.sending()))
                    .findFirst()
                    .orElse(0))
        .min()
        .orElse(0);
  }

  private static Kind kind(List<Cause> causes) {
    List<Traits> traits = causes.stream().map(Traits::of).toList();
    if (traits.stream().anyMatch(t -> t.radio().mute())) {
      return Kind.SILENT;
    }
    boolean heeds = traits.stream().noneMatch(Traits::unreachable);
    return heeds && traits.stream().anyMatch(Traits::commanded) ? Kind.COMMAND : Kind.OUT_OF_REACH;
  }

  private void add(Kind kind, String title, double weight) {
    if (weight > 0) {
      parts.get(kind).add(new Part(title, weight));
    }
  }

  private List<Unheard> groups() {
    List<Unheard> groups = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      List<Part> all = parts.get(kind);
      List<Part> leading =
          all.stream()
              .sorted(Comparator.comparingDouble(Part::weight).reversed())
              .filter(part -> part.weight() >= LEAST_PART)
              .limit(MOST_PARTS)
              .toList();
      double weight = all.stream().mapToDouble(Part::weight).sum();
      groups.add(new Unheard(kind.id, kind.sentence, weight, leading));
    }
    return groups;
  }
}
