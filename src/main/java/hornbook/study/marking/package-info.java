/**
 * Marks for answers, by a scheme that is data, and what the marks of a class tell. May use {@code
 * study.critique} and all below it. Begin reading at {@code Marker}.
 */
package hornbook.study.marking;
