package hornbook.cli;

/** The form of what is told of the rule base. */
final class ListFormatOption {
  private enum Form {
    TEXT,
    JSON
  }

  private final Value<Form> form;

  ListFormatOption(Arguments arguments) {
    form =
        arguments.word(
            Form.class, Form.TEXT, "plain text for people, or JSON for programs", "--format");
  }

  boolean json() {
    return form.value() == Form.JSON;
  }
}
