package hornbook.foot;

import java.lang.reflect.RecordComponent;
import java.util.Map;

/** Records of the input by the names of their fields: whatever is not named is unknown. */
public final class Given {
  private Given() {}

  /** A record with the values given; groups not given are there, with nothing in them. */
  public static <T> T a(Class<T> type, Map<String, ?> values) {
    RecordComponent[] fields = type.getRecordComponents();
    Object[] all = new Object[fields.length];
    int used = 0;
    for (int i = 0; i < fields.length; i++) {
      boolean given = values.containsKey(fields[i].getName());
      used += given ? 1 : 0;
      all[i] = given ? values.get(fields[i].getName()) : unknown(fields[i].getType());
    }
    if (used != values.size()) {
      throw new IllegalArgumentException(type.getSimpleName() + " lacks a field of " + values);
    }
    return make(type, fields, all);
  }

  /** The record with its fields in order. */
  static <T> T make(Class<T> type, RecordComponent[] fields, Object[] values) {
    Class<?>[] types = new Class<?>[fields.length];
    for (int i = 0; i < fields.length; i++) {
      types[i] = fields[i].getType();
    }
    try {
      return type.getDeclaredConstructor(types).newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Object unknown(Class<?> type) {
    return type.isRecord() ? a(type, Map.of()) : null;
  }
}
