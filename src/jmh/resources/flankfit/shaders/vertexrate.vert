#version 330 core
// Reads the same texels as the line program and throws every vertex away beside the frame.
uniform samplerBuffer points;
uniform usamplerBuffer styles;
uniform int position;
uniform int split;

void main() {
  int texel = gl_VertexID >> 2;
  vec4 here = texelFetch(points, texel);
  uint s = texelFetch(styles, texel).r;
  float kept = 1e-30 * (here.x + float(s) + float(position) + float(split));
  gl_Position = vec4(2.0, 2.0, kept, 1.0);
}
