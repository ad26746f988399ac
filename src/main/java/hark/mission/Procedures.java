package hark.mission;

import hark.plan.Procedure;
import hark.problem.BadInput;
import hark.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The stock procedures, and a folder's own over them by id. */
public final class Procedures {
  private static final String DIRECTORY = "runbooks";

  private Procedures() {}

  /** The stock procedures in order of their file names; their lint is a test of ours. */
  public static List<Procedure> stock() {
    Problems problems = new Problems();
    List<ProcedureFile> files = readAll(ResourceFolder.of(""), problems);
    problems.throwIfAny();
    return files.stream().map(ProcedureFile::procedure).toList();
  }

  /** Stock and own; one of the folder's own replaces the stock one of the same id. */
  static List<Procedure> with(FolderSource folder, Problems problems, List<Problem> warnings) {
    Map<String, Procedure> byId = new LinkedHashMap<>();
    stock().forEach(p -> byId.put(p.id(), p));
    for (ProcedureFile own : readAll(folder, problems)) {
      byId.put(own.procedure().id(), own.procedure());
      warnings.addAll(own.warnings());
    }
    warnings.addAll(notInIndex(folder, problems));
    return List.copyOf(byId.values());
  }

  /** Inside a jar only what an index names is found; where there is one, it must name all. */
  private static List<Problem> notInIndex(FolderSource folder, Problems problems) {
    String index = DIRECTORY + "/index";
    try {
      return folder
          .text(index)
          .map(text -> text.lines().map(String::strip).toList())
          .map(named -> notNamed(folder, index, named))
          .orElse(List.of());
    } catch (BadInput bad) {
      problems.addAll(bad.problems());
      return List.of();
    }
  }

  private static List<Problem> notNamed(FolderSource folder, String index, List<String> named) {
    return folder.list(DIRECTORY).stream()
        .filter(file -> file.endsWith(".md") && !named.contains(file))
        .map(
            file ->
                new Problem(
                    file + " is not named in it",
                    folder.label(index),
                    "add a line with the file's name"))
        .toList();
  }

  static List<ProcedureFile> readAll(FolderSource folder, Problems problems) {
    Map<String, String> fileOfId = new LinkedHashMap<>();
    List<ProcedureFile> files = new ArrayList<>();
    for (String name : folder.list(DIRECTORY)) {
      if (name.endsWith(".md")) {
        read(folder, DIRECTORY + "/" + name, problems)
            .filter(file -> isNew(file.procedure().id(), folder, name, fileOfId, problems))
            .ifPresent(files::add);
      }
    }
    return files;
  }

  private static Optional<ProcedureFile> read(FolderSource folder, String path, Problems problems) {
    try {
      return folder
          .text(path)
          .flatMap(text -> ProcedureFile.check(folder.label(path), text, problems));
    } catch (BadInput bad) {
      problems.addAll(bad.problems());
      return Optional.empty();
    }
  }

  private static boolean isNew(
      String id,
      FolderSource folder,
      String name,
      Map<String, String> fileOfId,
      Problems problems) {
    String earlier = fileOfId.putIfAbsent(id, name);
    if (earlier != null) {
      problems.add(
          new Problem(
              "the id '" + id + "' is already that of " + earlier,
              folder.label(DIRECTORY + "/" + name),
              "give each procedure its own id"));
    }
    return earlier == null;
  }
}
