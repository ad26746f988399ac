package hark.document;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.OrbitKnowledge;
import hark.assessment.OrbitKnowledge.Known;
import hark.ensemble.Candidate;
import hark.signal.DopplerCurve;
import hark.signal.DopplerPoint;
import hark.signal.ExpectedCurve;
import hark.signal.WhoseAnswer;
import hark.signal.WhoseQuestion;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

/** What is known of the orbits, and curves against the candidates, as the page reads it. Pure. */
public final class OrbitJson {
  private static final double DAYS_A_YEAR = 365.25;

  /** Places at which a candidate's curve is drawn. */
  private static final int DRAWN = 60;

  private OrbitJson() {}

  /** {@code {now, objects:[…], curves:[]}}; curves are added by {@link #curve}. */
  public static ObjectNode of(OrbitKnowledge knowledge) {
    ObjectNode top = JsonNodeFactory.instance.objectNode();
    top.put("now", knowledge.now().toString());
    ArrayNode objects = top.putArray("objects");
    knowledge.objects().forEach(known -> object(objects.addObject(), known));
    top.putArray("curves");
    return top;
  }

  private static void object(ObjectNode node, Known known) {
    JsonFields fields = new JsonFields(node);
    fields.text("object", known.objectId());
    known.weight().ifPresent(weight -> fields.number("weight", weight));
    node.put("sets", known.sets().size());
    node.put("state", known.last().isState());
    fields.text("lastEpoch", known.last().epoch().toString());
    fields.number("ageHours", 24 * known.ageDays());
    fields.number("alongTrackSdS", known.alongTrackSdSeconds());
    known.measuredPerDaySeconds().ifPresent(s -> fields.number("measuredPerDayS", s));
    fields.number("believedPerDayS", known.expectedPerDaySeconds());
    node.put("jumps", known.jumps().size());
    fields.number("heightKm", known.decay().heightMeters() / 1000);
    fields.number("sinksMPerDay", known.decay().metersPerDay());
    if (!Double.isInfinite(known.decay().soonestDays())) {
      fields.number("soonestYears", known.decay().soonestDays() / DAYS_A_YEAR);
      fields.number("latestYears", known.decay().latestDays() / DAYS_A_YEAR);
    }
    fields.text("words", OrbitReport.sentences(known));
  }

  /** One file of curves with what it says of each candidate. */
  public static ObjectNode curve(String file, WhoseQuestion question, WhoseAnswer answer) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    JsonFields fields = new JsonFields(node);
    fields.text("file", file);
    fields.text("words", WhoseReport.verdict(answer));
    fields.text("verdict", answer.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    fields.text("likeliest", answer.likeliest().objectId());
    node.put("nominalHz", question.carrier().nominalHz());
    fields.number("scatterHz", answer.scaleHz());
    ArrayNode candidates = node.putArray("candidates");
    for (int k = 0; k < answer.found().size(); k++) {
      WhoseAnswer.Found found = answer.found().get(k);
      JsonFields one = new JsonFields(candidates.addObject());
      one.text("object", found.objectId());
      one.number("prior", found.prior());
      one.number("posterior", found.posterior());
      one.number("missesHz", found.rmsHz());
      one.number("lateS", found.lateSeconds());
      one.number("lateSdS", found.lateSdSeconds());
      one.number("believedSdS", question.suspects().get(k).lateSdSeconds());
    }
    ArrayNode passes = node.putArray("passes");
    for (int c = 0; c < question.curves().size(); c++) {
      pass(passes.addObject(), question, answer, c);
    }
    return node;
  }

  private static void pass(ObjectNode node, WhoseQuestion question, WhoseAnswer answer, int c) {
    DopplerCurve curve = question.curves().get(c);
    Instant first = curve.points().get(0).time();
    double nominal = question.carrier().nominalHz();
    node.put("station", curve.station());
    node.put("from", first.toString());
    ArrayNode points = node.putArray("points");
    for (DopplerPoint point : curve.points()) {
      ObjectNode one = points.addObject();
      one.put("seconds", Duration.between(first, point.time()).toMillis() / 1e3);
      one.put("hz", tenths(point.frequencyHz() - nominal));
    }
    double[] at =
        curve.points().stream()
            .mapToDouble(point -> Duration.between(first, point.time()).toMillis() / 1e3)
            .toArray();
    double[] drawn = new double[DRAWN];
    for (int i = 0; i < DRAWN; i++) {
      drawn[i] = at[at.length - 1] * i / (DRAWN - 1.0);
    }
    ArrayNode lines = node.putArray("lines");
    for (int k = 0; k < answer.found().size(); k++) {
      if (answer.found().get(k).objectId().equals(Candidate.NONE)) {
        continue; // flies anywhere
      }
      ObjectNode line = lines.addObject();
      line.put("object", answer.found().get(k).objectId());
      ArrayNode misses = line.putArray("missesHz");
      double[] expected = ExpectedCurve.onTime(question, answer, k, c, at);
      for (int i = 0; i < at.length; i++) {
        misses.add(tenths(expected[i] - curve.points().get(i).frequencyHz()));
      }
      ArrayNode seconds = line.putArray("seconds");
      ArrayNode hertz = line.putArray("hz");
      double[] whole = ExpectedCurve.onTime(question, answer, k, c, drawn);
      for (int i = 0; i < DRAWN; i++) {
        seconds.add(tenths(drawn[i]));
        hertz.add(tenths(whole[i] - nominal));
      }
    }
  }

  private static double tenths(double value) {
    return Math.round(10 * value) / 10.0;
  }
}
