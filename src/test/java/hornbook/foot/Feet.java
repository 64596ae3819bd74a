package hornbook.foot;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
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
    Assessment drawn = record(Assessment.class);
    List<Limb> limbs = new ArrayList<>(List.of(Limb.values()));
    Collections.shuffle(limbs, random);
    List<Foot> feet = new ArrayList<>();
    for (Limb limb : limbs.subList(0, 1 + random.nextInt(4))) {
      feet.add(on(limb, record(Foot.class)));
    }
    return new Assessment(drawn.horse(), drawn.visit(), feet, drawn.kit());
  }

  private static Foot on(Limb limb, Foot f) {
    return new Foot(
        limb,
        f.lameness(),
        f.onset(),
        f.lameSinceShod(),
        f.lameForDays(),
        f.shoeing(),
        f.gluedCycles(),
        f.wrappedDaysAgo(),
        f.stance(),
        f.pasternLine(),
        f.landing(),
        f.oldShoeWear(),
        f.deformity(),
        f.brushing(),
        f.measures(),
        f.wall(),
        f.cracks(),
        f.signs());
  }

  private <T> T record(Class<T> type) {
    RecordComponent[] components = type.getRecordComponents();
    Object[] values = new Object[components.length];
    Class<?>[] types = new Class<?>[components.length];
    for (int i = 0; i < components.length; i++) {
      types[i] = components[i].getType();
      values[i] = value(types[i], components[i].getGenericType());
    }
    try {
      Constructor<T> constructor = type.getDeclaredConstructor(types);
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private Object value(Class<?> type, Type generic) {
    if (type.isRecord()) {
      return record(type);
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
    if (type == LocalDate.class) {
      return LocalDate.of(2026, 1, 1).plusDays(random.nextInt(400));
    }
    if (type == List.class) {
      return list((Class<?>) ((ParameterizedType) generic).getActualTypeArguments()[0]);
    }
    return type.isEnum()
        ? type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)]
        : "x";
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
