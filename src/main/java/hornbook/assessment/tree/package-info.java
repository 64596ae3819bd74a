/**
 * A YAML or JSON file as a tree in which every value knows its line, column and path; faults with
 * their place.
 *
 * <p>May use: {@code assessment}.
 *
 * <p>Begin with {@link hornbook.assessment.tree.FileTree}.
 */
package hornbook.assessment.tree;
