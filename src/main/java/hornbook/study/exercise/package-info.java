/**
 * The teaching cases and what learners answer: reading and checking of both, the model answer,
 * blank sheets. May use all that {@code study} may. Begin reading at {@code Exercise}.
 */
package hornbook.study.exercise;
