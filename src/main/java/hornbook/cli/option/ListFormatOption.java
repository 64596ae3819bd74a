package hornbook.cli.option;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;

/** The form of what is told of the rule base. */
public final class ListFormatOption {
  private enum Form {
    TEXT,
    JSON
  }

  private final ArgumentValue<Form> form;

  public ListFormatOption(Arguments arguments) {
    form =
        arguments.word(
            Form.class, Form.TEXT, "plain text for people, or JSON for programs", "--format");
  }

  public boolean json() {
    return form.value() == Form.JSON;
  }
}
