package hornbook.advice;

import java.util.List;

/** A technique or a support with its verdict and the reasons for it. */
public record OptionAdvice(String id, Verdict verdict, List<ReasonGiven> reasons) {}
