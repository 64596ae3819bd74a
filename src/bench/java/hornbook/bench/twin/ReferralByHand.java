package hornbook.bench.twin;

import hornbook.rulebook.fact.Urgency;

/** The rules that call the vet. */
final class ReferralByHand {
  private ReferralByHand() {}

  static void look(HandFoot foot) {
    lameness(foot);
    puncture(foot);
    wounds(foot);
    laminitis(foot);
    feverAndColic(foot);
    frogAndSole(foot);
    infection(foot);
    wallDamage(foot);
    lameSinceShoeing(foot);
    tetanus(foot);
    heelPain(foot);
    foalsAndUprightFeet(foot);
    requests(foot);
    weepingWall(foot);
    oneSignOfLaminitis(foot);
    lameWithACrack(foot);
    oneFootOrTwo(foot);
    woundsByPlace(foot);
    alreadyWithTheVet(foot);
  }

  private static void lameness(HandFoot foot) {
    if (foot.satisfies("lameness", "referral.lameness.not-bearing")) {
      foot.refers("R001", Urgency.NOW, "not-bearing-weight");
    }
    if (foot.seen("easeWithPus", "no")) {
      foot.refers("R009", Urgency.NOW, "sudden-ease");
    }
    if (foot.satisfies("lameness", "referral.lameness.marked") && foot.seen("onset", "sudden")) {
      foot.refers("R036", Urgency.TODAY, "lameness");
    }
    if (foot.satisfies("lameness", "referral.lameness.walk")) {
      foot.refers("R037", Urgency.TODAY, "lameness");
    }
    if (foot.satisfies("lameness", "referral.lameness.marked")
        && foot.seen("judgedLameness", "no")) {
      foot.refers("R038", Urgency.DAYS, "lameness");
    }
    if (foot.satisfies("lameness", "referral.lameness.any")
        && foot.satisfies("lameForDays", "referral.lame.days")) {
      foot.refers("R039", Urgency.DAYS, "lameness");
    }
    if (foot.satisfies("lameness", "referral.lameness.plain") && foot.seen("onset", "sudden")) {
      foot.refers("R097", Urgency.DAYS, "lameness");
    }
    if (foot.satisfies("lameness", "referral.lameness.any")) {
      foot.refers("R098", Urgency.MENTION, "lameness");
    }
    if (foot.seen("easeWithPus", "yes")) {
      foot.refers("R119", Urgency.TODAY, "sudden-ease");
    }
  }

  private static void puncture(HandFoot foot) {
    if (foot.seen("objectInPlace", "yes")) {
      foot.refers("R002", Urgency.NOW, "object-in-foot");
    }
    if (foot.seen("puncture", "frog")) {
      foot.refers("R003", Urgency.NOW, "puncture");
    }
    if (foot.seen("puncture", "sole")) {
      foot.refers("R004", Urgency.NOW, "puncture");
    }
    if (foot.seen("clearFluid", "yes")) {
      foot.refers("R005", Urgency.NOW, "joint-fluid");
    }
    if (foot.seen("testerPain", "frog")
        && foot.seen("onset", "sudden")
        && foot.seen("puncture", "none")) {
      foot.refers("R052", Urgency.TODAY, "hidden-puncture");
    }
  }

  private static void wounds(HandFoot foot) {
    if (foot.seen("livingTissue", "exposed")) {
      foot.refers("R006", Urgency.NOW, "living-tissue");
    }
    if (foot.seen("coronetTorn", "yes")) {
      foot.refers("R007", Urgency.NOW, "torn-coronet");
    }
    if (foot.seen("crushed", "yes") && foot.seen("onset", "sudden")) {
      foot.refers("R008", Urgency.NOW, "crushed-foot");
    }
    if (foot.seen("coronetProud", "yes")) {
      foot.refers("R010", Urgency.DAYS, "proud-coronet");
    }
  }

