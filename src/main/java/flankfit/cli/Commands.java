package flankfit.cli;

import java.lang.reflect.Constructor;
import picocli.CommandLine;

/** Makes commands, handing the terminal to those that write. */
final class Commands implements CommandLine.IFactory {
  private final Terminal terminal;
  private final CommandLine.IFactory plain = CommandLine.defaultFactory();

  Commands(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    for (Constructor<?> constructor : type.getDeclaredConstructors()) {
      if (constructor.getParameterCount() == 1
          && constructor.getParameterTypes()[0] == Terminal.class) {
        return type.cast(constructor.newInstance(terminal));
      }
    }
    return plain.create(type);
  }
}
