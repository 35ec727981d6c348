package flankfit.window;

/** Gives the window what there is of its program. */
interface Loads {
  /** What there is now; the same object until there is more. */
  Loaded latest();

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
