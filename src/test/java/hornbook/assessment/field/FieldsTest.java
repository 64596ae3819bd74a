package hornbook.assessment.field;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Assessment;
import hornbook.assessment.word.Word;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;

/** The table of fields and the records are two sides of one thing. */
public class FieldsTest {
  private static final Random SAMPLES = new Random(7);

  @Test
  void everyFieldIsAComponentOfItsRecordAndEveryComponentAField() {
    for (FieldHolder holder : holders()) {
      List<String> fields =
          holder.fields().stream()
              .filter(field -> !(field.kind() instanceof FormatName))
              .map(field -> field.name() + " " + type(field.kind()))
              .toList();
      List<String> components = new ArrayList<>();
      for (RecordComponent component : holder.type().getRecordComponents()) {
        components.add(component.getName() + " " + component.getGenericType().getTypeName());
      }
      assertThat(fields).as(holder.type().getSimpleName()).isEqualTo(components);
    }
  }

  /** Reads each record by reflection, to hold the written-out shapes to it. */
  @RepeatedTest(40)
  void everyShapeTakesARecordApartAndPutsItTogetherInTheOrderOfTheTable() throws Exception {
    for (FieldHolder holder : holders()) {
      boolean whole = holder == Fields.ASSESSMENT;
      Object[] values = holder.fields().stream().map(field -> sample(field.kind())).toArray();
      Object record = holder.shape().build(values);
      assertThat(holder.shape().take(record)).containsExactly(values);
      RecordComponent[] components = holder.type().getRecordComponents();
      for (int i = 0; i < components.length; i++) {
        assertThat(components[i].getAccessor().invoke(record))
            .as(components[i].toString())
            .isSameAs(values[whole ? i + 1 : i]);
      }
    }
  }

  /** A value of that kind, another one with each call. */
  private static Object sample(Kind kind) {
    if (kind instanceof OneWord word) {
      return word.options().get(SAMPLES.nextInt(word.options().size()));
    }
    if (kind instanceof Flag) {
      return SAMPLES.nextBoolean();
    }
    if (kind instanceof WholeNumber) {
      return Integer.valueOf(1000 + SAMPLES.nextInt(1_000_000));
    }
    if (kind instanceof Amount) {
      return Double.valueOf(SAMPLES.nextDouble());
    }
    if (kind instanceof ShortText) {
      return new String("text");
    }
    if (kind instanceof Day) {
      return LocalDate.EPOCH;
    }
    if (kind instanceof FormatName format) {
      return format.name();
    }
    if (kind instanceof FieldGroup group) {
      return group.shape().build(new Object[group.fields().size()]);
    }
    return new ArrayList<>();
  }

  @Test
  void everyRecordOfTheInputIsInTheTable() {
    List<Class<?>> reached = new ArrayList<>();
    reach(Assessment.class, reached);
    assertThat(reached).hasSameElementsAs(holders().stream().map(FieldHolder::type).toList());
  }

  @Test
  void everyFieldSaysInOneLineWhatItIsAndHowToLook() {
    for (Field field : all(Fields.ASSESSMENT)) {
      assertThat(field.label()).as(field.name()).isNotBlank().doesNotContain("\n");
      assertThat(field.how()).as(field.name()).isNotBlank().matches("[A-Z0-9][^\n]*[.?]");
    }
  }

  @Test
  void onlyTheFormatTheFeetAndTheLimbAreRequired() {
    assertThat(all(Fields.ASSESSMENT))
        .filteredOn(Field::required)
        .extracting(Field::name)
        .containsExactly("format", "feet", "limb");
  }

  @Test
  void aFieldIsFoundByItsPath() {
    assertThat(Fields.at("feet[2].signs.digitalPulse").label()).isEqualTo("digital pulse");
    assertThat(Fields.at("feet[left-fore].wall[1].to")).isSameAs(Fields.ofFoot("wall[0].to"));
    assertThat(Fields.at("horse.weight").kind()).isInstanceOf(Amount.class);
    assertThat(Fields.at("horse.hooves")).isNull();
    assertThat(Fields.at("horse[0].weight")).isNull();
    assertThat(Fields.at("horse.weight.more")).isNull();
    assertThat(Fields.at("..")).isNull();
  }

  private static String type(Kind kind) {
    if (kind instanceof ScalarKind scalar) {
      return scalar.type().getName();
    }
    if (kind instanceof WordList list) {
      return "java.util.List<" + list.each().type().getName() + ">";
    }
    if (kind instanceof FieldRows rows) {
      return "java.util.List<" + rows.type().getName() + ">";
    }
    return ((FieldGroup) kind).type().getName();
  }

  public static List<Field> all(FieldHolder holder) {
    List<Field> all = new ArrayList<>();
    for (Field field : holder.fields()) {
      all.add(field);
      if (field.kind() instanceof FieldHolder inner) {
        all.addAll(all(inner));
      }
    }
    return all;
  }

  private static List<FieldHolder> holders() {
    List<FieldHolder> holders = new ArrayList<>(List.of(Fields.ASSESSMENT));
    for (Field field : all(Fields.ASSESSMENT)) {
      if (field.kind() instanceof FieldHolder holder) {
        holders.add(holder);
      }
    }
    return holders;
  }

  private static void reach(Class<?> type, List<Class<?>> reached) {
    reached.add(type);
    for (RecordComponent component : type.getRecordComponents()) {
      Type inner = component.getGenericType();
      if (inner instanceof ParameterizedType list) {
        inner = list.getActualTypeArguments()[0];
      }
      if (inner instanceof Class<?> found && found.isRecord()) {
        reach(found, reached);
      } else {
        assertThat((Class<?>) inner)
            .matches(
                leaf ->
                    Word.class.isAssignableFrom(leaf)
                        || List.of(
                                String.class,
                                Integer.class,
                                Double.class,
                                Boolean.class,
                                LocalDate.class)
                            .contains(leaf));
      }
    }
  }
}
