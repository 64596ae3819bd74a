package hornbook.cli;

import hornbook.assessment.Setting;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Fields changed for this run alone. */
final class SetOption {
  @Option(
      names = "--set",
      paramLabel = "PATH=VALUE",
      description =
          "change one field for this run; may be given again."
              + " Such as feet[left-fore].signs.digitalPulse=bounding;"
              + " the value unknown takes a field out")
  private List<String> written = new ArrayList<>();

  List<Setting> settings() {
    return written.stream().map(Setting::parse).toList();
  }
}
