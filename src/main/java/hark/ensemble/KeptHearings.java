package hark.ensemble;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Remembers what silences say of patterns of bursts, from one diagnosis to the next: hearings and
 * bodies stay the same, so windows that many records share are worked out once. What is remembered
 * never changes an answer.
 */
final class KeptHearings {
  /** Answers kept at most, some kilobytes each; more are worked out again each time. */
  static final int MOST = 60_000;

  private final int groups;
  private final AtomicInteger held = new AtomicInteger();
  private final Map<Place, List<Map<BurstPattern, Heard>>> known = new ConcurrentHashMap<>();

  KeptHearings(int groups) {
    this.groups = groups;
  }

  /**
   * A silence without its number.
   *
   * @param paths those of the window, compared by identity
   * @param sdSeconds along-track errors of the candidates
   */
  private record Place(
      int station,
      double from,
      double to,
      List<PassGeometry> paths,
      List<Double> sdSeconds,
      Listening listening) {}

  /** How many answers are held. */
  int held() {
    return held.get();
  }

  /** The memory for one diagnosis. */
  Remembering during(DiagnosisInput input, List<Clue> clues, int bodies) {
    return new During(input, clues, bodies);
  }

  private List<Map<BurstPattern, Heard>> byGroup() {
    List<Map<BurstPattern, Heard>> maps = new ArrayList<>();
    for (int g = 0; g < groups; g++) {
      maps.add(new ConcurrentHashMap<>());
    }
    return maps;
  }

  private List<Map<BurstPattern, Heard>> shared(DiagnosisInput input, Silence silence) {
    SkyWindow window = silence.window();
    Instant middle = input.instant(0.5 * (window.from() + window.to()));
    List<Double> errors =
        input.candidates().stream().map(c -> c.sdSeconds(middle, input.now())).toList();
    Place place =
        new Place(
            window.station(),
            window.from(),
            window.to(),
            window.paths(),
            errors,
            silence.listening());
    return known.computeIfAbsent(place, each -> byGroup());
  }

  /** Answers that depend on a reading are kept for one diagnosis only. */
  private final class During implements Remembering {
    private final HeardMemory elsewhere;
    private final Map<Integer, List<Map<BurstPattern, Heard>>> byEntry = new ConcurrentHashMap<>();
    private final Map<Integer, List<Map<BurstPattern, Heard>>> shared = new ConcurrentHashMap<>();

    During(DiagnosisInput input, List<Clue> clues, int bodies) {
      elsewhere = new HeardMemory(input.evidence().size(), bodies);
      for (Clue clue : clues) {
        byEntry.put(clue.entry(), byGroup());
        if (clue instanceof Silence silence) {
          shared.put(clue.entry(), KeptHearings.this.shared(input, silence));
        }
      }
    }

    @Override
    public Heard outside(OutsideClue clue, Member member, double until, Supplier<Heard> compute) {
      return elsewhere.outside(clue, member, until, compute);
    }

    @Override
    public Heard ours(
        ListeningClue clue, Member member, Body body, Function<Bursts, Heard> compute) {
      BurstPattern pattern =
          BurstPattern.of(member, body, clue.window().from(), clue.window().to());
      int group = member.hearings(groups);
      Map<BurstPattern, Heard> own = byEntry.get(clue.entry()).get(group);
      List<Map<BurstPattern, Heard>> all = shared.get(clue.entry());
      Heard answer = all == null ? null : all.get(group).get(pattern);
      answer = answer == null ? own.get(pattern) : answer;
      if (answer == null) {
        answer = compute.apply(Bursts.of(pattern));
        boolean keeps = all != null && held.get() < MOST;
        if ((keeps ? all.get(group) : own).put(pattern, answer) == null && keeps) {
          held.incrementAndGet();
        }
      }
      return answer;
    }

    @Override
    public void forget(int body) {
      elsewhere.forget(body);
    }
  }
}
