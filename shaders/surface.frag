#version 330 core
in vec3 facing;
uniform vec4 colour;
uniform float shading;   // 0 flat, 1 full light and shade
out vec4 pixel;

void main() {
  vec3 n = normalize(facing);
  if (n.z < 0.0) {
    n = -n;
  }
  float key = max(dot(n, normalize(vec3(-0.45, 0.55, 0.70))), 0.0);
  float light = 0.62 + 0.30 * key + 0.12 * n.z;
  pixel = vec4(min(colour.rgb * mix(1.0, light, shading), vec3(1.0)), colour.a);
}
