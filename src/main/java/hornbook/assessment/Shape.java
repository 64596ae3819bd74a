package hornbook.assessment;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;

/** How a record is taken apart and put together again; looked up once for each type. */
final class Shape {
  private static final ClassValue<Shape> SHAPES =
      new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
          return new Shape(type);
        }
      };

  private final String[] names;
  private final Method[] accessors;
  private final Constructor<?> constructor;

  private Shape(Class<?> type) {
    RecordComponent[] components = type.getRecordComponents();
    names = new String[components.length];
    Class<?>[] types = new Class<?>[components.length];
    accessors = new Method[components.length];
    for (int i = 0; i < components.length; i++) {
      names[i] = components[i].getName();
      types[i] = components[i].getType();
      accessors[i] = components[i].getAccessor();
    }
    try {
      constructor = type.getDeclaredConstructor(types);
    } catch (ReflectiveOperationException noRecord) {
      throw new IllegalStateException(noRecord);
    }
  }

  static Shape of(Class<? extends Record> type) {
    return SHAPES.get(type);
  }

  int size() {
    return names.length;
  }

  /** The place of a component, or -1. */
  int index(String name) {
    for (int i = 0; i < names.length; i++) {
      if (names[i].equals(name)) {
        return i;
      }
    }
    return -1;
  }

  Object get(Object record, int index) {
    try {
      return accessors[index].invoke(record);
    } catch (ReflectiveOperationException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }

  Object build(Object[] values) {
    try {
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException unbuilt) {
      throw new IllegalStateException(unbuilt);
    }
  }

  /** The same record with one component changed. */
  Object with(Object record, int index, Object value) {
    Object[] values = new Object[names.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = i == index ? value : get(record, i);
    }
    return build(values);
  }
}
