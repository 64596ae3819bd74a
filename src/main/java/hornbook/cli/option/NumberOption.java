package hornbook.cli.option;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;

/** An option that takes a whole number. */
public final class NumberOption {
  private final String name;
  private final ArgumentValue<String> written;
  private final long usual;
  private final long least;
  private final long most;

  /**
   * @param usual what holds when it is not given
   */
  public NumberOption(
      Arguments arguments, String name, long usual, long least, long most, String description) {
    this.name = name;
    this.usual = usual;
    this.least = least;
    this.most = most;
    written = arguments.text("N", description, name);
  }

  /**
   * The number given.
   *
   * @throws Failure when it is none, or out of bounds
   */
  public long number() {
    if (written.value() == null) {
      return usual;
    }
    try {
      long number = Long.parseLong(written.value().strip());
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException none) {
      // Told below, like a number out of bounds.
    }
    throw Failure.usage(
        name + " cannot be \"" + written.value() + "\"",
        "allowed: a whole number from " + least + " to " + most);
  }
}
