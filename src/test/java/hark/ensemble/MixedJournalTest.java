package hark.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.evidence.EvidenceBook;
import hark.evidence.EvidenceContext;
import hark.evidence.EvidenceKinds;
import hark.station.Pass;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The design's truths over random journals of every kind. */
class MixedJournalTest {
  private static final int DEAD = 0;
  private static final int WEAK = 2;

  private final SmallCase mission = new SmallCase();
  private final List<Entry> journal = new ArrayList<>();

  private void log(String kind, String... pairs) {
    Map<String, String> keys = new TreeMap<>();
    for (String pair : pairs) {
      int equals = pair.indexOf('=');
      keys.put(pair.substring(0, equals), pair.substring(equals + 1));
    }
    EvidenceContext context =
        new EvidenceContext(
            mission.now,
            SmallCase.SEPARATION,
            mission.now,
            List.of(SmallCase.NEAR, SmallCase.FAR),
            List.of("97311", "97312"),
            (station, time) -> Optional.empty());
    EvidenceBook.Draft draft = EvidenceBook.draft(journal, kind, keys, context);
    journal.add(new Entry(journal.size() + 1, mission.now, "", "", draft.keys(), draft.evidence()));
  }

  private String[] span(String station, int pass, String... more) {
    Pass over = mission.pass(station, pass);
    List<String> keys = new ArrayList<>(List.of(more));
    keys.add("station=" + station);
    keys.add("from=" + over.aos());
    keys.add("to=" + over.los());
    return keys.toArray(String[]::new);
  }

  /** One entry of every kind that weighs or is kept, with numbers by the seed. */
  private void logAll(SplittableRandom random) {
    String first = "at=" + mission.pass(SmallCase.NEAR, 0).culmination();
    String level = "level_db=" + random.nextInt(8, 18);
    log("heard", span(SmallCase.NEAR, 0, level, "form=frames", "frequency_hz=436733000"));
    log(
        "telemetry",
        first,
        "volts=" + random.nextDouble(7.2, 8.2),
        "battery_c=" + random.nextInt(0, 25),
        "amps=" + random.nextDouble(-0.5, 0.5),
        "mode=nominal");
    log("nothing-heard", span(SmallCase.NEAR, 2, "way=decoder"));
    log("nothing-heard", span(SmallCase.FAR, 3, "way=ear", "frequency_hz=436735000"));
    log(
        "station-check",
        first,
        "station=" + SmallCase.NEAR,
        "result=heard",
        "level_db=18",
        "expected_db=" + random.nextInt(15, 25),
        "same_band=yes");
    Pass seen = mission.pass(SmallCase.NEAR, 3);
    log(
        "outside-report",
        "place=52," + random.nextInt(3, 8),
        "from=" + seen.aos(),
        "to=" + seen.los(),
        "heard=" + (random.nextBoolean() ? "yes" : "no"),
        "clock_sd_s=20");
    log("object", first, "object=97312", "verdict=excluded", "source=neighbour");
    log("doppler", first, "object=97311", "file=c.csv");
    log("search-result", span(SmallCase.FAR, 4, "file=a", "detected=no", "upper_limit_db_hz=22"));
    log("motion", first, "tumble_s=" + random.nextInt(40, 200), "decay=slower");
    log("separation", "at=" + SmallCase.SEPARATION, "state=confirmed");
    log("command-sent", first, "station=" + SmallCase.NEAR, "command=reset");
    log("not-listened", span(SmallCase.FAR, 5, "why=rain"));
    log("note", first, "text=quiet");
  }

  /** Causes of the radio alone: few bodies, and quick. */
  private static SmallCase fewCauses() {
    SmallCase few = new SmallCase();
    few.causes = new ArrayList<>(SmallCase.usualCauses().subList(0, 3));
    return few;
  }

