package hark.console;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.document.AssessmentJson;
import hark.ensemble.Cause;
import hark.mission.Mission;
import hark.mission.MissionCheck;
import hark.mission.MissionKey;
import hark.mission.MissionKeys;
import hark.mission.MissionNumber;
import hark.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The mission's files as JSON: what was found in them, and in readable parts. */
final class SetUpJson {
  private SetUpJson() {}

  /** The mission as its files stand. */
  static ObjectNode whole(MissionPapers papers) {
    return checked(papers, papers.texts());
  }

  /** What the reader makes of some texts; they come back with it. */
  static ObjectNode checked(MissionPapers papers, Map<String, String> texts) {
    MissionCheck check = papers.check(texts);
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    ObjectNode files = node.putObject("texts");
    texts.forEach(files::put);
    problems(node.putArray("problems"), check.problems());
    problems(node.putArray("warnings"), check.warnings());
    problems(node.putArray("notes"), check.notes());
    check.notComputed().forEach(node.putArray("notComputed")::add);
    keys(node.putArray("keys"), texts.getOrDefault(MissionPapers.MISSION, ""), check);
    check.mission().ifPresent(mission -> mission(node.putObject("mission"), mission));
    return node;
  }

  static void problems(ArrayNode into, List<Problem> problems) {
    problems.forEach(problem -> into.add(Reply.node(problem)));
  }

  /** Every key; those of numbers that can be asked about tell their plausible span too. */
  private static void keys(ArrayNode into, String yaml, MissionCheck check) {
    Map<String, MissionNumber> numbers =
        check.numbers().stream()
            .collect(Collectors.toMap(MissionNumber::key, Function.identity(), (a, b) -> a));
    for (MissionKey key : MissionKeys.list(yaml, check.defaults())) {
      ObjectNode node = into.addObject();
      node.put("key", key.key()).put("value", key.value()).put("unit", key.unit());
      node.put("line", key.line());
      MissionNumber number = numbers.get(key.key());
      if (number != null) {
        node.put("mean", number.mean())
            .put("least", number.least())
            .put("greatest", number.greatest());
      }
    }
  }

  private static void mission(ObjectNode node, Mission mission) {
    node.put("name", mission.name())
        .put("separation", PageJson.time(mission.separation()))
        .put("now", mission.now().map(PageJson::time).orElse(null))
        .put("crewHoursPerWeek", mission.crewHoursPerWeek())
        .put("hazardLimit", mission.hazardLimit());
    ArrayNode causes = node.putArray("causes");
    for (Cause cause : mission.causes()) {
      causes
          .addObject()
          .put("id", cause.id())
          .put("title", cause.title())
          .put("branch", cause.branch())
          .put("prior", cause.probability());
    }
  }

  /** What has become of a reckoning. */
  static ObjectNode state(Reckonings.State state) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    if (state instanceof Reckonings.State.Running running) {
      return node.put("state", "running").put("seconds", running.seconds());
    }
    if (state instanceof Reckonings.State.Done done) {
      node.put("state", "done").put("seconds", done.seconds());
      node.set("assessment", AssessmentJson.of(done.assessment()));
      return node;
    }
    if (state instanceof Reckonings.State.Failed failed) {
      problems(node.put("state", "failed").putArray("problems"), failed.problems());
      return node;
    }
    return node.put("state", "stopped");
  }
}
