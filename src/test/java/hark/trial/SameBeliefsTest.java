package hark.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Field;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The hidden truth restates numbers that are judged, because it shares no code with the diagnosis.
 * They must be the same: a trial would otherwise measure the difference of two judgements.
 */
class SameBeliefsTest {
  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({
    "hark.trial.campaign.Crews#SLIP, hark.ensemble.Receptions#SLIP",
    "hark.trial.campaign.Crews#LEVEL_SD, hark.ensemble.ListeningClues#LEVEL_SD_DB",
    "hark.trial.campaign.Geometry#NONE_WIDER, hark.ensemble.Candidate#NONE_WIDER",
    "hark.trial.campaign.StationHealth#AS_GOOD_DB, hark.ensemble.StationModes#NOTICED_DB",
    "hark.trial.campaign.StationHealth#MISSED, hark.ensemble.Check#SLIP",
    "hark.trial.campaign.StationHealth#FOUND_ANYWAY, hark.ensemble.StationMode#FOUND_ANYWAY",
    "hark.trial.campaign.StationHealth#FOUND_OFF_TUNE, hark.ensemble.StationMode#FOUND_OFF_TUNE",
    "hark.trial.campaign.StationHealth#LOUD_DB, hark.ensemble.Check#STRONG_DB",
    "hark.trial.campaign.StationHealth#NOTICED_DB, hark.ensemble.Check#NOTICED_DB",
    "hark.trial.campaign.StationHealth#SPREAD_DB, hark.ensemble.Check#SPREAD_DB",
    "hark.trial.campaign.StationHealth#OTHER_HAND_DB, hark.link.LinkBudget#OPPOSITE_HANDS_DB",
    "hark.trial.campaign.StationHealth#SIDE_LOBE_DB, hark.link.LinkBudget#SIDE_LOBE_FLOOR_DB",
    "hark.trial.follow.Craft#DEAF_CAN_SEND, hark.ensemble.CommandLink#DEAF_CAN_SEND",
    "hark.trial.follow.Craft#COUNTER_FOUND, hark.ensemble.CommandLink#COUNTER_FOUND",
    "hark.trial.follow.Craft#RELEASE_WORKS, hark.ensemble.CommandLink#RELEASE_WORKS",
    "hark.trial.follow.Craft#COMMAND_SECONDS, hark.ensemble.CommandLink#COMMAND_SECONDS",
    "hark.trial.follow.Timesheet#NIGHT_FROM_HOUR, hark.plan.Nights#FROM_HOUR",
    "hark.trial.follow.Timesheet#NIGHT_TO_HOUR, hark.plan.Nights#TO_HOUR",
    "hark.trial.PlainUplink#TOLERATED_HZ, hark.ensemble.CommandLink#TOLERATED_HZ",
    "hark.trial.PlainUplink#THRESHOLD_SD_DB, hark.link.Uplink#WIDTH_DB",
    "hark.trial.PlainLink#ANOTHER_PART_DEG, hark.ensemble.Ear#INDEPENDENT_AFTER_DEG",
    "hark.trial.Losses#OTHER_HAND_DB, hark.link.LinkBudget#OPPOSITE_HANDS_DB",
    "hark.trial.Losses#ZENITH_DB, hark.link.LinkBudget#ZENITH_LOSS_DB",
    "hark.trial.Losses#HORIZON_DB, hark.link.LinkBudget#HORIZON_LOSS_DB",
    "hark.trial.Losses#SIDE_LOBE_DB, hark.link.LinkBudget#SIDE_LOBE_FLOOR_DB"
  })
  void restatedNumbersAreTheSame(String restated, String believed) throws Exception {
    assertEquals(number(believed), number(restated));
  }

  @Test
  void windowsShareASittingAlike() throws Exception {
    double days = number("hark.plan.Effort#ONE_SITTING_DAYS");
    assertEquals(days * 86_400, number("hark.trial.follow.Timesheet#ONE_SITTING_SECONDS"), 1e-6);
  }

  private static double number(String where) throws Exception {
    String[] parts = where.split("#", -1);
    Field field = Class.forName(parts[0]).getDeclaredField(parts[1]);
    field.setAccessible(true);
    return ((Number) field.get(null)).doubleValue();
  }
}
