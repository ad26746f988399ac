package hark.document;

import hark.signal.DopplerCurve;
import hark.signal.DopplerPoint;
import hark.signal.WhoseAnswer;
import hark.signal.WhoseQuestion;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Measured curves as points, what each leading candidate would have sent as lines, and beneath them
 * how far each misses. SVG, one panel a pass. Candidates differ by dash as well as by shade.
 */
public final class CurvePlot {
  private static final int WIDTH = 760;
  private static final int LEFT = 90;
  private static final int CURVE_HEIGHT = 200;
  private static final int MISS_HEIGHT = 90;
  private static final int GAP = 34;
  private static final int PANEL = CURVE_HEIGHT + MISS_HEIGHT + 2 * GAP + 20;

  /** More lines than this cannot be told apart. */
  private static final int SHOWN = 4;

  private static final List<String> DASHES = List.of("none", "7 3", "2 3", "9 3 2 3");

  private final WhoseQuestion question;
  private final List<WhoseAnswer.Found> shown;
  private final StringBuilder svg = new StringBuilder();

  private CurvePlot(WhoseQuestion question, WhoseAnswer answer) {
    this.question = question;
    this.shown =
        answer.found().stream()
            .sorted(
                Comparator.comparingDouble(WhoseAnswer.Found::posterior)
                    .thenComparing(WhoseAnswer.Found::prior)
                    .reversed())
            .limit(SHOWN)
            .toList();
  }

  /** A whole SVG document. */
  public static String of(WhoseQuestion question, WhoseAnswer answer) {
    return new CurvePlot(question, answer).draw();
  }

  private String draw() {
    int height = PANEL * question.curves().size() + 30;
    add(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\""
            + " font-size=\"12\" fill=\"none\" stroke=\"none\" role=\"img\">",
        WIDTH, height);
    add("<title>Measured Doppler curves and the candidates</title>");
    add("<rect width=\"%d\" height=\"%d\" fill=\"#fdfcf9\"/>", WIDTH, height);
    for (int c = 0; c < question.curves().size(); c++) {
      panel(c);
    }
    return svg.append("</svg>\n").toString();
  }

  private void panel(int c) {
    DopplerCurve curve = question.curves().get(c);
    List<DopplerPoint> points = curve.points();
    Instant first = points.get(0).time();
    double length = Math.max(1, seconds(first, points.get(points.size() - 1).time()));
    int top = c * PANEL + GAP;
    double nominal = question.carrier().nominalHz();
    Scale x = new Scale(0, length, LEFT, WIDTH - 20);
    Scale y =
        Scale.around(
            points.stream().mapToDouble(p -> p.frequencyHz() - nominal).toArray(),
            top + CURVE_HEIGHT,
            top);
    text(LEFT, top - 12, "start", curve.station() + ", from " + Words.yearAndMinute(first));
    axis(y, "Hz over nominal");
    int missTop = top + CURVE_HEIGHT + GAP;
    Scale miss = missScale(c, missTop);
    axis(miss, "misses, Hz");
    line(LEFT, miss.at(0), WIDTH - 20, miss.at(0), "#bbb");
    for (int k = 0; k < shown.size(); k++) {
      candidate(k, c, x, y, miss);
    }
    for (DopplerPoint point : points) {
      add(
          "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"2.6\" fill=\"#222\"/>",
          x.at(seconds(first, point.time())), y.at(point.frequencyHz() - nominal));
    }
    text(LEFT, missTop + MISS_HEIGHT + 14, "start", Words.clock(first));
    text(
        WIDTH - 20,
        missTop + MISS_HEIGHT + 14,
        "end",
        Words.clock(points.get(points.size() - 1).time()));
  }

  private Scale missScale(int c, int top) {
    double[] all =
        shown.stream()
            .flatMapToDouble(f -> java.util.Arrays.stream(f.residualHz().get(c)))
            .toArray();
    double most =
        java.util.Arrays.stream(all).filter(Double::isFinite).map(Math::abs).max().orElse(1);
    return new Scale(-most, most, top + MISS_HEIGHT, top);
  }

  private void candidate(int k, int c, Scale x, Scale y, Scale miss) {
    WhoseAnswer.Found found = shown.get(k);
    double nominal = question.carrier().nominalHz();
    List<DopplerPoint> points = question.curves().get(c).points();
    Instant first = points.get(0).time();
    StringBuilder expected = new StringBuilder();
    StringBuilder missed = new StringBuilder();
    for (int i = 0; i < points.size(); i++) {
      double residual = found.residualHz().get(c)[i];
      if (Double.isFinite(residual)) {
        double at = x.at(seconds(first, points.get(i).time()));
        double value = points.get(i).frequencyHz() + residual - nominal;
        expected.append(String.format(Locale.ROOT, "%.1f,%.1f ", at, y.at(value)));
        missed.append(String.format(Locale.ROOT, "%.1f,%.1f ", at, miss.at(residual)));
      }
    }
    String shade = k == 0 ? "#222" : "#777";
    for (StringBuilder path : List.of(expected, missed)) {
      add(
          "<polyline points=\"%s\" stroke=\"%s\" stroke-width=\"1.3\" stroke-dasharray=\"%s\"/>",
          path, shade, DASHES.get(k));
    }
    int row = c * PANEL + GAP + 14 + 16 * k;
    add(
        "<line x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\" stroke=\"%s\" stroke-width=\"1.3\""
            + " stroke-dasharray=\"%s\"/>",
        WIDTH - 190, row - 4, WIDTH - 160, row - 4, shade, DASHES.get(k));
    text(WIDTH - 152, row, "start", found.objectId() + "  " + Words.percent(found.posterior()));
  }

  private void axis(Scale scale, String title) {
    line(LEFT - 6, scale.at(scale.low()), LEFT - 6, scale.at(scale.high()), "#999");
    text(LEFT - 12, scale.at(scale.low()), "end", String.format(Locale.ROOT, "%+.0f", scale.low()));
    text(
        LEFT - 12,
        scale.at(scale.high()) + 10,
        "end",
        String.format(Locale.ROOT, "%+.0f", scale.high()));
    double middle = 0.5 * (scale.at(scale.low()) + scale.at(scale.high()));
    add(
        "<text x=\"16\" y=\"%.1f\" fill=\"#555\" text-anchor=\"middle\" transform=\"rotate(-90 16"
            + " %.1f)\">%s</text>",
        middle, middle, title);
  }

  private void line(double x1, double y1, double x2, double y2, String stroke) {
    add(
        "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\"/>",
        x1, y1, x2, y2, stroke);
  }

  private void text(double x, double y, String anchor, String words) {
    String safe = words.replace("&", "&amp;").replace("<", "&lt;");
    add(
        "<text x=\"%.1f\" y=\"%.1f\" fill=\"#333\" text-anchor=\"%s\">%s</text>",
        x, y, anchor, safe);
  }

  private void add(String form, Object... values) {
    svg.append(String.format(Locale.ROOT, form, values)).append('\n');
  }

  private static double seconds(Instant from, Instant to) {
    return Duration.between(from, to).toNanos() / 1e9;
  }

  /** From values to places. */
  private record Scale(double low, double high, double from, double to) {
    static Scale around(double[] values, double from, double to) {
      double low = java.util.Arrays.stream(values).min().orElse(0);
      double high = java.util.Arrays.stream(values).max().orElse(1);
      double room = Math.max(50, 0.06 * (high - low));
      return new Scale(low - room, high + room, from, to);
    }

    double at(double value) {
      return from + (value - low) / (high - low) * (to - from);
    }
  }
}
