package hark.trial.campaign;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hark.assessment.AssessmentRequest;
import hark.assessment.Assessor;
import hark.ensemble.BodyPrior;
import hark.ensemble.Cause;
import hark.ensemble.DiagnosisInput;
import hark.ensemble.Effect;
import hark.ensemble.Posterior;
import hark.ensemble.Sky;
import hark.ensemble.Uncertain;
import hark.ensemble.Workers;
import hark.evidence.Entry;
import hark.evidence.Evidence;
import hark.mission.Mission;
import hark.mission.Missions;
import hark.mission.ResourceFolder;
import hark.orbit.EarthModel;
import hark.trial.PlainBody;
import hark.trial.PlainHistory;
import hark.trial.PlainRequest;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How often nothing at all is heard in two weeks: truths sent burst by burst through the plain link
 * against what the diagnosis believes of the same causes. All bodies are alike, so that the two
 * ways of hearing are compared and nothing else.
 */
class SilenceTest {
  private static final int TRUTHS = 4000;
  private static final double DAYS = 14;

  /** Both sides are samples; four errors are passed by chance once in some 16 000 trials. */
  private static final double FOUR_ERRORS = 4;

  /** What quadrature in single precision and steps of ten seconds may cost. */
  private static final double SHARE_OF_A_PERCENT = 0.006;

  private static final Mission DEMO = Missions.read(ResourceFolder.of("hark/demo"), Map.of());
  private static final List<String> RADIO =
      List.of("antenna_stowed", "off_frequency", "transmitter_weak");

  @ParameterizedTest(name = "tumbling at {0} degrees a second")
  @ValueSource(doubles = {4, 0.2})
  void theDiagnosisExpectsAsMuchSilenceAsTheTruthBrings(double tumble) {
    DiagnosisInput plain = input(tumble, causes());
    Sky sky = Sky.of(plain);
    Geometry geometry = new Geometry(plain);
    Crew crew = new Crew(plain, geometry);
    List<Geometry.Window> windows = crew.chosen(new SplittableRandom(5));
    List<Entry> silent = Crews.journal(windows.stream().map(w -> silence(plain, w)).toList());
    Posterior posterior =
        Posterior.of(
            plain.at(plain.now(), plain.end(), silent), sky, new Workers(new SameThread(), 1));
    // a transmitter dead from the start is silent for sure: what it gains is the scale
    double[] scale = likelihood(posterior, RADIO.size() + 1);
    for (int set = 0; set <= RADIO.size(); set++) {
      double[] believed = likelihood(posterior, set);
      double expected = believed[0] / scale[0];
      List<Cause> at = set == 0 ? List.of() : List.of(certain(causes().get(set - 1)));
      double found = silentShare(input(tumble, at), geometry, sky, windows);
      double error = Math.hypot(Math.sqrt(found * (1 - found) / TRUTHS), believed[1] / scale[0]);
      String which = set == 0 ? "nothing wrong" : RADIO.get(set - 1);
      String told = which + ": expected " + expected + ", found " + found + ", error " + error;
      assertTrue(Math.abs(found - expected) < SHARE_OF_A_PERCENT + FOUR_ERRORS * error, told);
    }
  }

  /** Likelihood of a set up to a common factor, and its error. */
  private static double[] likelihood(Posterior posterior, int set) {
    double prior = posterior.sets().get(set).prior();
    return new double[] {posterior.setWeights()[set] / prior, posterior.setErrors()[set] / prior};
  }

  /** Share of truths of which no burst was noticed; what is taken for ours does not count. */
  private static double silentShare(
      DiagnosisInput input, Geometry geometry, Sky sky, List<Geometry.Window> windows) {
    World world = new World(input, sky.illumination(), Settings.Kind.SAME);
    Crew crew = new Crew(input, geometry);
    SplittableRandom random = new SplittableRandom(17);
    double end = input.seconds(input.now());
    PlainHistory body =
        PlainBody.run(
            input.body().typical(),
            sky.illumination(),
            new PlainRequest(end, Settings.TRUTH_STEP_SECONDS, 30, List.of(), List.of()));
    int count = 0;
    for (int k = 0; k < TRUTHS; k++) {
      Truth truth = world.draw(random);
      boolean heard = false;
      for (int w = 0; w < windows.size() && !heard; w++) {
        heard = crew.notices(windows.get(w), truth, body, random);
      }
      count += heard ? 0 : 1;
    }
    return (double) count / TRUTHS;
  }

  private static Evidence silence(DiagnosisInput input, Geometry.Window window) {
    return Crews.silence(input, window);
  }

  private static List<Cause> causes() {
    List<Cause> causes = new ArrayList<>();
    for (String id : RADIO) {
      causes.add(DEMO.causes().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow());
    }
    causes.add(
        new Cause(
            "mute",
            "mute",
            "radio",
            0.02,
            Cause.Onset.SEPARATION,
            List.of(new Effect.TransmitterOff()),
            Set.of(),
            "",
            "",
            List.of()));
    return causes;
  }

  private static Cause certain(Cause cause) {
    return Certain.cause(cause, Certain.CERTAIN, cause.onset());
  }

  private static DiagnosisInput input(double tumble, List<Cause> causes) {
    AssessmentRequest request =
        new AssessmentRequest(
            DEMO.separation().plus(Duration.ofHours((long) (24 * DAYS))), 1.0 / 24, 120, 3, 1);
    DiagnosisInput input = Assessor.input(DEMO, List.of(), request, EarthModel.bundled());
    List<Uncertain> fixed =
        IntStream.range(0, input.body().keys().size())
            .mapToObj(
                k ->
                    input.body().keys().get(k).endsWith("rate_deg_s")
                        ? Uncertain.of(tumble)
                        : Uncertain.of(input.body().numbers().get(k).mean()))
            .toList();
    BodyPrior body = new BodyPrior(input.body().keys(), fixed, input.body().build());
    return new DiagnosisInput(
        input.separation(),
        input.now(),
        input.end(),
        body,
        input.beacons(),
        input.receiver(),
        input.candidates(),
        input.stations(),
        causes,
        List.of(),
        input.earth(),
        input.bodiesPerSet(),
        input.seed());
  }
}
