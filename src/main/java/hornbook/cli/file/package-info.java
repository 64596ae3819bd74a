/**
 * Files that commands read and write.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code cli.base}, {@code report}, {@code
 * rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.cli.file.InputFile}.
 */
package hornbook.cli.file;
