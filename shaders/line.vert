#version 330 core
// Expands each chord of a texture buffer to a quad in pixels. Vertex 4k+c is corner c of chord k,
// which runs from texel k to texel k+1.
const uint HIDDEN = 255u;
const int STYLES = 32;
uniform samplerBuffer points;   // x, y, z from the scene's origin (mm), w length from the move's start (mm)
uniform usamplerBuffer styles;  // style of the chord that starts here
uniform mat4 toClip;
uniform vec2 viewport;          // px
uniform vec4 shape[STYLES];     // x half width (px), y 1 dashed, z casing (px), w 1 takes part in fading
uniform int position;           // chords from this texel on lie beyond the position
uniform int split;              // texel of the chord that the position lies within; -1 for none
uniform vec3 tip;               // where it lies, from the scene's origin (mm)
uniform int phase;              // 0 behind things, 1 casing, 2 core, 3 fringe, 4 hair lines of one pixel
out vec2 local;                 // along and across the chord (px)
out float lengthHere;           // from the move's start (mm)
flat out float chordLength;     // px
flat out float halfWidth;       // px
flat out float dashed;
flat out int style;
flat out float beyond;
flat out float cut;             // along the chord, from where it lies beyond (px)

void main() {
  int texel = gl_VertexID >> 2;
  int corner = gl_VertexID & 3;
  uint s = texelFetch(styles, texel).r;
  local = vec2(0.0);
  lengthHere = 0.0;
  chordLength = 0.0;
  halfWidth = 0.0;
  dashed = 0.0;
  style = int(s) % STYLES;
  beyond = 0.0;
  cut = -1e9;
  gl_Position = vec4(2.0, 2.0, 2.0, 1.0);
  if (s == HIDDEN) {
    return;
  }
  vec4 look = shape[int(s)];
  if (look.x <= 0.0 || (phase == 1 && look.z <= 0.0)) {
    return;
  }
  vec4 from = texelFetch(points, texel);
  vec4 to = texelFetch(points, texel + 1);
  vec4 clipFrom = toClip * vec4(from.xyz, 1.0);
  vec4 clipTo = toClip * vec4(to.xyz, 1.0);
  vec2 a = (clipFrom.xy * 0.5 + 0.5) * viewport;
  vec2 b = (clipTo.xy * 0.5 + 0.5) * viewport;
  vec2 d = b - a;
  chordLength = length(d);
  vec2 along = chordLength > 1e-5 ? d / chordLength : vec2(1.0, 0.0);
  vec2 across = vec2(-along.y, along.x);
  halfWidth = look.x + (phase == 1 ? look.z : 0.0);
  dashed = look.y;
  beyond = look.w * float(texel >= position);
  if (texel == split) {
    vec2 t = ((toClip * vec4(tip, 1.0)).xy * 0.5 + 0.5) * viewport;
    cut = dot(t - a, along);
  }
  float grow = phase == 4 ? 0.0 : max(halfWidth, 0.5) + 1.0;
  bool atEnd = (corner >> 1) == 1;
  float side = (corner & 1) == 0 ? -grow : grow;
  float over = phase == 0 ? 0.0 : grow;  // butt ends where ink is see-through
  float run = atEnd ? chordLength + over : -over;
  local = vec2(run, side);
  float share = chordLength > 1e-5 ? run / chordLength : float(atEnd);
  lengthHere = mix(from.w, to.w, clamp(share, 0.0, 1.0));
  vec2 p = a + along * run + across * side;
  float z = atEnd ? clipTo.z : clipFrom.z;
  gl_Position = vec4(p / viewport * 2.0 - 1.0, z, 1.0);
}
