package hark.cli;

import hark.plan.PlanSettings;
import hark.trial.follow.Ingredient;
import hark.trial.follow.Rule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What `hark trial` follows instead of holding the diagnosis against the truth; a mixin. */
final class FollowOptions {
  /** All rules; the first is the one that the others are compared with. */
  private static final String ALL = "all";

  @Option(
      names = "--follow",
      paramLabel = "RULE",
      split = ",",
      description =
          "Follow campaigns from the silence on by this rule, and by no other than those named:"
              + " hark, every, highest, random, rotation, highest-rotation, or all. May be repeated."
              + " Says what each regains, after how many days and hours.")
  private List<String> follow = new ArrayList<>();

  @Option(
      names = "--hours-per-week",
      paramLabel = "H",
      description = "Hours of people's time a week, for each rule (default: ${DEFAULT-VALUE}).")
  private double hours = 5;

  @Option(
      names = "--without",
      paramLabel = "WHAT",
      split = ",",
      converter = IngredientWord.class,
      description = "The plan does without commands, ways (of listening) or inference.")
  private List<Ingredient> without = new ArrayList<>();

  @Option(
      names = "--replan-hours",
      paramLabel = "H",
      description =
          "A plan is made again when the record has grown and the plan is this old; 0 is every time"
              + " (default: ${DEFAULT-VALUE}).")
  private double replanHours;

  @Option(
      names = "--plan-by",
      paramLabel = "HOW",
      description = "How the plan chooses: cover, next_best or look_ahead (default: cover).")
  private PlanSettings.Rule planBy = PlanSettings.Rule.COVER;

  boolean isAsked() {
    return !follow.isEmpty();
  }

  double hours() {
    return hours;
  }

  PlanSettings.Rule planBy() {
    return planBy;
  }

  double replanHours() {
    return replanHours;
  }

  Set<Ingredient> without() {
    Set<Ingredient> set = EnumSet.noneOf(Ingredient.class);
    set.addAll(without);
    return set;
  }

  /** Rules in their usual order. */
  List<Rule> rules() {
    Set<Rule> rules = EnumSet.noneOf(Rule.class);
    for (String word : follow) {
      if (word.equals(ALL)) {
        rules.addAll(List.of(Rule.values()));
      } else {
        rules.add(find(word, Rule.values(), Rule::word));
      }
    }
    return List.copyOf(rules);
  }

  private static <T> T find(String word, T[] all, Function<T, String> name) {
    return Arrays.stream(all)
        .filter(each -> name.apply(each).equals(word.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\""
                        + word
                        + "\" is none of "
                        + Arrays.stream(all).map(name).collect(Collectors.joining(", "))));
  }

  /** Reads what the plan does without. */
  static final class IngredientWord implements ITypeConverter<Ingredient> {
    @Override
    public Ingredient convert(String word) {
      try {
        return find(word, Ingredient.values(), Ingredient::word);
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }
}
