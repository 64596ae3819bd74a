/**
 * The commands of the daybook.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code cli.base}, {@code cli.file}, {@code
 * cli.option}, {@code plan}, {@code record}, {@code report}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.cli.record.RecordCommand}.
 */
package hornbook.cli.record;