  private static void laminitis(HandFoot foot) {
    if (foot.found("laminitis-suspected")) {
      foot.refers("R025", Urgency.NOW, "acute-laminitis");
    }
    if (foot.seen("coronetGroove", "yes") && foot.seen("birthHoof", "no")) {
      foot.refers("R026", Urgency.NOW, "coronet-groove");
    }
    if (foot.seen("soleBulge", "yes")) {
      foot.refers("R027", Urgency.NOW, "sole-bulge");
    }
    if (foot.satisfies("laminitisGrade", "referral.obel.any")) {
      foot.refers("R029", Urgency.TODAY, "acute-laminitis");
    }
    if (foot.seen("ringsDiverge", "yes")) {
      foot.refers("R030", Urgency.MENTION, "diverging-rings");
    }
    if (foot.seen("soleShape", "dropped")) {
      foot.refers("R031", Urgency.DAYS, "dropped-sole");
    }
    if (foot.misses("palmarAngle", "referral.palmar.least")) {
      foot.refers("R032", Urgency.DAYS, "bone-tilted-back");
    }
    if (foot.satisfies("opposite-lameness", "referral.lameness.walk")
        && foot.satisfies("opposite-lame-days", "referral.other-foot.days")) {
      foot.refers("R034", Urgency.DAYS, "supporting-foot");
    }
    if (foot.seen("ringsDiverge", "yes") && foot.satisfies("lameness", "referral.lameness.any")) {
      foot.refers("R125", Urgency.DAYS, "diverging-rings");
    }
    if (foot.seen("ringsDiverge", "yes")
        && foot.satisfies("bodyCondition", "referral.condition.fat")) {
      foot.refers("R126", Urgency.DAYS, "diverging-rings");
    }
  }

  private static void feverAndColic(HandFoot foot) {
    if (foot.seen("colicSigns", "yes")) {
      foot.refers("R028", Urgency.NOW, "colic");
    }
    if (foot.satisfies("bodyTemperature", "referral.fever")
        && foot.satisfies("lameness", "referral.lameness.any")) {
      foot.refers("R044", Urgency.TODAY, "fever");
    }
    if (foot.satisfies("bodyTemperature", "referral.fever")
        && foot.seen("drainage", "sole", "white-line", "coronet", "crack")) {
      foot.refers("R049", Urgency.NOW, "fever");
    }
    if (foot.satisfies("lameness", "referral.lameness.any") && foot.seen("unwell", "yes")) {
      foot.refers("R080", Urgency.TODAY, "unwell-and-lame");
    }
    if (foot.satisfies("bodyTemperature", "referral.fever") && foot.seen("lamenessSeen", "no")) {
      foot.refers("R115", Urgency.TODAY, "fever");
    }
    if (foot.satisfies("bodyTemperature", "referral.fever")
        && foot.misses("lameness", "referral.lameness.any")) {
      foot.refers("R127", Urgency.TODAY, "fever");
    }
    if (foot.seen("species", "donkey") && foot.seen("unwell", "yes")) {
      foot.refers("R128", Urgency.TODAY, "dull-donkey");
    }
  }

  private static void frogAndSole(HandFoot foot) {
    if (foot.misses("soleDepth", "referral.sole.least")) {
      foot.refers("R033", Urgency.DAYS, "thin-sole");
    }
    if (foot.seen("frogState", "bleeding-growth")) {
      foot.refers("R050", Urgency.DAYS, "frog-growth");
    }
    if (foot.satisfies("lameness", "referral.lameness.any")
        && foot.seen("frogState", "deep-thrush")) {
      foot.refers("R051", Urgency.DAYS, "deep-thrush");
    }
    if (foot.satisfies("lameness", "referral.lameness.any") && foot.seen("frogState", "wasted")) {
      foot.refers("R087", Urgency.DAYS, "wasted-frog");
    }
    if (foot.seen("frogState", "bleeding-growth")
        && foot.seen("pairFrogState", "bleeding-growth")) {
      foot.refers("R088", Urgency.TODAY, "frog-growth");
    }
  }

  private static void infection(HandFoot foot) {
    if (foot.seen("drainage", "coronet")) {
      foot.refers("R040", Urgency.TODAY, "pus-in-foot");
    }
    if (foot.seen("drainage", "sole", "white-line")) {
      foot.refers("R041", Urgency.TODAY, "pus-in-foot");
    }
    if (foot.seen("swelling", "above-fetlock")) {
      foot.refers("R042", Urgency.TODAY, "spreading-swelling");
    }
    if (foot.satisfies("lameness", "referral.lameness.marked")
        && foot.seen("swelling", "above-fetlock")) {
      foot.refers("R043", Urgency.NOW, "spreading-swelling");
    }
    if (foot.satisfies("abscessesSameSpot", "referral.abscess.repeat")) {
      foot.refers("R053", Urgency.DAYS, "repeated-abscess");
    }
  }

