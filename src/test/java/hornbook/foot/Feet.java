package hornbook.foot;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Horse;
import hornbook.assessment.Limb;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Assessments of which any value may be missing. Groups are there, values are not always; what is
 * there is of a foot's size, though not always of one possible foot.
 */
final class Feet {
  private static final double GREATEST = 200;

  private final Random random;
  private final double known;

  private Feet(Random random) {
    this.random = random;
    this.known = random.nextDouble();
  }

  static Assessment any(long seed) {
    return new Feet(new Random(seed)).assessment();
  }

  private Assessment assessment() {
    List<Limb> limbs = new ArrayList<>(List.of(Limb.values()));
    Collections.shuffle(limbs, random);
    List<Foot> feet = new ArrayList<>();
    for (Limb limb : limbs.subList(0, 1 + random.nextInt(4))) {
      feet.add(record(Foot.class, limb));
    }
    return Given.a(Assessment.class, Map.of("horse", record(Horse.class, null), "feet", feet));
  }

  private <T> T record(Class<T> type, Limb limb) {
    RecordComponent[] fields = type.getRecordComponents();
    Object[] values = new Object[fields.length];
    for (int i = 0; i < fields.length; i++) {
      Class<?> field = fields[i].getType();
      boolean fixed = limb != null && field == Limb.class;
      values[i] = fixed ? limb : value(field, fields[i].getGenericType());
    }
    return Given.make(type, fields, values);
  }

  private Object value(Class<?> type, Type generic) {
    if (type.isRecord()) {
      return record(type, null);
    }
    if (random.nextDouble() > known) {
      return null;
    }
    if (type == Double.class) {
      return random.nextInt(20) == 0 ? 0.0 : random.nextDouble() * GREATEST;
    }
    if (type == Integer.class) {
      return random.nextInt(30);
    }
    if (type == Boolean.class) {
      return random.nextBoolean();
    }
    if (type == List.class) {
      return list((Class<?>) ((ParameterizedType) generic).getActualTypeArguments()[0]);
    }
    Object[] words = type.getEnumConstants();
    return words == null ? null : words[random.nextInt(words.length)];
  }

  private List<Object> list(Class<?> type) {
    List<Object> list = new ArrayList<>();
    for (int i = random.nextInt(10); i > 0; i--) {
      Object element = value(type, type);
      if (element != null) {
        list.add(element);
      }
    }
    return list;
  }
}
