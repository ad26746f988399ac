package hark.plan;

import hark.ensemble.Diagnosis;
import hark.ensemble.Listening;
import hark.ensemble.Particles;
import hark.ensemble.Workers;
import java.util.List;
import java.util.stream.Stream;

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
          Listening widest = list.widest(diagnosis.windows().get(w));
          List<Listening> ways =
              Stream.concat(
                      Stream.of(widest),
                      options.get(w).stream()
                          .filter(WindowOption::listens)
                          .map(WindowOption::listening))
                  .distinct()
                  .toList();
          float[][] rows = particles.chances(diagnosis.windows().get(w), ways);
          chances.audible[w] = rows[0];
          chances.heard[w] = new float[options.get(w).size()][];
          for (int o = 0; o < chances.heard[w].length; o++) {
            WindowOption option = options.get(w).get(o);
            chances.heard[w][o] =
                option.listens()
                    ? rows[ways.indexOf(option.listening())]
                    : new float[particles.count()];
          }
        });
    return chances;
  }
}