  private static void wallDamage(HandFoot foot) {
    if (foot.seen("whiteLineBulge", "yes")) {
      foot.refers("R054", Urgency.DAYS, "white-line-bulge");
    }
    if (foot.crack(row -> HandFoot.is(row.bleeds(), "yes"))) {
      foot.refers("R055", Urgency.TODAY, "deep-crack");
    }
    if (foot.crack(row -> HandFoot.is(row.moves(), "yes")) && foot.seen("judgedCrack", "no")) {
      foot.refers("R056", Urgency.DAYS, "deep-crack");
    }
    if (foot.satisfies("lameness", "referral.lameness.plain")
        && foot.stretch(row -> HandFoot.is(row.state(), "separated"))) {
      foot.refers("R057", Urgency.DAYS, "separated-wall-and-lame");
    }
    if (foot.misses("tall-loss-share", "referral.edge.lost") && foot.seen("judgedWallLoss", "no")) {
      foot.refers("R058", Urgency.DAYS, "large-wall-loss");
    }
    if (foot.found("active-white-line-disease")
        && foot.satisfies("lameness", "referral.lameness.any")) {
      foot.refers("R099", Urgency.DAYS, "separated-wall-and-lame");
    }
    if (foot.crack(row -> HandFoot.is(row.depth(), "deep")) && foot.seen("judgedCrack", "no")) {
      foot.refers("R116", Urgency.DAYS, "deep-crack");
    }
  }

  private static void lameSinceShoeing(HandFoot foot) {
    if (foot.satisfies("lameness", "referral.lameness.any")
        && foot.seen("presentShoe", "heart-bar")) {
      foot.refers("R129", Urgency.DAYS, "lame-in-heart-bar");
    }
    if (foot.satisfies("shodDaysAgo", "referral.nail.days")
        && foot.seen("lameSinceShod", "yes")
        && foot.seen("testerPain", "nail")) {
      foot.refers("R059", Urgency.DAYS, "nail-in-the-quick");
    }
    if (foot.satisfies("shodDaysAgo", "referral.nail.days") && foot.seen("lameSinceShod", "yes")) {
      foot.refers("R060", Urgency.DAYS, "nail-in-the-quick");
    }
    if (foot.seen("lameSinceShod", "yes") && foot.seen("bloodAtNail", "yes")) {
      foot.refers("R061", Urgency.TODAY, "nail-in-the-quick");
    }
    if (foot.seen("lameSinceShod", "yes")
        && foot.seen("drainage", "white-line", "sole", "coronet", "crack")) {
      foot.refers("R062", Urgency.TODAY, "nail-in-the-quick");
    }
    if (foot.seen("bloodAtNail", "yes")) {
      foot.refers("R063", Urgency.MENTION, "nail-in-the-quick");
    }
    if (foot.seen("testerPain", "nail")) {
      foot.refers("R102", Urgency.MENTION, "nail-in-the-quick");
    }
  }

  private static void tetanus(HandFoot foot) {
    if (foot.seen("tetanusCover", "lapsed")) {
      foot.refers("R064", Urgency.MENTION, "tetanus");
    }
    if (foot.seen("tetanusCover", "lapsed")
        && foot.seen("drainage", "sole", "white-line", "coronet", "crack")) {
      foot.refers("R065", Urgency.TODAY, "tetanus");
    }
    if (foot.seen("tetanusCover", "lapsed") && foot.seen("bloodAtNail", "yes")) {
      foot.refers("R066", Urgency.TODAY, "tetanus");
    }
    if (foot.seen("tetanusCover", "lapsed") && foot.seen("livingTissue", "exposed")) {
      foot.refers("R067", Urgency.TODAY, "tetanus");
    }
    if (foot.seen("tetanusCover", "lapsed")
        && foot.seen("puncture", "sole", "frog", "heel-bulb", "pastern")) {
      foot.refers("R090", Urgency.TODAY, "tetanus");
    }
  }

  private static void heelPain(HandFoot foot) {
    if (foot.satisfies("lameness", "referral.lameness.any") && foot.seen("cartilages", "hard")) {
      foot.refers("R068", Urgency.DAYS, "hard-cartilages");
    }
    if (foot.satisfies("lameness", "referral.lameness.any") && foot.seen("stain", "corn-seat")) {
      foot.refers("R069", Urgency.DAYS, "corn");
    }
    if (foot.seen("landing", "toe-first") && foot.seen("testerPain", "heel", "frog")) {
      foot.refers("R070", Urgency.DAYS, "heel-pain");
    }
    if (foot.satisfies("lameness", "referral.lameness.any") && foot.seen("oldShoeWear", "toe")) {
      foot.refers("R071", Urgency.DAYS, "toe-worn-shoe");
    }
    if (foot.satisfies("lameness", "referral.lameness.any") && foot.seen("swelling", "pastern")) {
      foot.refers("R072", Urgency.DAYS, "pastern-swelling");
    }
    if (foot.seen("testerPain", "heel", "frog")) {
      foot.refers("R100", Urgency.MENTION, "heel-pain");
    }
    if (foot.seen("testerPain", "toe", "side", "quarter", "sole")) {
      foot.refers("R101", Urgency.MENTION, "sore-place");
    }
  }