  private Posterior weigh(List<Entry> entries) {
    SmallCase now = fewCauses();
    now.evidence.addAll(EvidenceBook.effective(entries, now.now));
    return now.with(workers -> Posterior.of(now.input(), workers));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12})
  void orderIsIrrelevantAndAnEntryWithItsCorrectionLeavesNothingBehind(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    logAll(random);
    TreeSet<String> kinds = new TreeSet<>(EvidenceKinds.list());
    journal.forEach(entry -> kinds.remove(entry.evidence().kind()));
    assertEquals(new TreeSet<>(List.of("correction")), kinds, "kinds that the journal lacks");
    double[] straight = weigh(journal).setWeights();

    List<Entry> shuffled = new ArrayList<>(journal);
    for (int k = shuffled.size() - 1; k > 0; k--) {
      Entry other = shuffled.set(random.nextInt(k + 1), shuffled.get(k));
      shuffled.set(k, other);
    }
    assertArrayEquals(straight, weigh(shuffled).setWeights(), 0);

    int before = journal.size();
    logAll(random);
    for (int of = before + 1; of <= before + 14; of++) {
      log("correction", "of=" + of, "withdrawn=yes");
    }
    assertArrayEquals(straight, weigh(journal).setWeights(), 0);
  }

  @Test
  void everyKindThatWeighsHasItsRowOfBitsAndItsTail() {
    logAll(new SplittableRandom(3));
    Posterior posterior = weigh(journal);
    TreeSet<String> kinds = new TreeSet<>();
    for (int entry : posterior.bitsEntries()) {
      kinds.add(posterior.input().evidence().get(entry).evidence().kind());
    }
    TreeSet<String> weighing = new TreeSet<>(EvidenceKinds.list());
    weighing.removeAll(List.of("not-listened", "note", "correction"));
    assertEquals(weighing, kinds);
    assertEquals(posterior.bitsEntries().length, posterior.entryTail().length);
    for (double tail : posterior.entryTail()) {
      assertTrue(tail >= 0 && tail <= 1, "" + tail);
    }
  }

  @Test
  void silenceOfAnyKindNeverRaisesAWeakTransmitterAgainstADeadOne() {
    log("heard", span(SmallCase.NEAR, 0, "level_db=14"));
    double before = weakAgainstDead();
    log("search-result", span(SmallCase.FAR, 3, "file=a", "detected=no"));
    double searched = weakAgainstDead();
    assertTrue(searched < before * 1.02, before + " to " + searched);
    Pass seen = mission.pass(SmallCase.NEAR, 4);
    log("outside-report", "place=52,5", "from=" + seen.aos(), "to=" + seen.los(), "heard=no");
    double reported = weakAgainstDead();
    assertTrue(reported < searched * 1.02, searched + " to " + reported);
  }

  private double weakAgainstDead() {
    double[] weights = weigh(journal).setWeights();
    return weights[1 + WEAK] / weights[1 + DEAD];
  }

  @Test
  void aMissionNeverHeardAtAllIsWeighed() {
    for (int n = 0; n < 4; n++) {
      log("nothing-heard", span(SmallCase.NEAR, n));
      log("nothing-heard", span(SmallCase.FAR, n));
    }
    Posterior posterior = weigh(journal);
    assertTrue(posterior.causes().get(DEAD).posterior() > posterior.causes().get(DEAD).prior());
    assertEquals(8, posterior.bits().length);
  }

  @Test
  void aCurveThatFitsAndAnExcludedNeighbourPointToTheObject() {
    log("doppler", "object=97311", "file=c.csv");
    assertTrue(weigh(journal).objects()[0] > 0.9);
    journal.clear();
    log("object", "object=97311", "verdict=excluded", "source=neighbour");
    assertTrue(weigh(journal).objects()[0] < 0.1);
  }

  @Test
  void aMeasuredFrequencyThatNoBeaconHasSpeaksForSomethingElse() {
    log("heard", span(SmallCase.NEAR, 6, "form=carrier", "frequency_hz=436731000"));
    double fits = weigh(journal).entryTail()[0];
    double[] near = weigh(journal).setWeights();
    journal.clear();
    log("heard", span(SmallCase.NEAR, 6, "form=carrier", "frequency_hz=436790000"));
    double[] far = weigh(journal).setWeights();
    assertTrue(fits > 0.01);
    double deadNear = near[1 + DEAD] / near[0];
    double deadFar = far[1 + DEAD] / far[0];
    assertTrue(deadFar > 1.01 * deadNear, "60 kHz off is not ours: " + deadNear + " " + deadFar);
  }

  @Test
  void anEntryThatNothingExplainsIsNamed() {
    Instant first = mission.pass(SmallCase.NEAR, 0).culmination();
    log("heard", span(SmallCase.NEAR, 0, "level_db=14"));
    log("telemetry", "at=" + first, "volts=4.1");
    double[] tails = weigh(journal).entryTail();
    assertTrue(tails[1] < 1e-3, "4.1 V: " + tails[1]);
    assertTrue(tails[0] > 0.05, "the reception itself: " + tails[0]);
    journal.remove(1);
    log("telemetry", "at=" + first, "volts=7.8");
    assertTrue(weigh(journal).entryTail()[1] > 0.01);
  }

  @Test
  void aForeignCallSignIsNoReception() {
    SmallCase plain = fewCauses();
    plain.callSign = Optional.of("HARK1");
    Pass pass = plain.pass(SmallCase.NEAR, 1);
    plain.heard(SmallCase.NEAR, 0);
    double before = plain.with(w -> Posterior.of(plain.input(), w)).stations()[0];
    plain.add(
        new Evidence.Heard(
            SmallCase.NEAR,
            pass.aos(),
            pass.los(),
            java.util.OptionalDouble.empty(),
            java.util.OptionalDouble.empty(),
            java.util.OptionalDouble.empty(),
            java.util.OptionalDouble.empty(),
            Optional.of("frames"),
            Optional.of("OTHER"),
            Optional.empty()));
    assertEquals(
        plain.pass(SmallCase.NEAR, 0).los(), Diagnosis.lastHeard(plain.input()).orElseThrow());
    assertTrue(plain.with(w -> Posterior.of(plain.input(), w)).stations()[0] >= before);
  }
}
