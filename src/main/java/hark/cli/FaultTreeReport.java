package hark.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import hark.cli.TableWriter.Column;
import hark.fault.FaultTree;
import hark.fault.Solution;
import hark.fault.Solution.CutSet;
import hark.fault.Solution.Importance;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A solved tree as text for people, as the JSON of the contract, or its cut sets as CSV. */
final class FaultTreeReport {
  private final FaultTree tree;
  private final Solution solved;

  FaultTreeReport(FaultTree tree, Solution solved) {
    this.tree = tree;
    this.solved = solved;
  }

  void print(OutputFormat format, PrintWriter out) {
    switch (format) {
      case TABLE -> printText(out);
      case JSON -> printJson(out);
      case CSV -> sets().write(OutputFormat.CSV, setRows(true), out);
    }
    out.flush();
  }

  private void printText(PrintWriter out) {
    Solution.CutSets sets = solved.cutSets();
    out.println(title(solved.top()));
    out.println("probability " + number(solved.probability()) + ", exact");
    out.println();
    out.println(heading(sets));
    sets().write(OutputFormat.TABLE, setRows(false), out);
    out.println();
    out.println("importance");
    new TableWriter(
            "importance",
            List.of(
                Column.text("event"),
                Column.text("probability"),
                Column.text("birnbaum"),
                Column.text("criticality"),
                Column.text("Fussell–Vesely"),
                Column.text("RAW"),
                Column.text("RRW")))
        .write(OutputFormat.TABLE, solved.importance().stream().map(this::row).toList(), out);
  }

  private static String heading(Solution.CutSets sets) {
    List<String> orders = new ArrayList<>();
    sets.byOrder().forEach((order, count) -> orders.add(count + " of order " + order));
    String listed =
        sets.count() > sets.sets().size() ? "; the likeliest " + sets.sets().size() : "";
    String parts = orders.isEmpty() ? "" : " (" + String.join(", ", orders) + ")";
    return sets.count() + " minimal cut sets" + parts + listed;
  }

  private static TableWriter sets() {
    return new TableWriter(
        "sets",
        List.of(Column.number("order", 0), Column.text("probability"), Column.text("events")));
  }

  private List<Object[]> setRows(boolean exact) {
    List<Object[]> rows = new ArrayList<>();
    for (CutSet set : solved.cutSets().sets()) {
      String p = exact ? Double.toString(set.probability()) : number(set.probability());
      rows.add(new Object[] {set.events().size(), p, String.join(" ", set.events())});
    }
    return rows;
  }

  private Object[] row(Importance i) {
    return new Object[] {
      i.event(),
      number(i.probability()),
      number(i.birnbaum()),
      number(i.criticality()),
      number(i.fussellVesely()),
      number(i.riskAchievementWorth()),
      number(i.riskReductionWorth())
    };
  }

  private String title(String id) {
    FaultTree.Gate gate = tree.gates().get(id);
    return gate == null || gate.title().equals(id) ? id : gate.title() + " (" + id + ")";
  }

  private static String number(double value) {
    if (Double.isNaN(value)) {
      return "–";
    }
    return Double.isInfinite(value) ? "∞" : String.format(Locale.ROOT, "%.6g", value);
  }

  private void printJson(PrintWriter out) {
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.configure(JsonGenerator.Feature.AUTO_CLOSE_TARGET, false);
      json.writeStartObject();
      json.writeStringField("top", solved.top());
      json.writeNumberField("probability", solved.probability());
      writeSets(json);
      json.writeArrayFieldStart("importance");
      for (Importance importance : solved.importance()) {
        write(json, importance);
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    out.println();
  }

  private void writeSets(JsonGenerator json) throws IOException {
    json.writeObjectFieldStart("minimalCutSets");
    json.writeNumberField("count", solved.cutSets().count());
    json.writeObjectFieldStart("byOrder");
    for (Map.Entry<Integer, Long> order : solved.cutSets().byOrder().entrySet()) {
      json.writeNumberField(order.getKey().toString(), order.getValue());
    }
    json.writeEndObject();
    json.writeArrayFieldStart("sets");
    for (CutSet set : solved.cutSets().sets()) {
      json.writeStartObject();
      json.writeArrayFieldStart("events");
      for (String event : set.events()) {
        json.writeString(event);
      }
      json.writeEndArray();
      json.writeNumberField("probability", set.probability());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, Importance i) throws IOException {
    json.writeStartObject();
    json.writeStringField("event", i.event());
    write(json, "probability", i.probability());
    write(json, "birnbaum", i.birnbaum());
    write(json, "criticality", i.criticality());
    write(json, "fussellVesely", i.fussellVesely());
    write(json, "riskAchievementWorth", i.riskAchievementWorth());
    write(json, "riskReductionWorth", i.riskReductionWorth());
    json.writeEndObject();
  }

  /** JSON knows no infinity: a worth without bound and a ratio to nothing are null. */
  private static void write(JsonGenerator json, String name, double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumberField(name, value);
    } else {
      json.writeNullField(name);
    }
  }
}
