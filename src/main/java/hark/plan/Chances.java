package hark.plan;

import hark.ensemble.Diagnosis;
import hark.ensemble.Listening;
import hark.ensemble.Particles;
import hark.ensemble.SkyWindow;
import hark.ensemble.Workers;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What each possibility lets a working station hear, for every window and every option, computed
 * once.
 *
 * <p>{@code heard[window][option][particle]} and {@code audible[window][particle]}, the latter for
 * the widest ear.
 */
final class Chances {
  final float[][][] heard;
  final float[][] audible;
  final double[][] works;

  private Chances(int windows, double[][] works) {
    heard = new float[windows][][];
    audible = new float[windows][];
    this.works = works;
  }

  static Chances of(
      Diagnosis diagnosis,
      Particles particles,
      List<List<WindowOption>> options,
      OptionList list,
      Workers workers) {
    int stations = diagnosis.input().stations().size();
    double[][] works = new double[particles.count()][stations];
    for (int p = 0; p < works.length; p++) {
      for (int s = 0; s < stations; s++) {
        works[p][s] = particles.works(p, s);
      }
    }
    Chances chances = new Chances(options.size(), works);
    workers.each(
        options.size(),
        w -> {
          SkyWindow window = diagnosis.windows().get(w);
          Map<Listening, float[]> known = new HashMap<>();
          chances.audible[w] =
              known.computeIfAbsent(list.widest(window), l -> row(particles, window, l));
          chances.heard[w] = new float[options.get(w).size()][];
          for (int o = 0; o < options.get(w).size(); o++) {
            WindowOption option = options.get(w).get(o);
            chances.heard[w][o] =
                option.listens()
                    ? known.computeIfAbsent(option.listening(), l -> row(particles, window, l))
                    : new float[particles.count()];
          }
        });
    return chances;
  }

  private static float[] row(Particles particles, SkyWindow window, Listening listening) {
    Particles.Hearing hearing = particles.hearing(window, listening);
    float[] row = new float[particles.count()];
    for (int p = 0; p < row.length; p++) {
      row[p] = (float) hearing.chance(p);
    }
    return row;
  }
}
