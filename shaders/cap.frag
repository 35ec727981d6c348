#version 330 core
uniform vec4 ground;
uniform vec4 ink;
uniform float spacing;                 // of the hatching, px
uniform vec2 shift;                    // of this frame, px
out vec4 pixel;

void main() {
  vec2 p = gl_FragCoord.xy - shift;
  float off = mod(p.x - p.y, spacing) - 0.5 * spacing;
  float line = 1.0 - smoothstep(0.5, 1.3, abs(off) * 0.7071);
  pixel = mix(ground, ink, line * ink.a);
}
