package hornbook.cli.base;

import java.io.IOException;
import java.io.OutputStream;

/** What writes a result, piece by piece. */
public interface Writing {
  void to(OutputStream out) throws IOException;
}
