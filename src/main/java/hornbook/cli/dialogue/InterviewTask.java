package hornbook.cli.dialogue;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.quantity.Units;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Surroundings;
import hornbook.interview.AnswerOutcome;
import hornbook.interview.Interview;
import hornbook.interview.InterviewQuestion;
import hornbook.report.advice.QuestionText;
import hornbook.rulebook.load.LoadedRules;
import java.time.LocalDate;
import java.util.List;

/** The dialogue of {@code new --ask}: asks, takes answers, and saves after every one. */
public final class InterviewTask {
  private final Surroundings surroundings;
  private final InterviewFile file;
  private final Interview interview;
  private final QuestionText text;

  public InterviewTask(
      Surroundings surroundings,
      LoadedRules rules,
      Assessment known,
      List<Limb> feet,
      InterviewFile file,
      Units units,
      LocalDate today) {
    Advisor advisor = new Advisor(rules);
    this.surroundings = surroundings;
    this.file = file;
    this.interview = new Interview(advisor, known, feet, units, today);
    this.text = new QuestionText(advisor.book(), units);
  }

  public ExitCode run() {
    if (interview.named()) {
      file.save(interview.known());
    }
    say(text.greeting());
    try (AnswerLines lines = AnswerLines.of(surroundings)) {
      while (interview.ask().isPresent() && put(interview.ask().get(), lines)) {
        continue;
      }
    }
    end();
    return ExitCode.DONE;
  }

  /** Puts one question until it is answered; false when the user has had enough. */
  private boolean put(InterviewQuestion ask, AnswerLines lines) {
    say(text.question(ask, interview.known()));
    while (true) {
      String line = lines.next();
      AnswerOutcome reply = line == null ? new AnswerOutcome.Stop() : interview.take(line);
      if (reply instanceof AnswerOutcome.Stop) {
        return false;
      }
      if (reply instanceof AnswerOutcome.Taken) {
        file.save(interview.known());
        return true;
      }
      if (reply instanceof AnswerOutcome.Back back && back.moved()) {
        return true;
      }
      say(told(reply, ask));
    }
  }

  private String told(AnswerOutcome reply, InterviewQuestion ask) {
    if (reply instanceof AnswerOutcome.Refused refused) {
      return text.refused(refused);
    }
    return reply instanceof AnswerOutcome.Help
        ? text.help(ask, interview.left())
        : "  There is no question before this one.\n";
  }

  private void end() {
    if (!interview.named()) {
      say("\nNothing was written: name the foot first.\n");
      return;
    }
    file.show(interview.known());
    boolean done = interview.ask().isEmpty();
    int unanswered = done ? interview.unanswered() : interview.left();
    if (done && unanswered == 0) {
      say("\nNothing left can change the advice.\n");
    } else {
      String ended =
          done ? "Nothing else to ask. Of the parts not looked at, " : "Every answer is saved. ";
      say("\n" + ended + text.left(unanswered) + "\n");
    }
    if (!file.toScreen()) {
      say("Written to " + file.name() + "\n");
      say("Advice on it:  hornbook assess " + file.name() + "\n");
      if (!done || unanswered > 0) {
        say("To continue:   hornbook new --ask " + file.name() + "\n");
      }
    }
  }

  private void say(String words) {
    surroundings.err().print(words);
    surroundings.err().flush();
  }
}
