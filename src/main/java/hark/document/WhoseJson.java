package hark.document;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.ensemble.Candidate;
import hark.signal.WhoseAnswer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;

/** The answer of {@code hark whose} in the form of the contract. Pure. */
public final class WhoseJson {
  private static final String NONE = Candidate.NONE;

  private WhoseJson() {}

  /** One JSON document. */
  public static String text(WhoseAnswer answer) {
    ObjectNode top = JsonNodeFactory.instance.objectNode();
    ArrayNode candidates = top.putArray("candidates");
    double none = 0;
    for (WhoseAnswer.Found found : answer.found()) {
      if (found.objectId().equals(NONE)) {
        none += found.posterior();
      } else {
        candidates.add(candidate(found));
      }
    }
    JsonFields fields = new JsonFields(top);
    fields.number("none", none);
    fields.text("verdict", answer.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    fields.number("tail", answer.tail());
    fields.number("scatterHz", answer.scaleHz());
    top.put("pointsSetAside", answer.setAside().size());
    return top.toPrettyString() + "\n";
  }

  /** Weights after start and end of contacts alone, in the same form. */
  public static String byTimes(Map<String, Double> weights) {
    ObjectNode top = JsonNodeFactory.instance.objectNode();
    ArrayNode candidates = top.putArray("candidates");
    weights.forEach(
        (object, weight) -> {
          if (!object.equals(NONE)) {
            ObjectNode node = candidates.addObject();
            JsonFields fields = new JsonFields(node);
            fields.text("object", object);
            fields.number("posterior", weight);
          }
        });
    new JsonFields(top).number("none", weights.getOrDefault(NONE, 0.0));
    return top.toPrettyString() + "\n";
  }

  private static ObjectNode candidate(WhoseAnswer.Found found) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    JsonFields fields = new JsonFields(node);
    fields.text("object", found.objectId());
    fields.number("prior", found.prior());
    fields.number("posterior", found.posterior());
    fields.number("rmsHz", found.rmsHz());
    fields.number("timeOffsetS", found.lateSeconds());
    fields.number("timeOffsetSd", found.lateSdSeconds());
    ArrayNode carriers = node.putArray("frequencyHz");
    for (double hertz : found.carrierHz()) {
      // six digits would round a carrier to hundreds of hertz
      carriers.add(BigDecimal.valueOf(hertz).setScale(1, RoundingMode.HALF_EVEN));
    }
    return node;
  }
}