  private static void foalsAndUprightFeet(HandFoot foot) {
    if (foot.satisfies("age-days", "referral.foal.fetlock-window")
        && foot.seen("deformity", "angular")
        && foot.seen("judgedYoungLimb", "no")) {
      foot.refers("R073", Urgency.DAYS, "young-limb");
    }
    if (foot.satisfies("age-days", "referral.young.growing")
        && foot.seen("deformity", "angular")
        && foot.seen("judgedYoungLimb", "no")) {
      foot.refers("R074", Urgency.DAYS, "young-limb");
    }
    if (foot.satisfies("age-days", "referral.foal.newborn") && foot.seen("deformity", "flexural")) {
      foot.refers("R075", Urgency.TODAY, "young-limb");
    }
    if (foot.satisfies("age-days", "referral.young.growing")
        && foot.seen("deformity", "flexural")
        && foot.seen("judgedYoungLimb", "no")) {
      foot.refers("R076", Urgency.DAYS, "young-limb");
    }
    if (foot.satisfies("age-days", "referral.foal.joint-ill")
        && foot.satisfies("lameness", "referral.lameness.any")
        && foot.seen("unwell", "yes")) {
      foot.refers("R078", Urgency.NOW, "lame-foal");
    }
    if (foot.satisfies("age-days", "referral.foal.joint-ill")
        && foot.satisfies("lameness", "referral.lameness.any")) {
      foot.refers("R079", Urgency.TODAY, "lame-foal");
    }
    if (foot.misses("toeAngle", "referral.upright.most")) {
      foot.refers("R089", Urgency.DAYS, "upright-hoof");
    }
    if (foot.seen("coronetGroove", "yes") && foot.seen("birthHoof", "yes")) {
      foot.refers("R117", Urgency.MENTION, "coronet-groove");
    }
    if (foot.satisfies("age-days", "referral.foal.joint-ill")
        && foot.satisfies("lameness", "referral.lameness.any")
        && foot.seen("swelling", "pastern", "above-fetlock")) {
      foot.refers("R118", Urgency.NOW, "lame-foal");
    }
  }

  private static void requests(HandFoot foot) {
    if (foot.seen("askedFor", "drugs")) {
      foot.refers("R081", Urgency.MENTION, "drugs");
    }
    if (foot.seen("askedFor", "sedation")) {
      foot.refers("R082", Urgency.MENTION, "sedation");
    }
    if (foot.seen("askedFor", "cutting-to-blood")) {
      foot.refers("R083", Urgency.MENTION, "cutting-to-blood");
    }
    if (foot.seen("askedFor", "diagnosis")) {
      foot.refers("R084", Urgency.MENTION, "diagnosis");
    }
    if (foot.seen("askedFor", "fit-to-work-opinion")) {
      foot.refers("R085", Urgency.MENTION, "fitness-to-work");
    }
    if (foot.seen("vet", "directing")) {
      foot.refers("R086", Urgency.MENTION, "vet-directs");
    }
    if (foot.seen("handling", "dangerous")) {
      foot.refers("R103", Urgency.MENTION, "dangerous-horse");
    }
    if (foot.seen(
        "diagnosis",
        "laminitis",
        "fracture",
        "heel-pain",
        "white-line-disease",
        "keratoma",
        "other")) {
      foot.refers("R123", Urgency.MENTION, "diagnosed");
    }
    if (foot.seen("diagnosis", "abscess")) {
      foot.refers("R124", Urgency.MENTION, "diagnosed");
    }
  }

