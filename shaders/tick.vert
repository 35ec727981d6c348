#version 330 core
// A chevron that points along the path: two strokes of fixed size in pixels.
layout(location = 0) in vec3 place;    // mm, from the scene's origin
layout(location = 1) in vec3 heading;  // unit vector along the path
layout(location = 2) in vec2 mark;     // x style, y texel of its chord
const int STYLES = 32;
uniform mat4 toClip;
uniform vec2 viewport;
uniform vec4 tickColour[STYLES];
uniform vec4 ground;
uniform int position;
uniform float pixelsPerMm;
uniform vec2 tick;                     // x length of a stroke (px), y half its width (px)
out vec2 local;
flat out float strokeLength;
flat out vec4 tint;

void main() {
  int corner = gl_VertexID & 3;
  float turn = (gl_VertexID >> 2) == 0 ? 1.0 : -1.0;
  vec4 clip = toClip * vec4(place, 1.0);
  vec2 a = (clip.xy * 0.5 + 0.5) * viewport;
  vec4 ahead = toClip * vec4(place + heading, 1.0);
  vec2 d = (ahead.xy - clip.xy) * viewport;
  float seen = length(d) * 0.5 / pixelsPerMm;
  tint = tickColour[int(mark.x) % STYLES];
  tint.rgb = mix(tint.rgb, ground.rgb, float(int(mark.y) >= position) * ground.a);
  strokeLength = tick.x;
  local = vec2(0.0);
  gl_Position = vec4(2.0, 2.0, 2.0, 1.0);
  if (seen < 0.12 || tint.a <= 0.0) {
    return;
  }
  vec2 back = -normalize(d);
  float c = cos(0.55);
  float s = sin(0.55) * turn;
  vec2 along = vec2(c * back.x - s * back.y, s * back.x + c * back.y);
  vec2 across = vec2(-along.y, along.x);
  float grow = tick.y + 1.0;
  float run = (corner >> 1) == 1 ? tick.x + grow : -grow;
  float side = (corner & 1) == 0 ? -grow : grow;
  local = vec2(run, side);
  vec2 p = a - normalize(d) * (-0.45 * tick.x) + along * run + across * side;
  gl_Position = vec4(p / viewport * 2.0 - 1.0, clip.z - 2e-4, 1.0);
}
