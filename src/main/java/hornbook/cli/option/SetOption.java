package hornbook.cli.option;

import hornbook.assessment.read.Setting;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import java.util.List;

/** Fields changed for this run alone. */
public final class SetOption {
  private final ArgumentValue<List<String>> written;

  public SetOption(Arguments arguments) {
    written =
        arguments.texts(
            "PATH=VALUE",
            "change one field for this run, such as feet[left-fore].signs.hoofHeat=true; the value"
                + " unknown takes it out; may be repeated",
            "--set");
  }

  public List<Setting> settings() {
    return written.value().stream().map(Setting::parse).toList();
  }
}
