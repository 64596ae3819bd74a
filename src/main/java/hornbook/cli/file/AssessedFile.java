package hornbook.cli.file;

import hornbook.advice.Advice;

/** A file and the advice on it. */
public record AssessedFile(String file, Advice advice) {}
