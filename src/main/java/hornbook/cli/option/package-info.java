/**
 * Options that several commands share.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code cli.base}, {@code cli.file}, {@code plan},
 * {@code report}, {@code rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.cli.option.OneAssessment}.
 */
package hornbook.cli.option;
