package hornbook.cli;

import hornbook.advice.Advice;

/** A file and the advice on it. */
record Assessed(String file, Advice advice) {}
