/**
 * What was not looked at, and what it could still change.
 *
 * <p>A rule that only the unknown keeps silent leaves its unseen fields open. What such a field is
 * worth is what that rule could still change, given everything that may yet be found on the foot
 * ({@code PossibleOutcomes}, {@code PossibleChange}); no answer is tried out, so every advice can
 * carry its questions. The order of {@code QuestionValue}, highest first: a referral; another first
 * choice or the verdict on another technique or support; a caution or something to put right; one
 * more reason, which is never asked. Of equal value comes first what needs no other answer beside
 * it, then the order of the table of fields. A question too many may be asked, none too few.
 *
 * <p>May use: {@code advice}, {@code advice.condition}, {@code advice.fact}, {@code assessment},
 * {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.advice.question.Questions}.
 */
package hornbook.advice.question;
