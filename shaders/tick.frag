#version 330 core
in vec2 local;
flat in float strokeLength;
flat in vec4 tint;
uniform vec2 tick;
out vec4 pixel;

void main() {
  float end = clamp(local.x, 0.0, strokeLength);
  float distance = length(vec2(local.x - end, local.y));
  float coverage = clamp(tick.y + 0.5 - distance, 0.0, 1.0);
  if (coverage <= 0.002) {
    discard;
  }
  pixel = vec4(tint.rgb, tint.a * coverage);
}
