package hornbook.bench.twin;

import hornbook.rulebook.fact.Bearing;

/** The rules on nails. */
final class NailingByHand {
  private NailingByHand() {}

  static void look(HandFoot foot) {
    count(foot);
    thinWallAndSole(foot);
    lostAndSeparatedWall(foot);
    prickedFoot(foot);
    laminitisPusAndFoals(foot);
    clenchesAndHandling(foot);
  }

  private static void count(HandFoot foot) {
    if (foot.misses("nail-sites-weaker-branch", "nails.branch.least")) {
      foot.reason("N003", Bearing.RULES_OUT, "nail-on");
    }
    if (foot.misses("nail-sites-weaker-branch-if-behind", "nails.branch.least")) {
      foot.reason("N004", Bearing.RULES_OUT, "nail-on-adapted");
    }
    if (foot.misses("nail-sites-weaker-branch", "nails.branch.least")
        && foot.satisfies("nail-sites-weaker-branch-if-behind", "nails.branch.least")) {
      foot.reason("N005", Bearing.AGAINST, "nail-on-adapted");
    }
    if (foot.found("shoe-needed") && foot.found("nailable")) {
      foot.reason("N006", Bearing.FOR, "nail-on");
    }
    if (foot.misses("nail-sites-weaker-branch", "nails.branch.usual")
        && foot.satisfies("width", "nails.small-foot.width")) {
      foot.reason("N007", Bearing.AGAINST, "nail-on");
    }
    if (foot.seen("work", "draught")
        && foot.satisfies("body-weight", "nails.draught.weight")
        && foot.misses("nail-sites-both", "nails.draught.usual")) {
      foot.reason("N008", Bearing.AGAINST, "nail-on", "nail-on-adapted");
    }
    if (foot.found("shoe-needed")
        && foot.found("nailable")
        && foot.misses("nail-sites-weaker-branch", "nails.branch.usual")) {
      foot.reason("N009", Bearing.FOR, "clips");
    }
  }

  private static void thinWallAndSole(HandFoot foot) {
    if (foot.found("tender-sole") && foot.found("nailable")) {
      foot.reason("N010", Bearing.FOR, "nail-on", "nail-on-adapted");
    }
    if (foot.found("wall-too-thin") && foot.found("nailable")) {
      foot.reason("N014", Bearing.FOR, "nail-on-adapted");
    }
    if (foot.found("wall-too-thin")) {
      foot.reason("N017", Bearing.AGAINST, "nail-on");
    }
    if (foot.found("thin-sole")) {
      foot.reason("N035", Bearing.AGAINST, "nail-on", "nail-on-adapted");
    }
  }

  private static void lostAndSeparatedWall(HandFoot foot) {
    if (foot.found("wall-lost")
        && foot.satisfies("nail-sites-weaker-branch", "nails.branch.least")) {
      foot.reason("N011", Bearing.FOR, "nail-on-adapted");
    }
    if (foot.found("wall-separated") && foot.found("nailable")) {
      foot.reason("N012", Bearing.FOR, "nail-on-adapted");
    }
    if (foot.found("shoe-needed") && foot.found("nailable")) {
      foot.reason("N013", Bearing.FOR, "nail-on-adapted");
    }
    if (foot.misses("tall-loss-share", "referral.edge.lost")) {
      foot.reason("N015", Bearing.AGAINST, "nail-on", "nail-on-adapted");
    }
    if (foot.found("wall-lost")) {
      foot.reason("N018", Bearing.AGAINST, "nail-on");
    }
    if (foot.found("wall-separated")) {
      foot.reason("N019", Bearing.AGAINST, "nail-on");
    }
    if (foot.stretch(row -> HandFoot.is(row.state(), "crumbling"))) {
      foot.reason("N020", Bearing.AGAINST, "nail-on");
    }
    if (foot.found("loss-in-the-way")
        && foot.misses("nail-sites-weaker-branch", "nails.branch.usual")) {
      foot.reason("N036", Bearing.AGAINST, "nail-on", "nail-on-adapted");
    }
    if (foot.found("wall-lost")
        && foot.found("not-nailable")
        && foot.satisfies("nail-sites-weaker-branch-if-behind", "nails.branch.least")) {
      foot.reason("N037", Bearing.FOR, "nail-on-adapted");
    }
    if (foot.found("wall-lost") && foot.seen("studs", "yes")) {
      foot.caution("N038", "studs");
    }
  }

  private static void prickedFoot(HandFoot foot) {
    if (foot.seen("testerPain", "nail")) {
      foot.reason("N021", Bearing.RULES_OUT, "nail-on", "nail-on-adapted");
    }
    if (foot.seen("bloodAtNail", "yes")) {
      foot.reason("N022", Bearing.RULES_OUT, "nail-on", "nail-on-adapted");
    }
    if (foot.seen("lameSinceShod", "yes") && foot.satisfies("shodDaysAgo", "referral.nail.days")) {
      foot.reason("N023", Bearing.RULES_OUT, "nail-on", "nail-on-adapted");
    }
  }

  private static void laminitisPusAndFoals(HandFoot foot) {
    if (foot.satisfies("laminitisGrade", "referral.obel.any")) {
      foot.reason("N027", Bearing.RULES_OUT, "nail-on", "nail-on-adapted");
    }
    if (foot.found("laminitis-suspected")) {
      foot.reason("N028", Bearing.RULES_OUT, "nail-on", "nail-on-adapted");
    }
    if (foot.seen("drainage", "white-line", "sole", "coronet", "crack")) {
      foot.reason("N029", Bearing.NEEDS_VET, "nail-on", "nail-on-adapted");
    }
    if (foot.found("foal")) {
      foot.reason("N030", Bearing.RULES_OUT, "nail-on", "nail-on-adapted");
    }
  }

  private static void clenchesAndHandling(HandFoot foot) {
    if (foot.seen("handling", "restless")) {
      foot.reason("N031", Bearing.AGAINST, "nail-on", "nail-on-adapted");
    }
    if (foot.misses("nailExitHeight", "nails.exit.most")) {
      foot.reason("N032", Bearing.NEEDS, "nail-on", "nail-on-adapted");
    }
    if (foot.misses("nailExitHeight", "nails.exit.least")) {
      foot.reason("N033", Bearing.NEEDS, "nail-on", "nail-on-adapted");
    }
    if (foot.crack(row -> HandFoot.is(row.place(), "toe", "side", "quarter"))) {
      foot.reason("N034", Bearing.NEEDS, "nail-on", "nail-on-adapted");
    }
  }
}
