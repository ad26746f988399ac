package hark.assessment;

import hark.assessment.EnergyReport.OrbitBalance;
import hark.ensemble.BodyList;
import hark.ensemble.BodyRun;
import hark.ensemble.DiagnosisInput;
import hark.orbit.Eclipse;
import hark.power.EnergyBooks;
import hark.power.PowerModel.BusState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where the energy of one orbit begins and the next ends: at sunrise on board, so that an orbit is
 * one charge and one discharge; in full sun, a period after the last. From a day before now, where
 * the fan begins, to the horizon. Seconds count from separation.
 */
final class OrbitStarts {
  private static final double LOOK_BACK_SECONDS = 86_400;
  private static final double JOULE_PER_WH = 3600;
  private static final double SECONDS_PER_HOUR = 3600;

  /** Orbits of the longest horizon and a day at 85 minutes each; a guard against endless loops. */
  private static final int MOST_ORBITS = 1100;

  private final DiagnosisInput input;
  private final double[] starts;

  private OrbitStarts(DiagnosisInput input, double[] starts) {
    this.input = input;
    this.starts = starts;
  }

  static OrbitStarts of(BodyList list, List<Eclipse> shadows) {
    DiagnosisInput input = list.input();
    double[] sunrises =
        shadows.stream().mapToDouble(shadow -> input.seconds(shadow.penumbraExit())).toArray();
    double period =
        input.candidates().get(input.likeliestCandidate()).sets().get(0).periodSeconds();
    double from = Math.max(0, input.seconds(input.now()) - LOOK_BACK_SECONDS);
    double end = input.seconds(input.end());
    List<Double> starts = new ArrayList<>();
    double next = sunrise(sunrises, from, from + period, from);
    while (next <= end && starts.size() < MOST_ORBITS) {
      starts.add(next);
      next = sunrise(sunrises, next + 0.5 * period, next + 1.5 * period, next + period);
    }
    return new OrbitStarts(input, starts.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** The first sunrise in a span, or else. */
  private static double sunrise(double[] sunrises, double from, double to, double otherwise) {
    int at = Arrays.binarySearch(sunrises, from);
    int first = at >= 0 ? at : -at - 1;
    return first < sunrises.length && sunrises[first] <= to ? sunrises[first] : otherwise;
  }

  /** The starts; the last one only ends an orbit. */
  double[] seconds() {
    return starts.clone();
  }

  /** The balance of each orbit, from books read at the starts. */
  List<OrbitBalance> balance(BodyRun run, StateNeeds needs) {
    List<EnergyBooks> books = run.meanBooks();
    List<OrbitBalance> list = new ArrayList<>();
    for (int n = 0; n + 1 < books.size(); n++) {
      list.add(balance(n, books.get(n + 1).minus(books.get(n)), needs));
    }
    return list;
  }

  private OrbitBalance balance(int n, EnergyBooks orbit, StateNeeds needs) {
    double hours = (starts[n + 1] - starts[n]) / SECONDS_PER_HOUR;
    return new OrbitBalance(
        input.instant(starts[n]),
        input.instant(starts[n + 1]),
        orbit.arrays() / JOULE_PER_WH,
        orbit.loads() / JOULE_PER_WH,
        orbit.losses() / JOULE_PER_WH,
        orbit.stored() / JOULE_PER_WH,
        orbit.removed() / JOULE_PER_WH,
        orbit.offered() / JOULE_PER_WH,
        hours * needs.watts(BusState.SAFE, starts[n]),
        hours * needs.watts(BusState.NOMINAL, starts[n]));
  }
}
