package flankfit.solid;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Numbers to a stream, lowest byte first; {@link #flush} ends it. */
final class LittleEndian {
  private static final int SIZE = 1 << 16;

  private final OutputStream out;
  private final ByteBuffer buffer = ByteBuffer.allocate(SIZE).order(ByteOrder.LITTLE_ENDIAN);

  LittleEndian(OutputStream out) {
    this.out = out;
  }

  void putFloat(float value) throws IOException {
    room(4);
    buffer.putFloat(value);
  }

  void putInt(int value) throws IOException {
    room(4);
    buffer.putInt(value);
  }

  void putShort(int value) throws IOException {
    room(2);
    buffer.putShort((short) value);
  }

  void putBytes(byte[] bytes) throws IOException {
    for (byte b : bytes) {
      room(1);
      buffer.put(b);
    }
  }

  private void room(int bytes) throws IOException {
    if (buffer.remaining() < bytes) {
      empty();
    }
  }

  private void empty() throws IOException {
    out.write(buffer.array(), 0, buffer.position());
    buffer.clear();
  }

  /** Hands everything on. */
  void flush() throws IOException {
    empty();
    out.flush();
  }
}
