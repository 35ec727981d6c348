package flankfit.window;

/** Looks at each frame after it is drawn and before it is shown; for tests. */
interface WindowObserver {
  /** A frame is drawn. */
  void drawn(ViewState state, WindowLoop loop);
}
