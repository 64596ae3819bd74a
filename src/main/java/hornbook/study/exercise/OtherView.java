package hornbook.study.exercise;

import hornbook.assessment.Limb;

/**
 * Where a sensible author would choose otherwise than the rule base.
 *
 * @param technique what that author would do, or null
 * @param support what that author would add, or null
 * @param without a support of the model answer that author would leave out, or null
 * @param vet how soon that author would call the vet, or null
 * @param source the author's work, by its key in the rule base
 */
public record OtherView(
    Limb foot,
    String technique,
    String support,
    String without,
    String vet,
    String source,
    String says) {}
