package flankfit.window;

import java.nio.file.Path;

/** Gives the window what there is of its program. */
interface Loads {
  /** What there is now; the same object until there is more. */
  Loaded latest();

  /** Takes another program in place of the present one and reads it. */
  void open(Path file);

  /** Takes a sample program in place of the present one and reads it. */
  void open(Samples.Sample sample);

  /** Reads the program anew, in place of a load under way. */
  void begin();

  /** Stops the load under way; what there is of it stays. */
  void stop();

  /** Calls this, on any thread, whenever there is more. */
  void wakes(Runnable whom);

  /** Nothing more than this ever comes. */
  static Loads fixed(WindowInput input) {
    Loaded loaded = Loaded.of(input);
    return new Loads() {
      @Override
      public Loaded latest() {
        return loaded;
      }

      @Override
      public void wakes(Runnable whom) {
        // Nothing more comes.
      }

      @Override
      public void open(Path file) {
        // What is given stays.
      }

      @Override
      public void open(Samples.Sample sample) {
        // What is given stays.
      }

      @Override
      public void begin() {
        // What is given can't be read again.
      }

      @Override
      public void stop() {
        // Nothing is under way.
      }
    };
  }
}
