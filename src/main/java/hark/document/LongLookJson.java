package hark.document;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.LongLook;

/** A look beyond the horizon as JSON. */
public final class LongLookJson {
  private LongLookJson() {}

  /** As a tree of its own, for a page that asks for it later. */
  public static ObjectNode of(LongLook look) {
    JsonFields out = new JsonFields(JsonNodeFactory.instance.objectNode());
    into(out, look);
    return out.node();
  }

  static void into(JsonFields out, LongLook look) {
    out.time("until", look.until());
    AssessmentJson.array(
        out,
        "returns",
        look.returns(),
        (one, each) -> {
          one.text("cause", each.cause());
          one.text("title", each.title());
          one.node().put("bodies", each.bodies());
          one.number("sending", each.sending());
          one.number("probability", each.probability());
          one.time("p10", each.p10());
          one.time("p50", each.p50());
          one.time("p90", each.p90());
          one.text("note", each.note());
          one.text("words", Recovery.of(each));
        });
  }
}
