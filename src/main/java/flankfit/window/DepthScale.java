package flankfit.window;

import flankfit.picture.Camera;

/**
 * The one scale of depth that all upright views of a window share: heights of the part against rows
 * of the window.
 *
 * @param top row of the window where the scene begins (window units)
 * @param rows height of the scene (px)
 * @param pixels pixels a window unit (1)
 * @param middle height of the part in the scene's middle row (mm)
 * @param millimetresPerPixel scale (mm/px)
 * @param zero height of the part's top, where depth is zero (mm)
 */
record DepthScale(
    double top, int rows, double pixels, double middle, double millimetresPerPixel, double zero) {
  /** The scale of what the eye sees upright. */
  static DepthScale of(ViewState state, Layout layout, float pixels) {
    Camera camera = state.viewpoint().camera();
    return new DepthScale(
        layout.header(),
        camera.height(),
        pixels,
        camera.centre().z(),
        camera.millimetresPerPixel(),
        state.scene().top());
  }

  /** Height of the part (mm) at a row of the window (window units, downwards). */
  double heightAt(double row) {
    return middle + (rows / 2.0 - (row - top) * pixels) * millimetresPerPixel;
  }

  /** Row of the window (window units, downwards) of a height of the part (mm). */
  double rowOf(double height) {
    return top + (rows / 2.0 - (height - middle) / millimetresPerPixel) / pixels;
  }

  /** Depth below the part's top (mm), negative downwards, at a row of the window. */
  double depthAt(double row) {
    return heightAt(row) - zero;
  }
}