  private static void weepingWall(HandFoot foot) {
    if (foot.stretch(
        row ->
            HandFoot.is(
                    row.state(),
                    "sound",
                    "flared",
                    "cracked",
                    "broken-away",
                    "resected",
                    "repaired")
                && HandFoot.is(row.moist(), "yes"))) {
      foot.refers("R091", Urgency.DAYS, "weeping-wall");
    }
    if (foot.seen("drainage", "crack")) {
      foot.refers("R120", Urgency.TODAY, "pus-in-foot");
    }
    if (foot.crack(row -> HandFoot.is(row.seeps(), "yes"))) {
      foot.refers("R121", Urgency.DAYS, "weeping-wall");
    }
  }

  private static void oneSignOfLaminitis(HandFoot foot) {
    if (foot.seen("digitalPulse", "bounding")) {
      foot.refers("R092", Urgency.TODAY, "acute-laminitis");
    }
    if (foot.seen("unwillingToMove", "yes") && foot.seen("shiftsWeight", "yes")) {
      foot.refers("R093", Urgency.TODAY, "acute-laminitis");
    }
    if (foot.seen("digitalPulse", "raised") && foot.seen("unwillingToMove", "yes")) {
      foot.refers("R094", Urgency.TODAY, "acute-laminitis");
    }
  }

  private static void lameWithACrack(HandFoot foot) {
    if (foot.satisfies("lameness", "referral.lameness.plain")
        && foot.crack(row -> HandFoot.is(row.depth(), "deep"))) {
      foot.refers("R095", Urgency.DAYS, "deep-crack");
    }
    if (foot.satisfies("lameness", "referral.lameness.plain")
        && foot.crack(
            row ->
                HandFoot.is(row.place(), "quarter")
                    && HandFoot.is(row.starts(), "coronet", "full"))) {
      foot.refers("R096", Urgency.DAYS, "deep-crack");
    }
  }

  private static void oneFootOrTwo(HandFoot foot) {
    if (foot.seen("hoofHeat", "yes")
        && foot.seen("digitalPulse", "bounding")
        && foot.seen("pairQuiet", "yes")
        && foot.seen("unwillingToMove", "no")
        && foot.seen("shiftsWeight", "no")) {
      foot.refers("R104", Urgency.NOW, "acute-laminitis");
    }
    if (foot.seen("digitalPulse", "bounding") && foot.seen("pairQuiet", "yes")) {
      foot.refers("R105", Urgency.TODAY, "acute-laminitis");
    }
    if (foot.seen("hoofHeat", "yes") && foot.seen("digitalPulse", "raised")) {
      foot.refers("R106", Urgency.TODAY, "acute-laminitis");
    }
    if (foot.seen("digitalPulse", "raised", "bounding") && foot.seen("testerPain", "toe", "sole")) {
      foot.refers("R107", Urgency.TODAY, "sore-place");
    }
  }

  private static void woundsByPlace(HandFoot foot) {
    if (foot.seen("puncture", "heel-bulb")) {
      foot.refers("R111", Urgency.TODAY, "wound-by-a-joint");
    }
    if (foot.seen("puncture", "heel-bulb")
        && foot.satisfies("woundHours", "referral.wound.fresh")) {
      foot.refers("R112", Urgency.NOW, "wound-by-a-joint");
    }
    if (foot.seen("puncture", "heel-bulb") && foot.satisfies("lameness", "referral.lameness.any")) {
      foot.refers("R113", Urgency.NOW, "wound-by-a-joint");
    }
    if (foot.seen("puncture", "pastern")) {
      foot.refers("R114", Urgency.TODAY, "wound-by-a-joint");
    }
  }

  private static void alreadyWithTheVet(HandFoot foot) {
    if (foot.crack(row -> HandFoot.is(row.depth(), "deep")) && foot.seen("judgedCrack", "yes")) {
      foot.refers("R130", Urgency.MENTION, "deep-crack");
    }
    if (foot.crack(row -> HandFoot.is(row.moves(), "yes")) && foot.seen("judgedCrack", "yes")) {
      foot.refers("R131", Urgency.MENTION, "deep-crack");
    }
    if (foot.misses("tall-loss-share", "referral.edge.lost")
        && foot.seen("judgedWallLoss", "yes")) {
      foot.refers("R132", Urgency.MENTION, "large-wall-loss");
    }
    if (foot.seen("deformity", "angular", "flexural")
        && foot.satisfies("age-days", "referral.young.growing")
        && foot.seen("judgedYoungLimb", "yes")) {
      foot.refers("R133", Urgency.MENTION, "young-limb");
    }
    if (foot.satisfies("lameness", "referral.lameness.marked")
        && foot.seen("judgedLameness", "yes")) {
      foot.refers("R134", Urgency.MENTION, "lameness");
    }
  }
}
