package hornbook.assessment.field;

/** A list of words; an empty one says "looked for, and none". */
public record WordList(OneWord each) implements Kind {
  /** Written in place of the empty list. */
  public static final String NONE = "none";

  @Override
  public String allowed() {
    return "a list of " + String.join(", ", each.words()) + "; [] or none when there is none";
  }
}
