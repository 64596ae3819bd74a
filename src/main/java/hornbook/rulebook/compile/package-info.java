/**
 * Turns a folder of rules into a catalogue: in the build for the shipped rules, while running for
 * those of others.
 *
 * <p>The shipped rules are read in the build and again only when rules or the classes that read
 * them have changed. Rules of others are kept in the user's cache under a digest of rules and
 * program. All are put together for the engine by {@code rulebook.network}: no rule becomes code.
 *
 * <p>May use: {@code rulebook}, {@code rulebook.fact}, {@code rulebook.file}, {@code
 * rulebook.load}, {@code rulebook.read}.
 *
 * <p>Begin with {@link hornbook.rulebook.compile.FolderRules}.
 */
package hornbook.rulebook.compile;
