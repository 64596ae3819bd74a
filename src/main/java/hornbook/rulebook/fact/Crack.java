package hornbook.rulebook.fact;

/** A crack in the wall, in the words of the assessment; a word that was not looked at is null. */
public record Crack(
    String place,
    String side,
    String starts,
    String depth,
    String bleeds,
    String moves,
    String field)
    implements CitedFact {}
