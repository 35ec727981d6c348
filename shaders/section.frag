#version 330 core
// The face of a cut, hatched; only where the other planes take the metal before it away.
in vec3 where;
uniform int others;
uniform vec4 section[2];               // heights above the other planes
uniform vec4 ground;
uniform vec4 ink;
uniform float spacing;                 // of the hatching, px
uniform float lean;                    // way the hatching leans, 1 or -1
out vec4 pixel;

void main() {
  for (int i = 0; i < others; i++) {
    if (dot(section[i], vec4(where, 1.0)) < 0.0) {
      discard;
    }
  }
  vec2 p = gl_FragCoord.xy;
  float off = mod(p.x - lean * p.y, spacing) - 0.5 * spacing;
  float line = 1.0 - smoothstep(0.5, 1.3, abs(off) * 0.7071);
  pixel = vec4(mix(ground, ink, line * ink.a).rgb, 1.0);
}
