package hornbook.cli;

import hornbook.assessment.Setting;
import java.util.List;

/** Fields changed for this run alone. */
final class SetOption {
  private final Value<List<String>> written;

  SetOption(Arguments arguments) {
    written =
        arguments.texts(
            "PATH=VALUE",
            "change one field for this run; unknown takes it out; may be given again; such as%n"
                + "feet[left-fore].signs.hoofHeat=true",
            "--set");
  }

  List<Setting> settings() {
    return written.value().stream().map(Setting::parse).toList();
  }
}
