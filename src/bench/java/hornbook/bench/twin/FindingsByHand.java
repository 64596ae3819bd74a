package hornbook.bench.twin;

/** What nailing and calling the vet build on; a finding stands behind those it rests on. */
final class FindingsByHand {
  private FindingsByHand() {}

  static void look(HandFoot foot) {
    findings(foot);
  }

  private static void findings(HandFoot foot) {
    if (foot.satisfies("nail-sites-weaker-branch", "nails.branch.least")) {
      foot.finds("N001", "nailable");
    }
    if (foot.misses("nail-sites-weaker-branch", "nails.branch.least")) {
      foot.finds("N002", "not-nailable");
    }
    if (foot.seen("work", "sport", "racing", "draught")) {
      foot.finds("U001", "shoe-needed");
    }
    if (foot.seen("work", "light") && foot.seen("shoeing", "nailed", "glued", "wrapped")) {
      foot.finds("U002", "shoe-needed");
    }
    if (foot.seen("work", "light") && foot.seen("lostShoe", "yes")) {
      foot.finds("U025", "shoe-needed");
    }
    if (foot.seen("soleShape", "flat", "dropped") && foot.seen("testerPain", "sole")) {
      foot.finds("U009", "tender-sole");
    }
    if (foot.misses("missing-share", "wall.missing.most")) {
      foot.finds("U007", "wall-lost");
    }
    if (foot.misses("separated-share", "wall.separated.most")) {
      foot.finds("U008", "wall-separated");
    }
    if (foot.misses("thinnest-sound-wall", "nails.wall.least")) {
      foot.finds("N016", "wall-too-thin");
    }
    if (foot.seen("testerPain", "nail")) {
      foot.finds("N024", "shoe-waits");
    }
    if (foot.seen("bloodAtNail", "yes")) {
      foot.finds("N025", "shoe-waits");
    }
    if (foot.seen("lameSinceShod", "yes") && foot.satisfies("shodDaysAgo", "referral.nail.days")) {
      foot.finds("N026", "shoe-waits");
    }
    if (foot.seen("hoofHeat", "yes") && foot.seen("digitalPulse", "bounding")) {
      foot.finds("R011", "laminitis-suspected");
    }
    if (foot.seen("hoofHeat", "yes") && foot.seen("unwillingToMove", "yes")) {
      foot.finds("R012", "laminitis-suspected");
    }
    if (foot.seen("digitalPulse", "bounding") && foot.seen("unwillingToMove", "yes")) {
      foot.finds("R013", "laminitis-suspected");
    }
    if (foot.satisfies("laminitisGrade", "referral.obel.any") && foot.seen("hoofHeat", "yes")) {
      foot.finds("R014", "laminitis-suspected");
    }
    if (foot.satisfies("laminitisGrade", "referral.obel.any")
        && foot.seen("digitalPulse", "bounding")) {
      foot.finds("R015", "laminitis-suspected");
    }
    if (foot.seen("shiftsWeight", "yes") && foot.seen("digitalPulse", "raised", "bounding")) {
      foot.finds("R016", "laminitis-suspected");
    }
    if (foot.seen("shiftsWeight", "yes") && foot.seen("hoofHeat", "yes")) {
      foot.finds("R017", "laminitis-suspected");
    }
    if (foot.satisfies("lameness", "referral.lameness.any")
        && foot.seen("oldShoeWear", "heels")
        && foot.seen("digitalPulse", "raised", "bounding")) {
      foot.finds("R018", "laminitis-suspected");
    }
    if (foot.satisfies("lameness", "referral.lameness.marked")
        && foot.seen("landing", "heel-first")) {
      foot.finds("R019", "laminitis-suspected");
    }
    if (foot.satisfies("lameness", "referral.lameness.plain") && foot.seen("ringsDiverge", "yes")) {
      foot.finds("R020", "laminitis-suspected");
    }
    if (foot.satisfies("laminitisGrade", "referral.obel.stilted")) {
      foot.finds("R021", "laminitis-suspected");
    }
    if (foot.satisfies("lameness", "referral.lameness.plain")
        && foot.satisfies("opposite-lameness", "referral.lameness.plain")
        && foot.seen("onset", "sudden")) {
      foot.finds("R022", "laminitis-suspected");
    }
    if (foot.satisfies("bodyCondition", "referral.condition.fat")
        && foot.satisfies("lameness", "referral.lameness.marked")
        && foot.seen("onset", "sudden")) {
      foot.finds("R023", "laminitis-suspected");
    }
    if (foot.satisfies("lameness", "referral.lameness.any") && foot.seen("colicSigns", "yes")) {
      foot.finds("R024", "laminitis-suspected");
    }
    if (foot.seen("digitalPulse", "bounding") && foot.seen("otherHeat", "yes")) {
      foot.finds("R108", "laminitis-suspected");
    }
    if (foot.seen("hoofHeat", "yes") && foot.seen("otherPulse", "bounding")) {
      foot.finds("R109", "laminitis-suspected");
    }
    if (foot.satisfies("laminitisGrade", "referral.obel.any")
        && foot.seen("unwillingToMove", "yes")) {
      foot.finds("R110", "laminitis-suspected");
    }
    if (foot.seen("age", "foal")) {
      foot.finds("U005", "foal");
    }
    if (foot.misses("soleDepth", "sole.depth.least")) {
      foot.finds("U010", "thin-sole");
    }
    if (foot.misses("longest-defect", "prosthetic.length.most")
        && foot.misses("tallest-defect", "prosthetic.height.most")) {
      foot.finds("P001", "loss-in-the-way");
    }
    if (foot.satisfies("lameness", "referral.lameness.any")) {
      foot.finds("R035", "lame");
    }
    if (foot.seen("drainage", "sole", "white-line", "coronet", "crack")) {
      foot.finds("R045", "infection-present");
    }
    if (foot.seen("puncture", "sole", "frog")) {
      foot.finds("R046", "infection-present");
    }
    if (foot.seen("frogState", "deep-thrush")) {
      foot.finds("R047", "infection-present");
    }
    if (foot.satisfies("abscessesSameSpot", "referral.abscess.repeat")) {
      foot.finds("R048", "infection-present");
    }
    if (foot.stretch(
        row ->
            HandFoot.is(row.state(), "separated", "crumbling")
                && HandFoot.is(row.moist(), "yes"))) {
      foot.finds("O001", "active-white-line-disease");
    }
    if (foot.stretch(row -> HandFoot.is(row.state(), "separated"))
        && foot.stretch(row -> HandFoot.is(row.state(), "crumbling"))) {
      foot.finds("O002", "active-white-line-disease");
    }
    if (foot.stretch(
        row -> HandFoot.is(row.state(), "separated") && HandFoot.is(row.mealy(), "yes"))) {
      foot.finds("O031", "active-white-line-disease");
    }
  }
}
