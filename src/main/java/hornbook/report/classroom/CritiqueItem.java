package hornbook.report.classroom;

import hornbook.study.critique.Point;
import java.util.List;

/**
 * A point of a critique in words.
 *
 * @param lead what was answered, or should have been
 * @param bears what on this foot bears on it, or an empty text
 * @param asks a question that leads there, or an empty text where the learner is there already
 * @param says what follows
 * @param rules what the rules behind it say, with their works
 */
record CritiqueItem(
    Point point, String lead, String bears, String asks, String says, List<String> rules) {}
