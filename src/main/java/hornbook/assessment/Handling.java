package hornbook.assessment;

/** How the horse stands to be shod. */
public enum Handling implements Word {
  QUIET,
  RESTLESS,
  DANGEROUS
}
