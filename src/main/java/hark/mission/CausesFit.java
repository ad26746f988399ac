package hark.mission;

import hark.ensemble.Cause;
import hark.ensemble.Effect;
import hark.fault.FaultTree;
import hark.power.Face;
import hark.problem.NearestWord;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Causes against the spacecraft they are meant for: names of faces and strings must be there, and
 * what cannot happen to it is left out.
 *
 * @param causes that can happen
 * @param tree over them
 * @param notes what was left out and why
 */
record CausesFit(List<Cause> causes, FaultTree tree, List<Problem> notes) {
  /** Nothing left out; for causes read without a spacecraft. */
  static CausesFit unfitted(List<Cause> causes, FaultTree tree) {
    return new CausesFit(causes, tree, List.of());
  }

  /** Fits causes to the faces of a spacecraft; names that are not there are problems. */
  static CausesFit to(List<Face> faces, List<Cause> causes, FaultTreeFile file, Problems problems) {
    tellStrangers(faces, causes, file, problems);
    if (faces.stream().anyMatch(Face::deployed)) {
      return unfitted(causes, file.tree());
    }
    Set<String> never = new LinkedHashSet<>();
    List<Cause> left = new ArrayList<>();
    List<Problem> notes = new ArrayList<>();
    for (Cause cause : causes) {
      if (cause.effects().stream().allMatch(Effect.PanelsStowed.class::isInstance)) {
        never.add(cause.id());
        notes.add(note(cause, file));
      } else {
        left.add(cause);
      }
    }
    return new CausesFit(left, TreeWithout.events(file.tree(), never), notes);
  }

  private static Problem note(Cause cause, FaultTreeFile file) {
    return new Problem(
        "'" + cause.title() + "' is left out: no face of this spacecraft is deployed",
        file.where(cause.id()),
        "if panels unfold, write deployed: true at their faces");
  }

  private static void tellStrangers(
      List<Face> faces, List<Cause> causes, FaultTreeFile file, Problems problems) {
    List<String> names = faces.stream().map(Face::name).toList();
    Set<String> strings = new TreeSet<>(faces.stream().map(Face::string).toList());
    for (Cause cause : causes) {
      YamlTree effects = MissionSense.deep(file.events().get(cause.id()), "effect");
      for (Effect effect : cause.effects()) {
        if (effect instanceof Effect.FaceLost lost && !names.contains(lost.face())) {
          problems.add(
              MissionSense.deep(effects, "face_lost"),
              "'" + lost.face() + "' is no face of this spacecraft",
              NearestWord.advice(lost.face(), names));
        }
        if (effect instanceof Effect.ArrayStringLost lost && !strings.contains(lost.string())) {
          problems.add(
              MissionSense.deep(effects, "array_string_lost"),
              "'" + lost.string() + "' is no string of this spacecraft's faces",
              NearestWord.advice(lost.string(), strings));
        }
      }
    }
  }
}
