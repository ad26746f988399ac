package hark.console;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hark.assessment.CurveDesk;
import hark.assessment.OrbitDesk;
import hark.document.OrbitJson;
import hark.mission.FolderSource;
import hark.mission.Mission;
import hark.orbit.EarthModel;
import hark.problem.BadInput;
import hark.problem.Problem;
import hark.signal.CurveFiles;
import hark.signal.DopplerCurve;
import hark.signal.Whose;
import hark.signal.WhoseQuestion;
import hark.station.Station;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is known of a mission's orbits, and the Doppler curves that lie in its recordings, held
 * against the candidates.
 *
 * @param folder where the mission was read
 */
public record MissionOrbit(Mission mission, EarthModel earth, FolderSource folder) {
  private static final String RECORDINGS = "recordings";

  /** Files looked at: enough for a page. */
  private static final int MOST_CURVES = 12;

  /** Everything known by a time. Takes about a second for each curve. */
  ObjectNode view(Instant now) {
    ObjectNode node = OrbitJson.of(OrbitDesk.of(mission, earth, now));
    ArrayNode curves = node.withArray("curves");
    ArrayNode problems = node.putArray("problems");
    for (String file : files()) {
      try {
        curves.add(curve(file, now));
      } catch (BadInput bad) {
        bad.problems().forEach(problem -> problems.add(Reply.node(problem)));
      }
    }
    return node;
  }

  /** Curves in the recordings, by name; where one lies there in two forms, the plainer. */
  private List<String> files() {
    Map<String, String> byStem = new LinkedHashMap<>();
    for (String name : folder.list(RECORDINGS)) {
      String lower = name.toLowerCase(java.util.Locale.ROOT);
      if (lower.endsWith(".csv") || lower.endsWith(".tdm")) {
        byStem.putIfAbsent(name.substring(0, name.length() - 4), name);
      }
    }
    return byStem.values().stream().limit(MOST_CURVES).toList();
  }

  private ObjectNode curve(String file, Instant now) {
    String path = RECORDINGS + "/" + file;
    String text =
        folder
            .text(path)
            .orElseThrow(
                () -> new BadInput(List.of(new Problem("the file is gone", path, "put it back"))));
    List<String> stations = mission.stations().stream().map(Station::name).toList();
    CurveFiles.Setting setting =
        new CurveFiles.Setting(
            stations,
            stations.size() == 1 ? stations.get(0) : "",
            mission.beacons().get(0).frequencyHz(),
            earth);
    List<DopplerCurve> curves = new ArrayList<>(CurveFiles.parse(path, text, setting));
    WhoseQuestion question = new CurveDesk(mission, earth, now).question(curves);
    return OrbitJson.curve(file, question, Whose.of(question));
  }
}
