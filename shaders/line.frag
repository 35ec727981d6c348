#version 330 core
// Coverage from the distance to the chord: round joins and ends, any width, no multisampling.
const int STYLES = 32;
in vec2 local;
in float lengthHere;
flat in float chordLength;
flat in float halfWidth;
flat in float dashed;
flat in int style;
flat in float beyond;
flat in float cut;
uniform vec4 colour[STYLES];
uniform vec4 casingColour;
uniform vec4 ground;        // what paler parts fade towards; a how far they fade
uniform float dashPeriod;   // mm
uniform float hiddenAlpha;
uniform int phase;
out vec4 pixel;

void main() {
  float end = clamp(local.x, 0.0, chordLength);
  float distance = length(vec2(local.x - end, local.y));
  float reach = max(halfWidth, 0.5);
  float coverage = clamp(reach + 0.5 - distance, 0.0, 1.0) * min(halfWidth / 0.5, 1.0);
  if (dashed > 0.5 && fract(lengthHere / dashPeriod) > 0.5) {
    discard;
  }
  vec4 c = phase == 1 ? casingColour : colour[style];
  c.rgb = mix(c.rgb, ground.rgb, local.x > cut ? beyond * ground.a : 0.0);
  bool core = coverage > 0.995;
  if (phase == 2 ? !core : coverage <= 0.002 || (phase == 3 && core)) {
    discard;
  }
  pixel = vec4(c.rgb, c.a * coverage * (phase == 0 ? hiddenAlpha : 1.0));
}
