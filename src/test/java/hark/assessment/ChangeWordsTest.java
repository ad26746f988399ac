package hark.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import hark.power.OnboardChange;
import hark.power.OnboardCommand;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChangeWordsTest {
  static Class<?>[] kinds() {
    return OnboardChange.class.getPermittedSubclasses();
  }

  /** A change added later must get its words. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("kinds")
  void everyChangeHasWords(Class<?> kind) throws Exception {
    Class<?>[] types =
        Arrays.stream(kind.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new);
    Constructor<?> constructor = kind.getDeclaredConstructor(types);
    Object[] values = Arrays.stream(types).map(ChangeWordsTest::sample).toArray();
    assertFalse(ChangeWords.of((OnboardChange) constructor.newInstance(values)).isBlank());
  }

  private static Object sample(Class<?> type) {
    if (type == double.class) {
      return 0.5;
    }
    if (type == int.class) {
      return 1;
    }
    if (type == boolean.class) {
      return true;
    }
    if (type == String.class) {
      return "A";
    }
    return type == Set.class ? Set.of() : OnboardCommand.RESET;
  }

  @Test
  void numbersHaveTheirUnits() {
    assertEquals("arrays give 31 %", ChangeWords.of(new OnboardChange.ArrayFactor(0.305)));
    assertEquals("0.30 W more load", ChangeWords.of(new OnboardChange.ExtraLoad(0.3, false)));
  }
}
