package hornbook.cli.base;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Where a result goes, telling what cannot be written from what cannot be made. */
final class Outlet extends FilterOutputStream {
  /** It could not be written. */
  static final class Unwritten extends IOException {
    private static final long serialVersionUID = 1L;

    private Unwritten(IOException cause) {
      super(cause.getMessage(), cause);
    }
  }

  Outlet(OutputStream to) {
    super(to);
  }

  @Override
  public void write(int one) throws IOException {
    try {
      out.write(one);
    } catch (IOException unwritten) {
      throw new Unwritten(unwritten);
    }
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    try {
      out.write(bytes, from, length);
    } catch (IOException unwritten) {
      throw new Unwritten(unwritten);
    }
  }

  @Override
  public void flush() throws IOException {
    try {
      out.flush();
    } catch (IOException unwritten) {
      throw new Unwritten(unwritten);
    }
  }
}
